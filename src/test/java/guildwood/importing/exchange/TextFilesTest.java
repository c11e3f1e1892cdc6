package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.TableRow;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text files as spreadsheets, databases and people write them. */
class TextFilesTest {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  @TempDir
  Path folder;

  @Test
  void commasWithQuotesAndLineBreaksInCells() {
    assertRead("name,note\nHazel,\"nuts, \"\"sweet\"\"\"\nApple,\"one\ntwo\"\n", ',',
        List.of("name", "note"), List.of("Hazel", "nuts, \"sweet\""), List.of("Apple", "one\ntwo"));
  }

  @Test
  void semicolonsBesideDecimalCommas() {
    assertRead("Art;Höhe;Breite\nHasel;4,5;3,5\nApfel;6,0;5,5\nMinze;0,6;0,5\n", ';',
        List.of("Art", "Höhe", "Breite"), List.of("Hasel", "4,5", "3,5"), List.of("Apfel", "6,0", "5,5"), List.of("Minze", "0,6", "0,5"));
  }

  @Test
  void semicolonsWhereEveryRowHasOneComma() {
    assertRead("species;height\nCorylus avellana;4,5\nMalus domestica;6,5\nMentha spicata;0,6\n", ';',
        List.of("species", "height"), List.of("Corylus avellana", "4,5"), List.of("Malus domestica", "6,5"), List.of("Mentha spicata", "0,6"));
  }

  @Test
  void tabsBesideCommasInSentences() {
    assertRead("name\tuses\nHazel\tnuts, poles, hedges\nMint\ttea, ground cover, bees\nYarrow\tbees, cut flowers, tea\n", '\t',
        List.of("name", "uses"), List.of("Hazel", "nuts, poles, hedges"), List.of("Mint", "tea, ground cover, bees"),
        List.of("Yarrow", "bees, cut flowers, tea"));
  }

  @Test
  void commasBesideListsWithSemicolons() {
    assertRead("name,uses,zone\nHazel,nuts; poles,4\nMint,tea; bees,3\nYarrow,bees; tea,3\n", ',',
        List.of("name", "uses", "zone"), List.of("Hazel", "nuts; poles", "4"), List.of("Mint", "tea; bees", "3"), List.of("Yarrow", "bees; tea", "3"));
  }

  @Test
  void pipesAndRareSigns() {
    assertRead("name|zone\nHazel|4\nMint|3\n", '|', List.of("name", "zone"), List.of("Hazel", "4"), List.of("Mint", "3"));
    assertRead("name^zone\nHazel^4\nMint^3\n", '^', List.of("name", "zone"), List.of("Hazel", "4"), List.of("Mint", "3"));
    assertRead("name~zone\nHazel~4\nMint~3\n", '~', List.of("name", "zone"), List.of("Hazel", "4"), List.of("Mint", "3"));
  }

  @Test
  void oneColumnStaysOne() {
    assertRead("species\nCorylus avellana\nMalus domestica, the apple\nMentha\n", TextFormat.CellStyle.NONE,
        List.of("species"), List.of("Corylus avellana"), List.of("Malus domestica, the apple"), List.of("Mentha"));
    assertRead("height\n6\"\n18\" or so\n", TextFormat.CellStyle.NONE, List.of("height"), List.of("6\""), List.of("18\" or so"));
  }

  @Test
  void titleRowsAboveTheTable() {
    assertRead("Our plants\n\nname,height,zone\nHazel,4,4\nMint,0.6,3\nYarrow,0.5,3\nApple,6,4\n", ',',
        List.of("Our plants"), List.of("name", "height", "zone"), List.of("Hazel", "4", "4"), List.of("Mint", "0.6", "3"),
        List.of("Yarrow", "0.5", "3"), List.of("Apple", "6", "4"));
  }

  @Test
  void theFirstLineMayNameTheSeparator() {
    Path file = write("sep=;\r\nname;note\r\nHazel;a,b\r\n", StandardCharsets.UTF_8);
    assertEquals(List.of(List.of("name", "note"), List.of("Hazel", "a,b")), TestTables.texts(file));
    assertEquals(List.of(1L, 2L), numbers(file), "the line of the separator is no row, as in the spreadsheet that wrote it");
  }

  @Test
  void allLineEnds() {
    for (String end : List.of("\n", "\r\n", "\r")) {
      Path file = write(String.join(end, "name,zone", "Hazel,4", "", "Mint,3"), StandardCharsets.UTF_8);
      assertEquals(List.of(List.of("name", "zone"), List.of("Hazel", "4"), List.of("Mint", "3")), TestTables.texts(file));
      assertEquals(List.of(1L, 2L, 4L), numbers(file), "empty rows are left out and counted");
    }
  }

