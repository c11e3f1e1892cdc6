package guildwood;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;

/** The packaged program in a process of its own, as people run it. */
final class PackagedJar implements AutoCloseable {
  private final Process process;
  private final String address;
  private final List<String> said;

  private PackagedJar(Process process, String address, List<String> said) {
    this.process = process;
    this.address = address;
    this.said = said;
  }

  /** Starts the program with any words; errors and output come together. */
  static Process run(String... words) throws IOException {
    Path jar = Path.of(System.getProperty("guildwood.jar", "target/guildwood.jar"));
    if (!Files.exists(jar)) {
      throw new IllegalStateException("no packaged program at " + jar + ": run mvn package first");
    }
    List<String> command = new ArrayList<>(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", jar.toString()));
    command.addAll(List.of(words));
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  /** Starts {@code serve} on a free port with further options and waits until it says where it is. */
  static PackagedJar serve(String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of("serve", "--port", "0"));
    words.addAll(List.of(options));
    Process process = run(words.toArray(String[]::new));
    BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    List<String> said = new CopyOnWriteArrayList<>();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      said.add(line);
      if (line.startsWith("Guildwood is at ")) {
        drain(out, said);
        return new PackagedJar(process, line.substring("Guildwood is at ".length()), said);
      }
    }
    throw new IllegalStateException("the program ended without serving: " + said);
  }

  private static void drain(BufferedReader out, List<String> said) {
    Thread reader = new Thread(() -> out.lines().forEach(said::add));
    reader.setDaemon(true);
    reader.start();
  }

  /** The address of the first page, ending in a slash. */
  String address() {
    return address;
  }

  /** What it printed so far. */
  List<String> said() {
    return said;
  }

  void kill() throws InterruptedException {
    process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
  }

  @Override
  public void close() {
    process.destroy();
  }
}
