package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Range;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of species, out and in again. */
class SpeciesTableTest {
  @Test
  void theShippedLibraryComesBackByteForByte() throws IOException {
    List<Species> shipped = ShippedLibrary.read("/seed-data").orThrow().species();
    String first = written(shipped);
    List<Species> again = read(first).orThrow().species();
    assertEquals(shipped.stream().map(Species::id).toList(), again.stream().map(Species::id).toList());
    assertEquals(first, written(again));
    assertTrue(shipped.size() > 300, "rows: " + shipped.size());
  }

  @Test
  void everyTraitOfTheCatalogueHasAColumn() throws IOException {
    List<String> header = rows(written(List.of())).get(0).toList();
    for (Trait trait : Trait.values()) {
      long columns = header.stream().filter(c -> c.equals(trait.key()) || c.startsWith(trait.key() + ".")).count();
      int items = trait == Trait.CAUTION ? guildwood.species.CautionKind.values().length : trait.items().size();
      assertEquals(trait.hasItems() ? items * (trait.carriesEvidence() ? 2 : 1) : 1, columns, trait.key());
    }
    assertEquals(header.size(), Set.copyOf(header).size());
  }

  @Test
  void valuesStandInTheUnitsTheProgramReckonsIn() throws IOException {
    Species apple = species("Malus domestica",
        said(Trait.HEIGHT, "", "10 ft"), said(Trait.COLDEST_WINTER, "", "-28 C"), said(Trait.PH, "", "6.0 to 7.0"),
        said(Trait.LIGHT, "", "full sun"), said(Trait.BLOOM, "", "May; April"), said(Trait.LAYER, "", "small-tree; shrub"),
        said(Trait.HARVEST, "fruit", "September"), said(Trait.HARVEST, "leaf", "yes"),
        said(Trait.PROPAGATION, "grafting", "winter; spring"), said(Trait.NATIVITY, "asia", "native"),
        said(Trait.WETLAND, "midwest", "UPL"), said(Trait.POLLINATION, "", "partner-needed"));
    assertEquals("3.048", cell(apple, "height"));
    assertEquals("-28", cell(apple, "coldest_winter"));
    assertEquals("6 to 7", cell(apple, "ph"));
    assertEquals("6 to 16", cell(apple, "light"));
    assertEquals("4; 5", cell(apple, "bloom"));
    assertEquals("shrub; small-tree", cell(apple, "layer"));
    assertEquals("9", cell(apple, "harvest.fruit"));
    assertEquals("yes", cell(apple, "harvest.leaf"));
    assertEquals("spring; winter", cell(apple, "propagation.grafting"));
    assertEquals("native", cell(apple, "nativity.asia"));
    assertEquals("UPL", cell(apple, "wetland.midwest"));
    assertEquals("partner-needed", cell(apple, "pollination"));
    assertEquals("", cell(apple, "crown"));
  }

  @Test
  void theValueThatRulesIsTheOneWritten() throws IOException {
    Statement first = said(Trait.PH, "", "5 to 6");
    Statement chosen = new Statement(0, Trait.PH, "", "6 to 7", said(Trait.PH, "", "6 to 7").value(), "s", first.evidence(), true, "");
    assertEquals("6 to 7", cell(species("Malus domestica", first, chosen), "ph"));
    Species mint = species("Mentha spicata", said(Trait.SPREAD, "", "runs"), said(Trait.SPREAD, "", "self-sows"));
    assertEquals("runs; self-sows", cell(mint, "spread"), "several sources complete one another");
  }

