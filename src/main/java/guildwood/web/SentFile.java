package guildwood.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that came with a form, on the disk until the request is answered.
 *
 * @param name as the sender calls it, without folders; fit to be shown, never to be used as a path
 * @param path where it lies now
 */
public record SentFile(String name, Path path, long bytes) {
  private static final int LONGEST_NAME = 200;

  /** Keeps the file beyond the request. */
  public void moveTo(Path target) {
    try {
      Files.createDirectories(target.toAbsolutePath().getParent());
      Files.move(path, target);
    } catch (IOException e) {
      throw new UncheckedIOException("a file that was sent cannot be kept", e);
    }
  }

  /** The last part of a name, whatever the sender's machine separates folders by, on one line. */
  static String plainName(String sent) {
    String last = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
    String shown = last.replaceAll("\\p{Cntrl}", " ").strip();
    return shown.length() > LONGEST_NAME ? shown.substring(shown.length() - LONGEST_NAME) : shown;
  }
}
