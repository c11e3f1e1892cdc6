package guildwood.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.io.Content;

/** Takes the parts of a form as they arrive: the file to the disk, the other fields, which are short, to memory. */
final class UploadParts implements MultiPart.Parser.Listener, AutoCloseable {
  private static final int MOST_FIELD_BYTES = 500_000;
  private static final long MEGABYTE = 1_000_000;

  private final Path target;
  private final long mostBytes;
  private final OutputStream out;
  private final Map<String, List<String>> fields = new LinkedHashMap<>();
  private final ByteArrayOutputStream text = new ByteArrayOutputStream();
  private int fieldBytes;
  private String disposition = "";
  private Optional<String> fileName = Optional.empty();
  private boolean inFile;
  private long bytes;
  private boolean complete;
  private boolean kept;
  private Optional<Finding> refused = Optional.empty();

  UploadParts(Path target, long mostBytes) throws IOException {
    this.target = target;
    this.mostBytes = mostBytes;
    this.out = Files.newOutputStream(target);
  }

  boolean isRefused() {
    return refused.isPresent();
  }

  @Override
  public void onPartBegin() {
    disposition = "";
    inFile = false;
    text.reset();
  }

  @Override
  public void onPartHeader(String name, String value) {
    if (name.equalsIgnoreCase("Content-Disposition")) {
      disposition = value;
    }
  }

  @Override
  public void onPartHeaders() {
    // Of several files the first is taken.
    inFile = fileName.isEmpty() && parameter("name").equals(Optional.of(Upload.FIELD)) && parameter("filename").isPresent();
    if (inFile) {
      fileName = parameter("filename").map(SentFile::plainName);
    }
  }

  @Override
  public void onPartContent(Content.Chunk chunk) {
    ByteBuffer piece = chunk.getByteBuffer();
    byte[] content = new byte[piece.remaining()];
    piece.get(content);
    if (refused.isPresent()) {
      return;
    }
    if (inFile) {
      write(content);
    } else if (parameter("filename").isEmpty()) {
      fieldBytes += content.length;
      if (fieldBytes > MOST_FIELD_BYTES) {
        refuse("upload.broken");
      } else {
        text.writeBytes(content);
      }
    }
  }

  private void write(byte[] content) {
    bytes += content.length;
    if (bytes > mostBytes) {
      refuse("upload.too-large", mostBytes / MEGABYTE);
      return;
    }
    try {
      out.write(content);
    } catch (IOException e) {
      throw new UncheckedIOException("a file that was sent cannot be written", e);
    }
  }

  @Override
  public void onPartEnd() {
    if (parameter("filename").isEmpty()) {
      parameter("name").ifPresent(name ->
          fields.computeIfAbsent(name, n -> new ArrayList<>()).add(text.toString(StandardCharsets.UTF_8)));
    }
  }

  @Override
  public void onComplete() {
    complete = true;
  }

  @Override
  public void onFailure(Throwable failure) {
    refuse("upload.broken");
  }

  private void refuse(String code, Object... args) {
    if (refused.isEmpty()) {
      refused = Optional.of(Finding.of(code, Upload.FIELD, args));
    }
  }

  /** A parameter of the part's heading; browsers write quotes inside names as %22. */
  private Optional<String> parameter(String name) {
    Matcher found = Pattern.compile("(?i);\\s*" + name + "=\"([^\"]*)\"").matcher(disposition);
    return found.find() ? Optional.of(found.group(1).replace("%22", "\"")) : Optional.empty();
  }

  /** What came, once all has been read. */
  Upload upload() throws IOException {
    out.close();
    Checked<SentFile> file = file();
    kept = !file.isRefused();
    return new Upload(fields, file);
  }

  private Checked<SentFile> file() {
    if (refused.isPresent()) {
      return Checked.refused(refused.get());
    }
    if (!complete) {
      return Checked.refused(Finding.of("upload.broken", Upload.FIELD));
    }
    if (fileName.orElse("").isEmpty()) {
      return Upload.missing();
    }
    return bytes == 0 ? Checked.refused(Finding.of("upload.empty", Upload.FIELD, fileName.get()))
        : Checked.of(new SentFile(fileName.get(), target, bytes));
  }

  @Override
  public void close() throws IOException {
    out.close();
    if (!kept) {
      Files.deleteIfExists(target);
    }
  }
}
