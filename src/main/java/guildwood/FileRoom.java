package guildwood;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Where files live beside the database: in the data directory, or for a demonstration in a place that goes when it ends. */
final class FileRoom implements AutoCloseable {
  private final Path directory;
  private final boolean passing;

  private FileRoom(Path directory, boolean passing) {
    this.directory = directory;
    this.passing = passing;
  }

  static FileRoom of(Settings settings) {
    try {
      return settings.demo() ? new FileRoom(Files.createTempDirectory("guildwood"), true)
          : new FileRoom(settings.dataDirectory(), false);
    } catch (IOException e) {
      throw new UncheckedIOException("no place for files", e);
    }
  }

  /** A directory of its own for one kind of file; its user makes it where it does not exist. */
  Path of(String kind) {
    return directory.resolve(kind);
  }

  @Override
  public void close() {
    if (!passing) {
      return;
    }
    try (Stream<Path> all = Files.walk(directory)) {
      List<Path> inside = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : inside) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the files of the demonstration cannot be removed", e);
    }
  }
}
