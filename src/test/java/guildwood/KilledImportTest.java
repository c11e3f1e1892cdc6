package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.exchange.DamagedFiles;
import guildwood.importing.store.SqlImports;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An import whose process is killed at once ({@code kill -9}) while it writes leaves the library as it was before. How far
 * it has come is told by the growth of the database file. A killing that comes too late finds all of it kept.
 */
class KilledImportTest {
  private static final int ROWS = 3_000;
  private static final double[] SHARES = {0.02, 0.3, 0.6};
  private static final String FILE = "guildwood.mv.db";

  @TempDir
  Path folder;

  @Test
  void aKilledImportIsNone() throws IOException, InterruptedException {
    Path before = folder.resolve("before");
    Path table = Files.writeString(folder.resolve("plants.csv"), DamagedFiles.manyPlants(ROWS), StandardCharsets.UTF_8);
    Process first = importInto(Files.createDirectory(before), Path.of("src/test/resources/importing/characteristics-40.csv"));
    assertEquals(0, first.waitFor());
    Kept asBefore = library(before);
    assertEquals(1, asBefore.imports());
    long begin = Files.size(before.resolve(FILE));
    Path whole = copy(before, "whole");
    Process undisturbed = importInto(whole, table);
    long end = growth(undisturbed, whole.resolve(FILE), Long.MAX_VALUE);
    assertEquals(0, undisturbed.waitFor());
    Kept asBrought = library(whole);
    assertEquals(2, asBrought.imports());
    assertTrue(end > begin + (1 << 20), "the import hardly made the file grow: " + begin + " to " + end);

    int killedInTime = 0;
    for (double share : SHARES) {
      Path copy = copy(before, "killed-" + share);
      Process process = importInto(copy, table);
      growth(process, copy.resolve(FILE), begin + (long) (share * (end - begin)));
      process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
      Kept found = library(copy);
      Kept expected = found.imports() == 1 ? asBefore : asBrought;
      String what = "killed after " + share + " of the growth, " + found.imports() + " imports kept";
      assertEquals(expected.notes(), found.notes(), what);
      assertEquals(expected.sources(), found.sources(), what);
      assertEquals(expected.species().lines().count(), found.species().lines().count(), what);
      assertEquals(expected.species(), found.species(), what);
      killedInTime += found.equals(asBefore) ? 1 : 0;
    }
    assertTrue(killedInTime > 0, "every import was kept before it was killed");
  }

  private static Process importInto(Path data, Path table) throws IOException {
    return ChildJava.start("-Xmx256m", "guildwood.Main", "import", table.toString(), "--data", data.toString());
  }

  /** Waits until the file is so large or the process has ended; the largest size that was seen. */
  private static long growth(Process process, Path file, long enough) throws IOException, InterruptedException {
    long largest = 0;
    while (process.isAlive() && largest < enough) {
      largest = Math.max(largest, Files.size(file));
      Thread.sleep(2);
    }
    return largest;
  }

  /** Opens the database anew. */
  private static Kept library(Path data) throws IOException {
    try (Database database = Database.open(data)) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      StringBuilder text = new StringBuilder();
      SpeciesTableWriter.write(records.library().species(), text);
      return new Kept(new SqlImports(database, records).runs().size(), text.toString(), records.notes().size(), records.library().sources().size());
    }
  }

  /** What a database holds: imports, the species with what rules, notes and sources. */
  private record Kept(int imports, String species, int notes, int sources) {}

  private Path copy(Path from, String name) throws IOException {
    Path copy = Files.createDirectory(folder.resolve(name));
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
    return copy;
  }
}