  @Test
  void allEncodings() {
    String text = "name\tnote\nNoisetier\tforêt, 4 m\nŠípek – růže\tčaj\nHazel\t½ shade\n";
    List<List<String>> rows = List.of(List.of("name", "note"), List.of("Noisetier", "forêt, 4 m"), List.of("Šípek – růže", "čaj"), List.of("Hazel", "½ shade"));
    for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      assertEquals(rows, TestTables.texts(write(text, charset)), charset + " without a mark");
      assertEquals(rows, TestTables.texts(write("\uFEFF" + text, charset)), charset + " with a mark");
    }
    assertEquals(rows, TestTables.texts(write("\uFEFF" + text, Charset.forName("UTF-32LE"))));
    assertEquals(List.of(List.of("nom", "note"), List.of("Noisetier", "forêt – 10 €")),
        TestTables.texts(write("nom;note\nNoisetier;forêt – 10 €\n", WINDOWS_1252)));
  }

  @Test
  void aMixOfEncodingsIsRefusedWithItsLine() {
    byte[] utf8 = "name,note\nChêne,forêt\nÉrable,prairie\n".getBytes(StandardCharsets.UTF_8);
    byte[] ansi = "Genêt,lande\n".getBytes(WINDOWS_1252);
    byte[] both = java.util.Arrays.copyOf(utf8, utf8.length + ansi.length);
    System.arraycopy(ansi, 0, both, utf8.length, ansi.length);
    assertEquals("mixed-encoding 4", TestTables.refusal(TestTables.file(folder, "mixed.csv", both)));
  }

  @Test
  void spacesBeforeQuotesAndBackslashesInThem() {
    assertRead("name, note\nHazel, \"nuts, poles\"\nMint, \"tea, bees\"\n", ',', List.of("name", "note"), List.of("Hazel", "nuts, poles"), List.of("Mint", "tea, bees"));
    assertRead("name,note\nHazel,\"4\\\" thick, straight\"\nMint,\"6\\\" deep, spreading\"\n", ',',
        List.of("name", "note"), List.of("Hazel", "4\" thick, straight"), List.of("Mint", "6\" deep, spreading"));
  }

  @Test
  void inchMarksInAFileWithoutQuoting() {
    assertRead("name\theight\nHazel\t180\"\n\"Ashmead\" apple\t200\"\nMint\t24\"\n", '\t',
        List.of("name", "height"), List.of("Hazel", "180\""), List.of("\"Ashmead\" apple", "200\""), List.of("Mint", "24\""));
  }

  @Test
  void quotesInDisorderAreNamedWithTheirRow() {
    assertEquals("quotes 3", TestTables.refusal(write("name,note,zone\nHazel,nuts,4\nMint,\"tea, bees,3\nYarrow,bees,3\n", StandardCharsets.UTF_8)));
    assertEquals("quotes 3", TestTables.refusal(write("name,note,zone\nHazel,nuts,4\nMint,\"tea\" bees, cut,3\nYarrow,bees,3\n", StandardCharsets.UTF_8)));
    assertEquals("quotes 3", TestTables.refusal(write("name,zone,uses\nHazel,4,\"nuts\"\nMint,\"5,tea\n", StandardCharsets.UTF_8)), "quoted elsewhere");
    StringBuilder late = new StringBuilder("name,note,zone\n");
    for (int i = 0; i < 30_000; i++) {
      late.append("Hazel ").append(i).append(",nuts,4\n");
    }
    assertEquals("quotes 30002", TestTables.refusal(write(late + "Mint,\"tea,3\n", StandardCharsets.UTF_8)));
    assertEquals("row-length 30002", TestTables.refusal(write(late + "Mint,\"tea,3\n" + "x,y,z\n".repeat(1_000_000), StandardCharsets.UTF_8)));
  }

  @Test
  void textThatLooksLikeAFormulaIsText() {
    assertRead("name,note\nHazel,=1+2\nMint,'-twice\nYarrow,'+up\nApple,@home\nPear,-28\n", ',', List.of("name", "note"),
        List.of("Hazel", "=1+2"), List.of("Mint", "-twice"), List.of("Yarrow", "+up"), List.of("Apple", "@home"), List.of("Pear", "-28"));
  }

  @Test
  void limitsAreSaidWithTheirPlace() {
    assertEquals("columns 2 1000", TestTables.refusal(write("a,b\n" + "x,".repeat(1_000) + "x\n", StandardCharsets.UTF_8)));
    assertEquals("", TestTables.refusal(write("a,b\nx,y" + ",".repeat(16_382) + "\n", StandardCharsets.UTF_8)), "empty cells at the end do no harm");
    assertEquals("cell 2 2 32767", TestTables.refusal(write("a,b\nx," + "y".repeat(32_768) + "\n", StandardCharsets.UTF_8)));
    assertEquals("", TestTables.refusal(write("a,b\nx," + "y".repeat(32_767) + "\n", StandardCharsets.UTF_8)));
    assertEquals("rows 1000000", TestTables.refusal(write("a,b\n".repeat(1_000_001), StandardCharsets.UTF_8)));
    assertEquals("row-length 1", TestTables.refusal(write("x".repeat(5_000_000), StandardCharsets.UTF_8)));
    assertEquals("row-length 1", TestTables.refusal(write("x,".repeat(2_500_000), StandardCharsets.UTF_8)));
  }

  @Test
  void theTakerMayStop() {
    Path file = write("a,b\n1,2\n3,4\n", StandardCharsets.UTF_8);
    assertEquals(2L, TableFiles.open(file, "x").orThrow().get(0).rows(row -> row.number() < 2).orThrow());
  }

  private void assertRead(String text, char separator, List<?>... rows) {
    Path file = write(text, StandardCharsets.UTF_8);
    assertEquals(List.of(rows), TestTables.texts(file), text);
    try {
      assertEquals(separator, TextFiles.format(file).cells().separator(), text);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private List<Long> numbers(Path file) {
    return TestTables.rows(TableFiles.open(file, "x").orThrow().get(0)).stream().map(TableRow::number).toList();
  }

  private Path write(String text, Charset charset) {
    return TestTables.file(folder, "plants.csv", text.getBytes(charset));
  }
}
