package guildwood.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A large change that does not come to its end leaves the database as it was before it. */
class LargeChangeStoreTest {
  private static final List<String> FILES = List.of("database.key", "guildwood.mv.db");

  @TempDir
  Path folder;

  private static void add(Database database, String title) {
    database.change(h -> h.createUpdate("insert into source (id, kind, author, title, locator) values (:title, 'HEARSAY', '', :title, '')")
        .bind("title", title).execute());
  }

  private static List<String> titles(Path data) {
    try (Database database = Database.open(data)) {
      return titles(database);
    }
  }

  private static List<String> titles(Database database) {
    return database.read(h -> h.createQuery("select title from source where kind = 'HEARSAY' order by title").mapTo(String.class).list());
  }

  private static List<String> files(Path data) throws IOException {
    try (Stream<Path> files = Files.list(data)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  /** What a process that is killed leaves behind: the files as they are in the middle of the change. */
  private Path asIfKilled(Path data) {
    try {
      Path copy = Files.createDirectory(folder.resolve("killed"));
      for (String file : files(data)) {
        Files.copy(data.resolve(file), copy.resolve(file));
      }
      return copy;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void whatAKilledProcessLeftIsPutBackAtTheNextStart() throws IOException {
    Path data = folder.resolve("data");
    Path killed;
    try (Database database = Database.open(data)) {
      add(database, "before");
      killed = database.largeChange(h -> {
        h.execute("insert into source (id, kind, author, title, locator) select 's' || x, 'HEARSAY', '', 'during', '' from system_range(1, 20000)");
        return asIfKilled(data);
      });
      assertEquals(20_001, titles(database).size());
    }
    assertEquals(List.of("before-large-change.zip", "database.key", "guildwood.mv.db"), files(killed));
    assertEquals(List.of("before"), titles(killed));
    assertEquals(FILES, files(killed));
    assertEquals(List.of("before"), titles(killed), "and it stays so");
    assertEquals(20_001, titles(data).size());
    assertEquals(FILES, files(data));
  }

  @Test
  void anExceptionTakesItBackAndTheCopyGoes() throws IOException {
    Path data = folder.resolve("data");
    try (Database database = Database.open(data)) {
      add(database, "before");
      assertThrows(IllegalStateException.class, () -> database.largeChange(h -> {
        h.execute("delete from source");
        throw new IllegalStateException("stopped");
      }));
      add(database, "after");
      assertEquals(List.of("after", "before"), titles(database));
    }
    assertEquals(FILES, files(data));
    assertEquals(List.of("after", "before"), titles(data));
  }
}
