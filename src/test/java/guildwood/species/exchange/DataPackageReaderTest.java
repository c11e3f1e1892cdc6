package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.LibraryContents;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Data packages that somebody changed, and files that are none. */
class DataPackageReaderTest {
  @TempDir
  private Path folder;

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
    "species.csv | ,Rubus idaeus, | ,rubus, | species.csv, row 2, column scientific_name | species.not-a-name",
    "species.csv | rubus-idaeus, | Rubus!, | species.csv, row 2, column id | seed.id",
    "species.csv | id,sci | ID,sci | species.csv, row 1 | seed.header",
    "sources.csv | ,hearsay, | ,rumour, | sources.csv, row 3, column kind | seed.kind",
    "values.csv | ,height,,3-6 m, | ,height,,6-3 m, | values.csv, row 2, column value | range.backwards",
    "values.csv | ,height,,3-6 m, | ,height,,3-6, | values.csv, row 2, column value | number.unit-missing",
    "values.csv | ,neighbour, | ,nobody, | values.csv, row 2, column source | seed.no-source",
    "values.csv | ,yes,note | ,maybe,note | values.csv, row 2, column rules | seed.rules",
    "values.csv | ,yes,note | ,yes,\"no~te\" | values.csv, row 2 | seed.unreadable",
    "values.csv | ,yes,note | ,yes,\"note | values.csv, row 2 | seed.unreadable",
    "holdings.csv | ,4,3,2.50 | ,four,3,2.50 | holdings.csv, row 2, column plants_on_hand | number.not-whole",
    "holdings.csv | ,4,3,2.50 | ,4,999999,2.50 | holdings.csv, row 2, column plants_to_propagate | number.out-of-scale",
    "holdings.csv | ,4,3,2.50 | ,4,3,2.505 | holdings.csv, row 2, column price | number.unreadable",
    "holdings.csv | ,4,3,2.50 | ,4,3,9999999 | holdings.csv, row 2, column price | number.out-of-scale",
    "notes.csv | 1,rubus-idaeus,neighbour,a | 1,rubus-idaeus,own-experience,a | notes.csv, row 3, column note | package.note-mixed",
    "notes.csv | 1,rubus-idaeus,neighbour,Soil | one,rubus-idaeus,neighbour,Soil | notes.csv, row 2, column note | number.not-whole",
    "datapackage.json | \"guildwoodLibrary\":1 | \"other\":1 | `` | package.not-a-library",
    "datapackage.json | \"guildwoodLibrary\":1 | \"guildwoodLibrary\":2 | `` | package.newer",
    "datapackage.json | \"guildwoodLibrary\":1 | \"guildwoodLibrary\" | `` | package.bad-descriptor"
  })
  void whatCannotBeReadIsNamedWithItsPlace(String file, String part, String instead, String place, String code) throws IOException {
    Checked<LibraryPackage> read = read(files(file, text -> text.replace(part, instead.replace("~", "\r\n"))));
    assertEquals(code + " at " + place, read.findings().get(0).code() + " at " + read.findings().get(0).field());
    new Messages().say(read.findings().get(0));
  }

  @Test
  void theSmallPackageIsSound() throws IOException {
    LibraryPackage small = read(files("", UnaryOperator.identity())).orThrow();
    LibraryContents contents = small.contents();
    assertEquals("1 species, 2 sources, 2 values, 1 holdings", contents.species().size() + " species, " + contents.sources().size()
        + " sources, " + contents.statements().size() + " values, " + contents.holdings().size() + " holdings");
    assertEquals(List.of(), small.remarks());
    assertEquals(List.of("Soil: any\na \\ b", "=kept"), contents.notes().stream().map(n -> n.text()).toList());
    assertEquals(250, contents.holdings().get(0).priceCents().orElseThrow());
  }

  @Test
  void numbersThatDisagreeWithTheValueAreRemarked() throws IOException {
    LibraryPackage changed = read(files("values.csv", text -> text.replace("3,6", "3,9"))).orThrow();
    assertEquals(List.of(Finding.of("package.numbers-differ", "values.csv, row 2, column value", "3-6 m")), changed.remarks());
  }

  @Test
  void everythingWrongIsNamedAtOnce() throws IOException {
    assertEquals(3, read(files("values.csv", text -> text.replace(",height,,3-6 m,", ",depth,,3-6 m,").replace(",neighbour,", ",a,")
        .replace(",yes,note", ",y,note"))).findings().size());
  }

  @Test
  void otherZipsAndFilesAreNoLibraries() throws IOException {
    Path text = Files.writeString(folder.resolve("text.zip"), "id,scientific_name\n");
    assertFalse(DataPackageReader.isPackage(text));
    assertEquals("package.not-a-zip", DataPackageReader.read(text).findings().get(0).code());
    Map<String, String> sheets = new LinkedHashMap<>(Map.of("xl/workbook.xml", "<a/>"));
    Path workbook = write(sheets);
    assertFalse(DataPackageReader.isPackage(workbook));
    assertEquals("package.no-descriptor", DataPackageReader.read(workbook).findings().get(0).code());
    assertFalse(DataPackageReader.isPackage(folder.resolve("nowhere.zip")));
    assertTrue(DataPackageReader.read(folder.resolve("nowhere.zip")).isRefused());
  }

  @Test
  void aMissingTableIsNamed() throws IOException {
    Map<String, String> files = files("", UnaryOperator.identity());
    files.remove("sources.csv");
    assertEquals("seed.no-file at sources.csv", first(read(files)));
  }

  /** What unpacks to far more than it is must not fill the memory, whatever it pretends. */
  @Test
  void bombsAreRefused() throws IOException {
    Path bomb = folder.resolve("bomb.zip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
      for (Map.Entry<String, String> file : files("", UnaryOperator.identity()).entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        if (file.getKey().equals("species.csv")) {
          fill(zip, 300);
        }
      }
    }
    assertTrue(Files.size(bomb) < 1_000_000, Files.size(bomb) + " bytes");
    assertEquals("seed.unreadable at species.csv, row 3", first(DataPackageReader.read(bomb)));
  }

  private static void fill(OutputStream zip, int megabytes) throws IOException {
    byte[] block = "a".repeat(1_000_000).getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < megabytes; i++) {
      zip.write(block);
    }
  }

  @Test
  void thousandsOfEntriesAreRefused() throws IOException {
    Map<String, String> files = files("", UnaryOperator.identity());
    for (int i = 0; i < 2_000; i++) {
      files.put("more/" + i, "");
    }
    assertEquals("package.too-many-files at ", first(read(files)));
  }

  private static String first(Checked<LibraryPackage> read) {
    return read.findings().get(0).code() + " at " + read.findings().get(0).field();
  }

  /** A package of one species, with one of its files changed. */
  private static Map<String, String> files(String changed, UnaryOperator<String> change) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("datapackage.json", "{\"guildwoodLibrary\":1}");
    files.put("species.csv", "id,scientific_name,common_names,family,synonyms\r\nrubus-idaeus,Rubus idaeus,raspberry,Rosaceae,\r\n");
    files.put("sources.csv", "id,kind,author,title,year,locator\r\nown-experience,own-experience,,Own experience,,\r\n"
        + "neighbour,hearsay,A neighbour,Over the fence,2020,\r\n");
    files.put("traits.csv", "trait,title,form,unit,lowest,highest,words,items\r\n");
    files.put("values.csv", "species,trait,item,value,low,high,unit,source,evidence,rules,note\r\n"
        + "rubus-idaeus,height,,3-6 m,3,6,m,neighbour,,yes,note\r\n"
        + "rubus-idaeus,function,bird-food,yes,,,,own-experience,observed,,\r\n");
    files.put("unread.csv", "species,trait,item,value,source,evidence,rules,note\r\n");
    files.put("notes.csv", "note,species,source,text\r\n1,rubus-idaeus,neighbour,Soil: any\r\n1,rubus-idaeus,neighbour,a \\\\ b\r\n"
        + "2,rubus-idaeus,own-experience,'=kept\r\n");
    files.put("holdings.csv", "species,plants_on_hand,plants_to_propagate,price\r\nrubus-idaeus,4,3,2.50\r\n");
    files.computeIfPresent(changed, (name, text) -> change.apply(text));
    return files;
  }

  private Checked<LibraryPackage> read(Map<String, String> files) throws IOException {
    return DataPackageReader.read(write(files));
  }

  private Path write(Map<String, String> files) throws IOException {
    Path file = folder.resolve("library.zip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, String> each : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return file;
  }
}
