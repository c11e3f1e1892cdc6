package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A file is what its content says, whatever its name; what is no table is refused by what it is. */
class TableFilesTest {
  @TempDir
  Path folder;

  static Stream<Arguments> noTables() {
    return Stream.of(
        Arguments.of("%PDF-1.7", "pdf"),
        Arguments.of("\u0089PNG\r\n", "picture"),
        Arguments.of("GIF89a", "picture"),
        Arguments.of("\u001F\u008B\b\0", "packed"),
        Arguments.of("Rar!\u001A\u0007", "packed"),
        Arguments.of("SQLite format 3\0", "database"),
        Arguments.of("{\\rtf1 plants}", "document"),
        Arguments.of("<!DOCTYPE html><html><table><tr><td>1</td></tr></table></html>", "html"),
        Arguments.of("<?xml version='1.0'?><html xmlns='x'></html>", "html"),
        Arguments.of("<table border=1><tr><td>Hazel</td></tr></table>", "html"),
        Arguments.of("<?xml version='1.0'?><Workbook/>", "xml"),
        Arguments.of("[{\"name\": \"Hazel\"}]", "json"),
        Arguments.of("{\"name\": \"Hazel\"}", "json"),
        Arguments.of("\t\b\u0010\0\0\u0006", "old-xls"));
  }

  @ParameterizedTest
  @MethodSource("noTables")
  void whatIsNoTable(String begin, String refusal) {
    assertEquals(refusal, refusal(begin.getBytes(StandardCharsets.ISO_8859_1)));
  }

  @Test
  void nothingAtAll() {
    assertEquals("empty", refusal(new byte[0]));
    assertEquals("empty", refusal("\uFEFF \r\n\t\n".getBytes(StandardCharsets.UTF_8)));
    assertEquals("file.missing", TestTables.refusal(folder.resolve("nowhere.csv")));
  }

  @Test
  void rubbish() {
    byte[] bytes = new byte[10_000];
    new Random(1).nextBytes(bytes);
    assertEquals("binary", refusal(bytes));
    assertEquals("binary", refusal("name,zone\nHa\0zel,4\n".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void oldContainers() {
    assertEquals("old-xls", refusal(container("Workbook")));
    assertEquals("password", refusal(container("EncryptedPackage")));
    assertEquals("document", refusal(container("WordDocument")));
  }

  @Test
  void otherZips() {
    assertEquals("xlsb", refusal(zip("[Content_Types].xml", "<Types/>", "xl/workbook.bin", "x")));
    assertEquals("document", refusal(zip("[Content_Types].xml", "<Types/>", "word/document.xml", "<w/>")));
    assertEquals("document", refusal(zip("mimetype", "application/vnd.oasis.opendocument.text", "content.xml", "<o/>")));
    assertEquals("numbers", refusal(zip("Index/Document.iwa", "x", "preview.jpg", "x")));
    assertEquals("packed", refusal(zip("plants.csv", "a,b")));
    assertEquals("no-sheets", refusal(zip("[Content_Types].xml", "<Types/>", "_rels/.rels", "<R/>")));
  }

  @Test
  void zipsThatAreNotWhole() {
    byte[] whole = zip("[Content_Types].xml", "<Types/>", "xl/workbook.xml", "<w/>");
    assertEquals("damaged", refusal(java.util.Arrays.copyOf(whole, whole.length / 2)));
    assertEquals("damaged", refusal("PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1)));
    Map<String, String> many = new LinkedHashMap<>();
    for (int i = 0; i < 6_000; i++) {
      many.put("../../part" + i, "");
    }
    assertEquals("entries 5000", refusal(TestTables.zip(many)));
  }

  @Test
  void aFileOverTheLimit() throws IOException {
    Path file = folder.resolve("huge.csv");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(TableFiles.MOST_BYTES + 1);
    }
    assertEquals("size 50", TestTables.refusal(file));
    Files.delete(file);
  }

  private String refusal(byte[] bytes) {
    return TestTables.refusal(TestTables.file(folder, "plants.csv", bytes));
  }

  private static byte[] zip(String... namesAndTexts) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      parts.put(namesAndTexts[i], namesAndTexts[i + 1]);
    }
    return TestTables.zip(parts);
  }

  private static byte[] container(String name) {
    String wide = new String(name.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
    return ("\u00D0\u00CF\u0011\u00E0\u00A1\u00B1\u001A\u00E1" + "\0".repeat(1_000) + wide + "\0".repeat(1_000)).getBytes(StandardCharsets.ISO_8859_1);
  }
}
