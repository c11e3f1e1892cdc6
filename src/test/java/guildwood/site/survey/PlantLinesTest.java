package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.site.exchange.IndicatorFiles;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.species.names.NameMatch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantLinesTest {
  private static final PlantNames NAMES = new PlantNames(IndicatorFiles.read().plants());

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "Acer rubrum 15|Acer rubrum|15",
    "Acer rubrum, 2,5 %|Acer rubrum|2.5",
    "Acer rubrum L.; 15%|Acer rubrum L.|15",
    "stinging nettle|stinging nettle|''",
    "  black cherry : 0 |black cherry|0",
  })
  void readsNameAndCover(String line, String name, String cover) {
    assertEquals(List.of(new Row(name, NAMES.find(name).name(), cover, Origin.WILD, Stage.NOT_SAID)),
        read(line, CoverScale.PERCENT).orThrow());
  }

  @Test
  void readsWhetherItWasPlantedAndHowOldItIs() {
    assertEquals(List.of(new Row("Malus domestica", Optional.empty(), "5", Origin.PLANTED, Stage.MATURE),
            new Row("red maple", Optional.of("Acer rubrum"), "+", Origin.WILD, Stage.SEEDLING)),
        List.of(read("Malus domestica planted 5 mature", CoverScale.PERCENT).orThrow().get(0),
            read("red maple seedlings +", CoverScale.BRAUN_BLANQUET).orThrow().get(0)));
  }

  @Test
  void whatIsWrittenReadsAsTheSameRows() {
    List<Row> rows = read("Acer rubrum 15 seedling\n\nfoo bar planted\r\nstinging nettle\t3", CoverScale.PERCENT).orThrow();
    assertEquals(3, rows.size());
    assertEquals(rows, read(PlantLines.write(rows), CoverScale.PERCENT).orThrow());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "Acer rubrum 101|survey.line-cover-percent",
    "Acer rubrum -3|survey.line-cover-percent",
    "Acer rubrum 15cm|survey.line-cover-percent",
    "Acer rubrum +|survey.line-cover-percent",
    "Acer rubrum 1e400|survey.line-cover-percent",
    "15|survey.line-without-name",
    "???|survey.line-without-name",
    "''|survey.no-plants",
  })
  void refusesNonsense(String line, String code) {
    assertEquals(List.of(code), read(line, CoverScale.PERCENT).findings().stream().map(f -> f.code()).toList());
  }

  @Test
  void refusesAClassTheScaleDoesNotHaveAndNamesTheLine() {
    var finding = read("red maple 5\nboxelder 7", CoverScale.BRAUN_BLANQUET).findings().get(0);
    assertEquals("survey.line-cover-class", finding.code());
    assertEquals(List.of("2", "7", "+, 1, 2, 3, 4, 5"), finding.args());
    assertTrue(read("Typha latifolia 6", CoverScale.DAUBENMIRE).value().isPresent());
  }

  @Test
  void refusesControlCharactersLongNamesAndLongLists() {
    assertEquals("survey.line-control-characters", read("Acer\u0007 rubrum", CoverScale.PERCENT).findings().get(0).code());
    assertEquals("survey.line-too-long", read("a".repeat(201), CoverScale.PERCENT).findings().get(0).code());
    assertEquals("survey.too-many-plants", read("red maple\n".repeat(301), CoverScale.PERCENT).findings().get(0).code());
    assertEquals("text.too-long", read("a".repeat(20_001), CoverScale.PERCENT).findings().get(0).code());
  }

  @Test
  void takesCommonNamesOnlyInFull() {
    assertEquals(Optional.of("Urtica dioica"), NAMES.find("Stinging Nettle").name());
    assertEquals(Optional.of("Hypericum perforatum"), NAMES.find("St Johns wort").name());
    NameMatch part = NAMES.find("nettle");
    assertEquals(Optional.empty(), part.name());
    assertTrue(part.suggestions().contains("Urtica dioica"), part.toString());
  }

  @Test
  void aTypingErrorIsASuggestionAndNeverAMatch() {
    for (String typed : List.of("Acer rubrm", "red mapel", "joe pye wed")) {
      assertEquals(Optional.empty(), NAMES.find(typed).name(), typed);
      assertTrue(!NAMES.find(typed).suggestions().isEmpty(), typed);
    }
    assertEquals(NameMatch.Kind.UNKNOWN, NAMES.find("qqqq zzzz").kind());
  }

  @Test
  void searchesNamesAndDescriptionsInOneRegion() {
    assertEquals(List.of("Acer rubrum"), NAMES.search("red maple", IndicatorLibrary.Region.EASTERN_NORTH_AMERICA).stream()
        .map(IndicatorLibrary.Plant::species).filter("Acer rubrum"::equals).toList());
    assertTrue(NAMES.search("red maple", IndicatorLibrary.Region.NORTH_WEST_EUROPE).stream()
        .noneMatch(p -> p.species().equals("Acer rubrum")));
    assertTrue(NAMES.search("shaggy bark", IndicatorLibrary.Region.EASTERN_NORTH_AMERICA).size() > 1);
  }

  private static Checked<List<Row>> read(String typed, CoverScale scale) {
    return PlantLines.read(typed, scale, NAMES::find, "plants");
  }
}
