package guildwood.importing;

import java.time.Instant;
import java.util.Optional;

/**
 * An import that was made.
 *
 * @param title of the file and sheet, as people should see it
 */
public record ImportRun(long id, String title, Instant broughtAt, ImportCounts counts, Optional<Instant> undoneAt) {
  public static final int LONGEST_TITLE = 300;
}
