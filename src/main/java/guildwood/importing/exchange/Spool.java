package guildwood.importing.exchange;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A long list on the disk, written once from its beginning to its end, of which any part can be read: one line of
 * JSON an entry, and beside it where each line begins.
 */
final class Spool<T> {
  // Only what makes up a record is written, not what it can tell besides.
  private static final ObjectMapper JSON = JsonMapper.builder().disable(MapperFeature.AUTO_DETECT_IS_GETTERS).build();

  private final Path lines;
  private final Path starts;
  private final Class<T> type;

  /** @param type a record that the JSON library can write and read */
  Spool(Path directory, String name, Class<T> type) {
    this.lines = directory.resolve(name + ".jsonl");
    this.starts = directory.resolve(name + ".starts");
    this.type = type;
  }

  Writer<T> write() throws IOException {
    return new Writer<>(lines, starts);
  }

  long size() {
    try {
      return Files.size(starts) / Long.BYTES;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** At most so many entries, from one on; fewer at the end. */
  List<T> part(long from, int most) {
    List<T> part = new ArrayList<>();
    try (RandomAccessFile index = new RandomAccessFile(starts.toFile(), "r"); RandomAccessFile text = new RandomAccessFile(lines.toFile(), "r")) {
      long size = index.length() / Long.BYTES;
      for (long at = from; at < Math.min(size, from + most); at++) {
        index.seek(at * Long.BYTES);
        long start = index.readLong();
        long end = at + 1 < size ? index.readLong() : text.length();
        byte[] line = new byte[Math.toIntExact(end - start)];
        text.seek(start);
        text.readFully(line);
        part.add(JSON.readValue(line, type));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(part);
  }

  /** Appends entries. */
  static final class Writer<T> implements AutoCloseable {
    private final BufferedOutputStream lines;
    private final DataOutputStream starts;
    private long at;

    private Writer(Path lines, Path starts) throws IOException {
      this.lines = new BufferedOutputStream(Files.newOutputStream(lines));
      this.starts = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(starts)));
    }

    void add(T entry) {
      try {
        byte[] line = (JSON.writeValueAsString(entry) + "\n").getBytes(StandardCharsets.UTF_8);
        starts.writeLong(at);
        lines.write(line);
        at += line.length;
      } catch (IOException e) {
        throw new UncheckedIOException("a review cannot be written", e);
      }
    }

    @Override
    public void close() throws IOException {
      lines.close();
      starts.close();
    }
  }
}
