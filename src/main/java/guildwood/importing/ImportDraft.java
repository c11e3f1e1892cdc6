package guildwood.importing;

import java.time.Instant;
import java.util.Optional;

/**
 * An import that somebody is looking through; it outlives a restart.
 *
 * @param id 0 before it is kept
 * @param fileName as it came
 * @param storedAs name of the file in the data directory
 * @param sheet name of the sheet; empty before one is chosen
 */
public record ImportDraft(
    long id,
    String fileName,
    String storedAs,
    String sheet,
    Instant startedAt,
    Optional<Mapping> mapping,
    Optional<ImportSource> source,
    Decisions decisions) {
  public static final int LONGEST_FILE_NAME = 200;

  public ImportDraft with(Mapping other) {
    return new ImportDraft(id, fileName, storedAs, sheet, startedAt, Optional.of(other), source, decisions);
  }

  public ImportDraft with(ImportSource other) {
    return new ImportDraft(id, fileName, storedAs, sheet, startedAt, mapping, Optional.of(other), decisions);
  }

  public ImportDraft with(Decisions other) {
    return new ImportDraft(id, fileName, storedAs, sheet, startedAt, mapping, source, other);
  }

  /** On another sheet, where nothing is mapped or decided yet. */
  public ImportDraft onSheet(String other) {
    return new ImportDraft(id, fileName, storedAs, other, startedAt, Optional.empty(), source, Decisions.NONE);
  }
}
