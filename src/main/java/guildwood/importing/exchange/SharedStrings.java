package guildwood.importing.exchange;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;

/**
 * The texts of a workbook, which its sheets name by number. They lie in a temporary file, and those used last in
 * memory: held whole, the texts of a file of 50 MB took up to 200 MB of heap.
 */
final class SharedStrings implements AutoCloseable {
  private static final int BLOCK = 16;
  private static final int MOST_CACHED_CHARS = 1_000_000;

  private final Path spool;
  private final RandomAccessFile file;
  private final Map<Integer, String[]> cache = new LinkedHashMap<>(1_024, 0.75f, true);
  private long[] blockStarts = new long[64];
  private int size;
  private long end;
  private int cachedChars;

  /** Reads them all; an absent part holds none. */
  SharedStrings(ZipParts parts, String part) throws IOException {
    spool = Files.createTempFile("guildwood-texts", ".tmp");
    try {
      if (parts.has(part)) {
        try (XmlPart xml = new XmlPart(parts.open(part)); OutputStream out = new BufferedOutputStream(Files.newOutputStream(spool), 1 << 16)) {
          write(xml, new DataOutputStream(out));
        }
      }
      file = new RandomAccessFile(spool.toFile(), "r");
    } catch (IOException e) {
      Files.deleteIfExists(spool);
      throw e;
    }
  }

  private void write(XmlPart xml, DataOutputStream out) throws IOException {
    for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
      if (event == XMLStreamConstants.START_ELEMENT && xml.element().equals("si")) {
        byte[] text = RichText.read(xml).getBytes(StandardCharsets.UTF_8);
        if (size % BLOCK == 0) {
          int block = size / BLOCK;
          blockStarts = block == blockStarts.length ? Arrays.copyOf(blockStarts, 2 * block) : blockStarts;
          blockStarts[block] = end;
        }
        out.writeInt(text.length);
        out.write(text);
        end += Integer.BYTES + text.length;
        size++;
      }
    }
  }

  /** A text by its number from 0. */
  String at(int number) throws IOException {
    if (number < 0 || number >= size) {
      throw new RefusedRead("damaged");
    }
    String[] block = cache.get(number / BLOCK);
    if (block == null) {
      block = load(number / BLOCK);
      cache.put(number / BLOCK, block);
      shrink();
    }
    return block[number % BLOCK];
  }

  private String[] load(int block) throws IOException {
    boolean last = (block + 1) * (long) BLOCK >= size;
    byte[] bytes = new byte[(int) ((last ? end : blockStarts[block + 1]) - blockStarts[block])];
    file.seek(blockStarts[block]);
    file.readFully(bytes);
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    String[] texts = new String[last ? size - block * BLOCK : BLOCK];
    for (int i = 0; i < texts.length; i++) {
      int length = buffer.getInt();
      texts[i] = new String(bytes, buffer.position(), length, StandardCharsets.UTF_8);
      buffer.position(buffer.position() + length);
      cachedChars += texts[i].length();
    }
    return texts;
  }

  private void shrink() {
    var oldest = cache.entrySet().iterator();
    while (cachedChars > MOST_CACHED_CHARS && cache.size() > 1) {
      for (String text : oldest.next().getValue()) {
        cachedChars -= text.length();
      }
      oldest.remove();
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
    Files.deleteIfExists(spool);
  }
}