  @Test
  void claimsKeepTheirEvidence() throws IOException {
    Species clover = species("Trifolium repens",
        new WrittenStatement(0, "x", "function", "nitrogen-fixer", "yes", "s", "measured", false, "").read().orThrow(),
        new WrittenStatement(0, "x", "function", "fodder", "no", "s", "", false, "").read().orThrow(),
        new WrittenStatement(0, "x", "conflict", "juglone", "suffers", "s", "folk", false, "").read().orThrow());
    assertEquals("measured", cell(clover, "function.nitrogen-fixer.evidence"));
    assertEquals("no", cell(clover, "function.fodder"));
    assertEquals("", cell(clover, "function.fodder.evidence"));
    Species again = read(written(List.of(clover))).orThrow().species().get(0);
    assertEquals(Evidence.FOLK, again.ruling(Trait.CONFLICT, "juglone").orElseThrow().evidence().orElseThrow());
    assertEquals(false, again.does(GuildFunction.FODDER).orElseThrow());
  }

  @Test
  void cautionsKeepPartPlaceAndSentence() throws IOException {
    Species plant = species("Sambucus nigra",
        said(Trait.CAUTION, "toxic:leaves", "Poisonous; so is the bark: a slash \\ and more"),
        said(Trait.CAUTION, "toxic:raw fruit", "Cook first."),
        said(Trait.CAUTION, "listed:US-WI", "Restricted."),
        said(Trait.CAUTION, "thorns", "=2+3"));
    assertEquals("leaves: Poisonous\\; so is the bark: a slash \\\\ and more; raw fruit: Cook first.", cell(plant, "caution.toxic"));
    assertEquals("'=2+3", cell(plant, "caution.thorns"));
    Species again = read(written(List.of(plant))).orThrow().species().get(0);
    List<String> said = plant.cautions().stream().map(s -> s.item() + "|" + s.entered()).toList();
    assertEquals(said, again.cautions().stream().map(s -> s.item() + "|" + s.entered()).toList());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
    "=1+1 | '=1+1", "+1+1 | '+1+1", "@SUM(A1) | '@SUM(A1)", "-1+1 | '-1+1", "-28 | -28", "-28.5 | -28.5", "-34 to -29 | '-34 to -29",
    "＝1 | '＝1", "'=1 | ''=1", "plain | plain", "d'or | d'or", "'t was | 't was"
  })
  void textThatASpreadsheetWouldTakeForAFormulaIsMarkedAndComesBack(String text, String cell) {
    assertEquals(cell, SafeCell.mark(text));
    assertEquals(text, SafeCell.unmark(cell));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 0.1", "0, 0", "-0.0, 0", "100, 100", "-43.888888888888886, -43.888888888888886", "0.0254, 0.0254", "1e-3, 0.001", "2e-3, 0.002"})
  void numbersAreTheShortestThatReadBack(double number, String text) {
    assertEquals(text, PlainNumber.of(number));
    assertEquals(number, Double.parseDouble(PlainNumber.of(number)), 0.0);
  }

  @Test
  void aShortTableOfOnesOwnIsReadAsPeopleWrite() {
    Species pear = read("\uFEFFscientific_name,height,light,coldest_winter,layer,extra,\r\n"
        + "Pyrus communis,30 ft,part shade to full sun,zone 4,small-tree,x,\r\n\r\n").orThrow().species().get(0);
    assertEquals("pyrus-communis", pear.id());
    assertEquals(9.144, pear.range(Trait.HEIGHT).orElseThrow().max(), 1e-12);
    assertEquals(new Range(3, 16), pear.range(Trait.LIGHT).orElseThrow());
    assertEquals(-34.44, pear.range(Trait.COLDEST_WINTER).orElseThrow().min(), 0.01);
    assertEquals(Set.of(Layer.SMALL_TREE), pear.layers());
  }

  @Test
  void unknownColumnsAreNamed() {
    assertEquals(List.of("hieght", "notes"), read("scientific_name,hieght,notes\nMalus domestica,3,x\n").orThrow().unknownColumns());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
    "scientific_name,ph\\nMalus domestica,15 | row 2, column ph | number.out-of-scale",
    "scientific_name,ph\\nMalus domestica,7 to 6 | row 2, column ph | range.backwards",
    "scientific_name,ph\\nMalus domestica,NaN | row 2, column ph | number.unreadable",
    "scientific_name,height\\nMalus domestica,0 | row 2, column height | number.out-of-scale",
    "scientific_name,layer\\nMalus domestica,tree | row 2, column layer | value.unknown-word",
    "scientific_name,bloom\\nMalus domestica,13 | row 2, column bloom | month.unreadable",
    "scientific_name,function.fodder\\nMalus domestica,perhaps | row 2, column function.fodder | value.yes-or-no",
    "scientific_name,function.fodder.evidence\\nMalus domestica,folk | row 2, column function.fodder.evidence | species-table.evidence-alone",
    "scientific_name,function.fodder,function.fodder.evidence\\nMalus domestica,yes,sure | row 2, column function.fodder.evidence | evidence.unknown",
    "scientific_name,caution.listed\\nMalus domestica,somewhere | row 2, column caution.listed | species-table.caution-detail",
    "scientific_name\\napple | row 2, column scientific_name | species.not-a-name",
    "scientific_name\\nMalus domestica\\nMalus domestica | row 3 | species-table.twice",
    "id,scientific_name\\nApple!,Malus domestica | row 2, column id | seed.id",
    "scientific_name,ph\\nMalus domestica | row 2 | seed.cells",
    "name,ph\\nMalus domestica,6 | | species-table.no-name-column",
    "scientific_name,ph,ph\\nMalus domestica,6,7 | row 1 | seed.twice",
    "scientific_name\\n\"Malus domestica | row 2 | seed.unreadable"
  })
  void whatCannotBeReadIsNamedWithItsPlace(String table, String place, String code) {
    Checked<SpeciesTable> read = read(table.replace("\\n", "\n"));
    assertEquals(code + " at " + (place == null ? "" : place),
        read.findings().get(0).code() + " at " + read.findings().get(0).field());
    assertEquals(1, read.findings().size(), read.findings()::toString);
  }

  @Test
  void everyBadCellIsNamedAtOnce() {
    assertEquals(3, read("scientific_name,ph,light\nMalus domestica,99,x\nbad,6,7\n").findings().size());
  }

  @ParameterizedTest
  @ValueSource(bytes = {(byte) 0xE4, (byte) 0xFF})
  void otherEncodingsAreRefused(byte letter) {
    byte[] table = "scientific_name,family\nMalus domestica,Ros_ceae\n".getBytes(StandardCharsets.US_ASCII);
    table[table.length - 6] = letter;
    assertEquals("seed.not-utf-8", SpeciesTableReader.read(new ByteArrayInputStream(table)).findings().get(0).code());
  }

  @Test
  void nothingAtAllIsRefused() {
    assertFalse(read("").findings().isEmpty());
    assertTrue(read("scientific_name\n").orThrow().species().isEmpty());
  }

  private static Statement said(Trait trait, String item, String value) {
    return new WrittenStatement(0, "x", trait.key(), item, value, "s", "", false, "").read().orThrow();
  }

  private static Species species(String name, Statement... statements) {
    return new Species(guildwood.species.SpeciesNames.slug(name), name, List.of(), "", List.of(), false, List.of(statements));
  }

  private static String written(List<Species> species) throws IOException {
    StringBuilder text = new StringBuilder();
    SpeciesTableWriter.write(species, text);
    return text.toString();
  }

  private static Checked<SpeciesTable> read(String table) {
    return SpeciesTableReader.read(new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)));
  }

  private static String cell(Species species, String column) throws IOException {
    List<CSVRecord> rows = rows(written(List.of(species)));
    return rows.get(1).get(rows.get(0).toList().indexOf(column));
  }

  private static List<CSVRecord> rows(String table) throws IOException {
    return new ArrayList<>(CSVFormat.RFC4180.parse(new StringReader(table)).getRecords());
  }
}
