package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tables stream: a process whose heap could hold neither the rows nor the texts of a file reads it. The largest files are
 * read in {@link TableFilesBenchmark}.
 */
class SmallHeapTest {
  private static final int ROWS = 30_000;

  /** The texts of the rows alone take about 17 MB as strings. */
  private static final String HEAP = "-Xmx16m";

  @TempDir
  Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"csv", "xlsx", "ods"})
  void aFileLargerThanTheHeapIsRead(String kind) throws IOException, InterruptedException {
    Path file = folder.resolve("plants." + kind);
    TableFilesBenchmark.write(kind, file, ROWS);
    Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), HEAP, "-XX:+UseSerialGC", "-cp",
        System.getProperty("java.class.path"), TableFilesBenchmark.class.getName(), "ours", file.toString()).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    process.waitFor(60, TimeUnit.SECONDS);
    assertEquals(0, process.exitValue(), said);
  }
}
