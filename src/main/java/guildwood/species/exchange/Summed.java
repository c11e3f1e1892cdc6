package guildwood.species.exchange;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A stream that sums up what is read from it and ends early where it would be too long. */
final class Summed extends FilterInputStream {
  private final MessageDigest sha256;
  private long left;
  private boolean cut;

  Summed(InputStream in, long mostBytes) {
    super(in);
    this.left = mostBytes;
    try {
      this.sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int count) throws IOException {
    int read = super.read(into, from, (int) Math.min(count, left + 1));
    if (read > left) {
      cut = true;
      return -1;
    }
    if (read > 0) {
      sha256.update(into, from, read);
      left -= read;
    }
    return read;
  }

  /** Whether there was more than it may give. */
  boolean isCut() {
    return cut;
  }

  /** The sum of all that was read; asked for once, at the end. */
  String sha256() {
    return HexFormat.of().formatHex(sha256.digest());
  }
}
