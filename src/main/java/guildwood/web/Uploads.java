package guildwood.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Makes routes that take a file of limited size, kept on the disk and never wholly in memory. */
public final class Uploads {
  static final String ENDING = ".part";

  private final Path directory;

  /** @param directory made where it does not exist; what an interrupted program left there is removed */
  public Uploads(Path directory) {
    this.directory = directory;
    try {
      Files.createDirectories(directory);
      try (DirectoryStream<Path> left = Files.newDirectoryStream(directory, "*" + ENDING)) {
        for (Path file : left) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the directory " + directory + " cannot be used", e);
    }
  }

  /**
   * A route that takes a form with one file. The handler asks for {@link Upload#of}; a file that it does not
   * {@link SentFile#moveTo move} is gone when the request is answered.
   *
   * @param mostBytes the largest file; a larger one is a finding
   */
  public void post(RoutesConfig routes, String path, long mostBytes, Handler handler, Access access) {
    Upload.Door door = new Upload.Door(directory, mostBytes);
    routes.before(path, ctx -> Upload.open(ctx, door));
    routes.post(path, handler, access);
    routes.after(path, Uploads::clear);
  }

  private static void clear(Context ctx) throws IOException {
    Optional<SentFile> sent = Upload.taken(ctx).flatMap(upload -> upload.file().value());
    if (sent.isPresent()) {
      Files.deleteIfExists(sent.get().path());
    }
  }
}
