package guildwood.importing.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a file is, by its first bytes; its name may say anything. Files that are no table are refused by what they are. */
final class FileSigns {
  private static final int HEAD = 4_096;

  /** The directory of such a file may stand anywhere; its names are in UTF-16. */
  private static final int OLE_PEEK = 8 << 20;

  private static final List<Sign> REFUSED = List.of(
      new Sign("pdf", "%PDF"),
      new Sign("picture", "\u0089PNG"), new Sign("picture", "\u00FF\u00D8\u00FF"), new Sign("picture", "GIF8"),
      new Sign("picture", "II*\0"), new Sign("picture", "MM\0*"), new Sign("picture", "BM", 6, "\0\0\0\0"),
      new Sign("picture", "RIFF", 8, "WEBP"), new Sign("picture", "\0\0\0", 4, "ftyp"),
      new Sign("old-xls", "\t\0\4\0"), new Sign("old-xls", "\t\2\6\0"), new Sign("old-xls", "\t\4\6\0"),
      new Sign("old-xls", "\t\b"),
      new Sign("packed", "\u001F\u008B"), new Sign("packed", "7z\u00BC\u00AF"), new Sign("packed", "Rar!"),
      new Sign("packed", "BZh", 4, "1AY&SY"), new Sign("packed", "\u00FD7zXZ"), new Sign("packed", "(\u00B5/\u00FD"),
      new Sign("database", "SQLite format 3"), new Sign("database", "PAR1"), new Sign("database", "\0\u0001\0\0Standard"),
      new Sign("document", "{\\rtf"));

  private static final Pattern HTML = Pattern.compile("<(!doctype html|html|head|body|table|meta|style|div)\\b.*", Pattern.DOTALL);
  private static final Pattern XML = Pattern.compile("<(\\?xml|!--|!doctype|[a-z]+:[a-z]+\\b).*", Pattern.DOTALL);
  private static final Pattern JSON = Pattern.compile("(\\{\\s*\"|\\[\\s*[\\[{\"]).*", Pattern.DOTALL);

  private FileSigns() {}

  /** Whether the file is packed as a zip, as XLSX and ODS are; otherwise it is text. */
  static boolean isZip(Path file) throws IOException {
    byte[] head = head(file, HEAD);
    String signs = new String(head, StandardCharsets.ISO_8859_1);
    if (signs.startsWith("PK\u0003\u0004") || signs.startsWith("PK\u0005\u0006")) {
      return true;
    }
    if (signs.startsWith("\u00D0\u00CF\u0011\u00E0")) {
      throw new RefusedRead(oldOffice(file));
    }
    for (Sign sign : REFUSED) {
      if (sign.isOn(signs)) {
        throw new RefusedRead(sign.code());
      }
    }
    refuseMarkup(signs);
    return false;
  }

  private static void refuseMarkup(String signs) throws RefusedRead {
    String begin = signs.replaceFirst("^(\u00EF\u00BB\u00BF|\u00FF\u00FE|\u00FE\u00FF)", "").replace("\0", "").stripLeading().toLowerCase(Locale.ROOT);
    if (HTML.matcher(begin).matches() || begin.startsWith("<?xml") && begin.contains("<html")) {
      throw new RefusedRead("html");
    }
    if (XML.matcher(begin).matches()) {
      throw new RefusedRead("xml");
    }
    if (JSON.matcher(begin).matches()) {
      throw new RefusedRead("json");
    }
  }

  /** A container that holds old spreadsheets, old documents, and new ones behind a password. */
  private static String oldOffice(Path file) throws IOException {
    String peek = new String(head(file, OLE_PEEK), StandardCharsets.ISO_8859_1);
    if (peek.contains(wide("EncryptedPackage"))) {
      return "password";
    }
    return peek.contains(wide("Workbook")) || peek.contains(wide("Book")) ? "old-xls" : "document";
  }

  private static String wide(String name) {
    return new String(name.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
  }

  private static byte[] head(Path file, int length) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(length);
    }
  }

  /**
   * The first bytes of a kind of file, a character a byte.
   *
   * @param second what stands further on, where the first bytes alone could be text
   */
  private record Sign(String code, String first, int at, String second) {
    Sign(String code, String first) {
      this(code, first, 0, "");
    }

    boolean isOn(String signs) {
      return signs.startsWith(first) && signs.startsWith(second, at);
    }
  }
}
