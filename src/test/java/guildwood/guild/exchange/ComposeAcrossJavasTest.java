package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same files give the same bytes on every Java installed beside the one that runs the tests, whatever
 * language, encoding and time zone it is set to.
 */
class ComposeAcrossJavasTest {
  private static final Path INSTALLED = Path.of("/usr/lib/jvm");
  private static final int OLDEST = 17;

  @TempDir
  private static Path folder;

  private static Path bed;
  private static Path species;

  @BeforeAll
  static void write() throws IOException {
    bed = ComposeRun.example(folder);
    species = ComposeRun.exported(folder);
  }

  @Test
  void everyInstalledJavaPrintsTheSame() throws Exception {
    Map<Integer, Path> javas = javas();
    Assumptions.assumeTrue(javas.size() > 1, () -> "not run: only Java " + javas.keySet() + " is installed");
    byte[] here = ComposeRun.of(bed, species).out().getBytes(StandardCharsets.UTF_8);
    for (Map.Entry<Integer, Path> java : javas.entrySet()) {
      assertArrayEquals(here, printed(java.getValue()), "Java " + java.getKey());
    }
  }

  @Test
  void languageEncodingAndTimeZoneChangeNothing() throws Exception {
    byte[] here = ComposeRun.of(bed, species).out().getBytes(StandardCharsets.UTF_8);
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    assertArrayEquals(here, printed(java, "-Duser.language=tr", "-Duser.country=TR", "-Dfile.encoding=ISO-8859-1",
        "-Dstdout.encoding=US-ASCII", "-Duser.timezone=Pacific/Apia", "-Dline.separator=\r\n"));
  }

  /** One of each feature version that can run the program. */
  private static Map<Integer, Path> javas() throws IOException {
    Map<Integer, Path> javas = new TreeMap<>();
    javas.put(Runtime.version().feature(), Path.of(System.getProperty("java.home"), "bin", "java"));
    if (Files.isDirectory(INSTALLED)) {
      try (Stream<Path> homes = Files.list(INSTALLED)) {
        for (Path home : homes.sorted().toList()) {
          Path java = home.resolve("bin/java");
          int feature = Files.isExecutable(java) ? feature(home) : 0;
          if (feature >= OLDEST) {
            javas.putIfAbsent(feature, java);
          }
        }
      }
    }
    return javas;
  }

  /** From the file {@code release} that every JDK carries: {@code JAVA_VERSION="17.0.12"}. */
  private static int feature(Path home) throws IOException {
    Path release = home.resolve("release");
    if (!Files.isReadable(release)) {
      return 0;
    }
    return Files.readAllLines(release).stream().filter(line -> line.matches("JAVA_VERSION=\"\\d+.*"))
        .map(line -> Integer.parseInt(line.replaceAll("JAVA_VERSION=\"(\\d+).*", "$1"))).findFirst().orElse(0);
  }

  private static byte[] printed(Path java, String... options) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", classPath(), "guildwood.Main", "compose", "--bed", bed.toString(), "--species", species.toString()));
    Path out = Files.createTempFile(folder, "out", ".json");
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err).start();
    if (!process.waitFor(3, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IllegalStateException("still running after three minutes: " + command);
    }
    assertEquals(0, process.exitValue(), Files.readString(err.toPath()));
    return Files.readAllBytes(out);
  }

  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }
}
