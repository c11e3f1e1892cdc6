package guildwood.importing.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Damages files as bad disks, bad programs and bad people do; seeded, so that every damage can be had again. */
public final class Damage {
  /** What hurts parsers when it turns up where it does not belong. */
  private static final List<String> TOKENS = List.of("\"", "'", ",", ";", "\t", "\n", "\r\n", "\0", "\u001A", "<", ">", "&", "&lt;", "&#0;", "&#xD800;", "&x;", "]]>",
      "<![CDATA[", "<!--", "-->", "<?", "</c>", "</row>", "<row r=\"9999999999\">", "<c r=\"ZZZZ1\" t=\"s\"><v>-1</v></c>", "<c r=\"XFD1\"><v>1e400</v></c>",
      "<v>99999999999</v>", "t=\"s\"", "t=\"d\"", "<!DOCTYPE a [<!ENTITY b \"c\">]>", "table:number-columns-repeated=\"99999\"", "table:number-rows-repeated=\"9999\"",
      "</table:table>", "<table:table>", "<table:table-row>", "<text:s text:c=\"9999\"/>", "office:value-type=\"float\"", "office:value=\"NaN\"",
      "sep=;\n", "\uFEFF", "é", "\u00FF", "0", "-", "999999999999", "1E5", "../", "PK\u0003\u0004", "PK\u0001\u0002", "PK\u0005\u0006");

  private final Random random;

  public Damage(long seed) {
    random = new Random(seed);
  }

  /** Damages a zip: as a whole, or the parts in it, or which parts there are. */
  public byte[] zip(byte[] whole, Map<String, byte[]> itsParts) {
    if (random.nextInt(4) == 0) {
      return bytes(whole);
    }
    Map<String, byte[]> parts = new LinkedHashMap<>(itsParts);
    List<String> names = List.copyOf(parts.keySet());
    for (int i = random.nextInt(3); i >= 0; i--) {
      String name = names.get(random.nextInt(names.size()));
      String other = names.get(random.nextInt(names.size()));
      switch (random.nextInt(12)) {
        case 0 -> parts.remove(name);
        case 1 -> parts.put(name, new byte[0]);
        case 2 -> parts.put(name, parts.getOrDefault(other, new byte[0]));
        default -> parts.computeIfPresent(name, (n, part) -> bytes(part));
      }
    }
    return packed(parts);
  }

  /** Damages a file without looking at what it is. */
  public byte[] bytes(byte[] whole) {
    byte[] damaged = whole;
    for (int i = random.nextInt(4); i >= 0; i--) {
      damaged = once(damaged);
    }
    return damaged;
  }

  private byte[] once(byte[] whole) {
    if (whole.length == 0) {
      return token();
    }
    int at = random.nextInt(whole.length);
    int length = Math.min(whole.length - at, 1 + random.nextInt(1 << random.nextInt(10)));
    return switch (random.nextInt(8)) {
      case 0 -> Arrays.copyOf(whole, at);
      case 1 -> join(Arrays.copyOf(whole, at), Arrays.copyOfRange(whole, at + length, whole.length));
      case 2 -> join(Arrays.copyOf(whole, at + length), Arrays.copyOfRange(whole, at, whole.length));
      case 3, 4 -> join(Arrays.copyOf(whole, at), token(), Arrays.copyOfRange(whole, at, whole.length));
      case 5 -> overwritten(whole, at, token());
      default -> flipped(whole);
    };
  }

  private byte[] token() {
    return TOKENS.get(random.nextInt(TOKENS.size())).getBytes(random.nextBoolean() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
  }

  /** Up to eight bytes changed, none added or lost. */
  byte[] flipped(byte[] whole) {
    byte[] damaged = whole.clone();
    for (int i = random.nextInt(8); i >= 0; i--) {
      int at = random.nextInt(damaged.length);
      damaged[at] = (byte) (random.nextBoolean() ? random.nextInt(256) : damaged[at] ^ 1 << random.nextInt(8));
    }
    return damaged;
  }

  private static byte[] overwritten(byte[] whole, int at, byte[] token) {
    byte[] damaged = whole.clone();
    System.arraycopy(token, 0, damaged, at, Math.min(token.length, damaged.length - at));
    return damaged;
  }

  private static byte[] join(byte[]... pieces) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    for (byte[] piece : pieces) {
      joined.writeBytes(piece);
    }
    return joined.toByteArray();
  }

  /** What is in a zip. */
  public static Map<String, byte[]> parts(Path file) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
        try (InputStream in = zip.getInputStream(entry)) {
          parts.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return parts;
  }

  private static byte[] packed(Map<String, byte[]> parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
