package guildwood.species.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip file whose bytes depend on nothing but what is in it: every entry bears the first moment that a zip file
 * can name, and nothing is compressed, because compressed bytes differ from one machine's library to another's.
 */
public final class StoredZip implements AutoCloseable {
  private static final LocalDateTime FIRST_MOMENT = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final ZipOutputStream zip;

  /** @param to stays open when the zip is closed */
  public StoredZip(OutputStream to) {
    this.zip = new ZipOutputStream(to, StandardCharsets.UTF_8);
    zip.setMethod(ZipOutputStream.STORED);
  }

  /** What stands in an entry; it is written twice, the first time to be measured, and must come out the same. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** An entry with its size and its sums. */
  public record Measured(String name, Content content, long bytes, long crc, String sha256) {}

  public static Measured measure(String name, Content content) throws IOException {
    Gauge gauge = new Gauge();
    content.writeTo(gauge);
    return new Measured(name, content, gauge.bytes, gauge.crc.getValue(), HexFormat.of().formatHex(gauge.sha256.digest()));
  }

  public void add(Measured measured) throws IOException {
    ZipEntry entry = new ZipEntry(measured.name());
    entry.setTimeLocal(FIRST_MOMENT);
    entry.setSize(measured.bytes());
    entry.setCrc(measured.crc());
    zip.putNextEntry(entry);
    measured.content().writeTo(zip);
    zip.closeEntry();
  }

  @Override
  public void close() throws IOException {
    zip.finish();
    zip.flush();
  }

  private static final class Gauge extends OutputStream {
    private final CRC32 crc = new CRC32();
    private final MessageDigest sha256 = sha256();
    private long bytes;

    @Override
    public void write(int b) {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] all, int from, int count) {
      crc.update(all, from, count);
      sha256.update(all, from, count);
      bytes += count;
    }

    private static MessageDigest sha256() {
      try {
        return MessageDigest.getInstance("SHA-256");
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
