package guildwood.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.io.Content;

/** Reads a form with a file from the wire, piece by piece: RFC 7578, by the server's own parser. */
final class UploadReader {
  private static final Pattern BOUNDARY = Pattern.compile("(?i);\\s*boundary=(?:\"([^\"]{1,70})\"|([^;\\s\"]{1,70}))");
  private static final int PIECE_BYTES = 32 * 1024;
  private static final int LONGEST_HEADERS = 4096;
  private static final int MOST_PARTS = 1000;
  /** Of a request that is too large, so much is read and thrown away for the sake of an answer; then the line is cut. */
  private static final long MOST_READ_BYTES = 4L << 30;

  private final Upload.Door door;

  UploadReader(Upload.Door door) {
    this.door = door;
  }

  Upload read(Context ctx) {
    Matcher boundary = BOUNDARY.matcher(String.valueOf(ctx.contentType()));
    if (!boundary.find()) {
      return new Upload(java.util.Map.of(), Checked.refused(Finding.of("upload.broken", Upload.FIELD)));
    }
    String between = boundary.group(1) != null ? boundary.group(1) : boundary.group(2);
    try (UploadParts parts = new UploadParts(Files.createTempFile(door.directory(), "", Uploads.ENDING), door.mostBytes());
        InputStream body = ctx.bodyInputStream()) {
      MultiPart.Parser parser = new MultiPart.Parser(between, parts);
      parser.setPartHeadersMaxLength(LONGEST_HEADERS);
      parser.setMaxParts(MOST_PARTS);
      feed(parser, parts, body);
      return parts.upload();
    } catch (IOException e) {
      // The sender went away: nobody is left to be answered.
      return new Upload(java.util.Map.of(), Checked.refused(Finding.of("upload.broken", Upload.FIELD)));
    }
  }

  private static void feed(MultiPart.Parser parser, UploadParts parts, InputStream body) throws IOException {
    long total = 0;
    while (total < MOST_READ_BYTES) {
      byte[] piece = new byte[PIECE_BYTES];
      int read = body.read(piece);
      boolean last = read < 0;
      if (!parts.isRefused()) {
        parser.parse(Content.Chunk.from(ByteBuffer.wrap(piece, 0, Math.max(read, 0)), last));
      }
      if (last) {
        return;
      }
      total += read;
    }
  }
}
