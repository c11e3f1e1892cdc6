package guildwood.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A form that brought a file. What is wrong with the file is a finding, not a broken connection: the rest of a
 * request that is too large is read and thrown away, so that the answer arrives.
 *
 * @param fields what else stood in the form
 * @param file the file of the field {@value #FIELD}, or why there is none
 */
public record Upload(Map<String, List<String>> fields, Checked<SentFile> file) {
  /** Name of the form field that holds the file. */
  public static final String FIELD = "file";

  private static final String DOOR = "guildwood.upload.door";
  private static final String READ = "guildwood.upload";

  /** What a route takes in, and where it is put meanwhile. */
  record Door(Path directory, long mostBytes) {}

  /** Marks a request as one that may bring a file. */
  static void open(Context ctx, Door door) {
    ctx.attribute(DOOR, door);
  }

  /** The form that came in; only on routes made by {@link Uploads#post}. */
  public static Upload of(Context ctx) {
    return find(ctx).orElseGet(() -> new Upload(ctx.formParamMap(), missing()));
  }

  /** The form that came in where it is one with files and the route takes them; it is read once. */
  static Optional<Upload> find(Context ctx) {
    Door door = ctx.attribute(DOOR);
    if (door == null || !isMultipart(ctx)) {
      return Optional.empty();
    }
    Upload read = ctx.attribute(READ);
    if (read == null) {
      read = new UploadReader(door).read(ctx);
      ctx.attribute(READ, read);
    }
    return Optional.of(read);
  }

  /** What was read of the request so far. */
  static Optional<Upload> taken(Context ctx) {
    return Optional.ofNullable(ctx.attribute(READ));
  }

  static boolean isMultipart(Context ctx) {
    String type = ctx.contentType();
    return type != null && type.regionMatches(true, 0, "multipart/", 0, 10);
  }

  /** One field of a form, whether it brought files or not; absent also where a route takes no files and was sent one. */
  static Optional<String> field(Context ctx, String name) {
    if (isMultipart(ctx)) {
      return find(ctx).map(upload -> upload.fields().get(name)).map(values -> values.get(0));
    }
    return Optional.ofNullable(ctx.formParam(name));
  }

  static Checked<SentFile> missing() {
    return Checked.refused(Finding.of("upload.missing", FIELD));
  }
}
