package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program as an owner runs it: first start, set-up, a killed process, the command line. */
class PackagedJarIT {
  private static final String PASSWORD = "several plain words";

  @Test
  void whatWasSavedOutlivesAKilledProcess(@TempDir Path data) throws Exception {
    String site;
    try (PackagedJar program = PackagedJar.serve("--data", data.toString())) {
      HttpVisitor owner = new HttpVisitor(root(program));
      assertEquals("/setup", owner.get("/sites").location(), "nobody owns it yet");
      owner.submit(setupPath(program), "name", "Ada", "password", PASSWORD, "again", PASSWORD);
      site = owner.post("/sites/new", "name", "Rough ground").location();
      assertTrue(site.startsWith("/sites/"), site);
      program.kill();
    }
    try (PackagedJar program = PackagedJar.serve("--data", data.toString())) {
      assertTrue(program.said().stream().noneMatch(line -> line.contains("/setup/")), "set up once only");
      HttpVisitor owner = new HttpVisitor(root(program));
      owner.submit("/sign-in", "name", "Ada", "password", PASSWORD);
      assertTrue(owner.get(site).says("Rough ground"));
      assertEquals(200, owner.get("/library").status());
    }
  }

  @Test
  void theKeyOfTheDatabaseIsNobodyElsesToRead(@TempDir Path data) throws IOException {
    try (PackagedJar program = PackagedJar.serve("--data", data.toString())) {
      assertFalse(program.address().isEmpty());
      assertEquals("[OWNER_READ, OWNER_WRITE]",
          new java.util.TreeSet<>(Files.getPosixFilePermissions(data.resolve("database.key"))).toString());
    }
  }

  @Test
  void badOptionsEndWithASentenceAndExitTwo(@TempDir Path data) throws Exception {
    Path file = Files.createFile(data.resolve("not-a-directory"));
    assertEquals(2, exitOf("serve", "--port", "70000"));
    assertEquals(2, exitOf("serve", "--port", "http"));
    assertEquals(2, exitOf("serve", "--data", file.toString()));
    assertEquals(2, exitOf("plant"));
    assertEquals(0, exitOf("--version"));
    assertEquals(0, exitOf("serve", "--help"));
  }

  private static int exitOf(String... words) throws Exception {
    Process process = PackagedJar.run(words);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(30, TimeUnit.SECONDS), said);
    assertFalse(said.contains("\tat "), "no stack trace reaches people: " + said);
    return process.exitValue();
  }

  private static String root(PackagedJar program) {
    return program.address().substring(0, program.address().length() - 1);
  }

  private static String setupPath(PackagedJar program) throws InterruptedException {
    for (int i = 0; i < 100; i++) {
      for (String line : program.said()) {
        if (line.contains("/setup/")) {
          return line.substring(line.indexOf("/setup/"));
        }
      }
      Thread.sleep(50);
    }
    throw new AssertionError("no set-up link was printed: " + program.said());
  }
}
