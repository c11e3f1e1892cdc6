package guildwood.importing.exchange;

import guildwood.importing.Table;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * Opens the tables people keep: text files with any separator and encoding, XLSX and ODS. What a file is, is told from
 * its content, never from its name. Tables stream: they hold one row at a time, whatever the size of the file.
 */
public final class TableFiles {
  /** How large a file may be, bytes. */
  public static final long MOST_BYTES = TableLimits.FILE_BYTES;

  private static final int MEGABYTE = 1 << 20;

  private TableFiles() {}

  /**
   * The sheets of a file in its order, hidden ones last. The file must stay where it is for as long as rows are read.
   *
   * @param name how the person calls the file
   */
  public static Checked<List<Table>> open(Path file, String name) {
    try {
      long bytes = Files.size(file);
      if (bytes == 0) {
        throw new RefusedRead("empty");
      }
      if (bytes > MOST_BYTES) {
        throw new RefusedRead("size", MOST_BYTES / MEGABYTE);
      }
      return Checked.of(FileSigns.isZip(file) ? PackedFiles.open(file) : List.of(TextFiles.open(file, name)));
    } catch (NoSuchFileException e) {
      return Checked.refused(Finding.of("file.missing", ""));
    } catch (AccessDeniedException e) {
      return Checked.refused(Finding.of("file.denied", ""));
    } catch (RefusedRead e) {
      return Checked.refused(e.finding());
    } catch (IOException e) {
      return Checked.refused(Finding.of("file.unreadable", ""));
    }
  }
}
