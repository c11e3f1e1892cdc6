package guildwood.importing;

import guildwood.kernel.Checked;
import guildwood.species.LibraryContents;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Brings tables into the kept library and takes them out again; each import is one step, kept whole or not at all. */
public interface Imports {
  /**
   * Brings a table in.
   *
   * @return the import as it is kept; findings where the file cannot be read to its end, the mapping cannot serve, or
   *     somebody stopped it (code {@code import.stopped})
   */
  Checked<ImportRun> bring(Table table, ImportPlan plan, String title, Instant now, ImportProgress progress);

  /**
   * Brings another library in, as a data package holds it: what is not here yet, beside what is.
   *
   * @return the import as it is kept, with what it brought
   */
  BroughtLibrary bring(LibraryContents contents, String title, Instant now);

  /** Newest first. */
  List<ImportRun> runs();

  Optional<ImportRun> find(long id);

  /** What undoing it would do now. */
  UndoReport wouldUndo(long id);

  /** Takes out exactly what it brought; refused where it is undone already. */
  Checked<UndoReport> undo(long id, Instant now);
}
