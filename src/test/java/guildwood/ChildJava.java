package guildwood;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A Java process with the classes under test, for what has to be killed or held to a small heap. */
final class ChildJava {
  private ChildJava() {}

  /** Errors and output come together. */
  static Process start(String heap, String... mainAndWords) throws IOException {
    List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), heap, "-XX:+UseSerialGC",
        "-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(mainAndWords));
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  /** Reads what the process says until a line begins so. */
  static void awaitLine(Process process, String begin) throws IOException {
    BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      if (line.startsWith(begin)) {
        return;
      }
    }
    throw new IllegalStateException("the process ended without saying '" + begin + "'");
  }
}
