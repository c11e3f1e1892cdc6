package guildwood.site.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The command {@code climate} on invented stations whose answers can be counted by hand, and on bad files. */
class ClimateCommandTest {
  private static final String HEADER = "date,min,max\n,F,F\n";

  @TempDir
  private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** Eleven years of 50 to 70 F, but -12 F on 25 January, 30 F from 10 to 20 April, a day later each year, and as late in October. */
  private static String station() {
    StringBuilder csv = new StringBuilder(HEADER);
    for (int i = 0; i < 11; i++) {
      int year = 2001 + i;
      Map<LocalDate, String> cold = Map.of(LocalDate.of(year, 1, 25), "-12,10",
          LocalDate.of(year, 4, 10 + i), "30,50", LocalDate.of(year, 10, 1 + i), "30,50");
      csv.append(days(year + "-01-01", (year + 1) + "-01-01", cold));
    }
    return csv.toString();
  }

  private static String days(String first, String end, Map<LocalDate, String> unusual) {
    StringBuilder csv = new StringBuilder();
    LocalDate.parse(first).datesUntil(LocalDate.parse(end))
        .forEach(date -> csv.append(date).append(',').append(unusual.getOrDefault(date, "50,70")).append('\n'));
    return csv.toString();
  }

  @Test
  void printsTheFixedKeysInAFixedOrder() throws IOException {
    JsonNode answer = answer(station());
    assertEquals(List.of("hemisphere", "yearsUsed", "frost", "coldestWinter", "growingDegreeDays", "warnings"), keys(answer));
    JsonNode frost = answer.get("frost").get(0);
    assertEquals(List.of("event", "thresholdF", "lastSpring", "firstAutumn", "frostFreeDays"), keys(frost));
    assertEquals(List.of("mean", "p10", "p90", "years"), keys(frost.get("lastSpring")));
    assertEquals(List.of("mean", "p10", "p90", "years"), keys(frost.get("frostFreeDays")));
    assertEquals(List.of("meanAnnualMinimumF", "meanAnnualMinimumC", "zone"), keys(answer.get("coldestWinter")));
    assertEquals(List.of("plain", "corn86F50F"), keys(answer.get("growingDegreeDays")));
    assertEquals("", err.toString());
    assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(out.toString()), "readable in any terminal");
  }

  /** Of eleven dates a day apart, the mean is the sixth, the 10th percentile the second and the 90th the tenth. */
  @Test
  void frostDates() throws IOException {
    JsonNode frost = answer(station()).get("frost");
    for (int threshold = 0; threshold < 2; threshold++) {
      assertDates("04-15", "04-11", "04-19", frost.get(threshold).get("lastSpring"));
      assertDates("10-06", "10-02", "10-10", frost.get(threshold).get("firstAutumn"));
      // 10 April to 1 October: 20 + 31 + 30 + 31 + 31 + 30 + 1 days.
      assertEquals(174, frost.get(threshold).get("frostFreeDays").get("mean").doubleValue());
    }
    assertDates("01-25", "01-25", "01-25", frost.get(2).get("lastSpring"));
    assertTrue(frost.get(2).get("firstAutumn").isNull() && frost.get(2).get("frostFreeDays").isNull());
  }

  /** 362 days of 10 in ordinary years, 363 in 2004 and 2008; the three cold days count nothing by either method. */
  @Test
  void winterAndDegreeDays() throws IOException {
    JsonNode answer = answer(station());
    assertEquals(-12, answer.get("coldestWinter").get("meanAnnualMinimumF").doubleValue());
    assertEquals(-24.44, answer.get("coldestWinter").get("meanAnnualMinimumC").doubleValue());
    assertEquals("5b", answer.get("coldestWinter").get("zone").textValue());
    for (String method : List.of("plain", "corn86F50F")) {
      JsonNode days = answer.get("growingDegreeDays").get(method);
      assertEquals(3621.82, days.get("meanPerYearFahrenheitDays").doubleValue(), method);
      assertEquals(2012.12, days.get("meanPerYearCelsiusDays").doubleValue(), method);
    }
  }

  @Test
  void theBaseMayBeAnotherAndInEitherUnit() throws IOException {
    for (String base : List.of("41F", "5C", "5 C")) {
      JsonNode days = answer(station(), "--base", base).get("growingDegreeDays");
      // 19 a day, nothing on the three cold days: their means are -1 and 40 F.
      assertEquals(19 * (362 + 2 / 11.0), days.get("plain").get("meanPerYearFahrenheitDays").doubleValue(), 0.005);
      assertEquals(3621.82, days.get("corn86F50F").get("meanPerYearFahrenheitDays").doubleValue());
    }
  }

  @Test
  void degreesCelsiusGiveTheSameAnswer() throws IOException {
    String year = days("2001-01-01", "2002-01-01", Map.of(LocalDate.of(2001, 5, 5), "32,50"));
    JsonNode fahrenheit = answer(HEADER + year);
    String celsius = year.replace("32,50", "0,10").replace("50,70", "10,21.111111111");
    assertEquals(fahrenheit, answer("date,min,max\nunit,C,C\n" + celsius));
    assertEquals(fahrenheit, answer("max,date,min\n" + celsius.replaceAll("(?m)^(.*),(.*),(.*)$", "$3,$1,$2"), "--unit", "C"));
    assertDates("05-05", "05-05", "05-05", fahrenheit.get("frost").get(1).get("lastSpring"));
  }

  /** 5 October to 5 May: 26 + 30 + 31 + 31 + 28 + 31 + 30 + 5 days. */
  @Test
  void aSouthernYearRunsOverTheNewYear() throws IOException {
    String year = days("2001-07-01", "2002-07-01",
        Map.of(LocalDate.of(2001, 10, 5), "30,50", LocalDate.of(2002, 5, 5), "30,50"));
    JsonNode answer = answer(HEADER + year, "--hemisphere", "south");
    assertEquals("2001/2002", answer.get("yearsUsed").get(0).textValue());
    JsonNode freeze = answer.get("frost").get(1);
    assertDates("10-05", "10-05", "10-05", freeze.get("lastSpring"));
    assertDates("05-05", "05-05", "05-05", freeze.get("firstAutumn"));
    assertEquals(212, freeze.get("frostFreeDays").get("mean").doubleValue());
  }

  @Test
  void theWrongHemisphereIsSuspected() throws IOException {
    String years = days("2001-01-01", "2003-01-01", Map.of()).replaceAll("(-0[678]-..),50,70", "$1,70,90");
    JsonNode north = answer(HEADER + years);
    JsonNode south = answer(HEADER + years, "--hemisphere", "south");
    assertTrue(south.get("warnings").toString().contains("winter of the south is the warm season"), south::toString);
    assertFalse(north.get("warnings").toString().contains("warm season"), north::toString);
  }

  @Test
  void yearsWithMissingDaysAreNamedAndLeftOut() throws IOException {
    String gaps = station().replaceFirst("2003-02-14,50,70\n", "").replaceFirst("2003-02-20,50,70", "2003-02-20,,70");
    JsonNode answer = answer(gaps);
    assertEquals(10, answer.get("yearsUsed").size());
    assertEquals("2003 is left out: days missing 2, the first 2003-02-14.", answer.get("warnings").get(0).textValue());
    assertTrue(answer.get("warnings").get(1).textValue().startsWith("Whole years used: 10."), answer::toString);
  }

  @Test
  void aPlaceBeyondTheZonesIsSaid() throws IOException {
    JsonNode answer = answer(HEADER + days("2001-01-01", "2002-01-01", Map.of()).replace("50,70", "71,80"));
    assertTrue(answer.get("coldestWinter").get("zone").isNull());
    assertTrue(answer.get("warnings").get(1).textValue().contains("outside the thirteen"), answer::toString);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
    "2001-03-01,50,70 | 2001-02-29,50,70 | station.csv, row 62, column date: “2001-02-29” is not a date",
    "2001-03-01,50,70 | 1.3.2001,50,70 | row 62, column date: “1.3.2001” is not a date",
    "2001-03-01,50,70 | 9999-03-01,50,70 | row 62, column date: “9999-03-01” is not a date",
    "2001-03-01,50,70 | ,50,70 | row 62, column date: Please fill this in",
    "2001-03-01,50,70 | 2001-03-01,71,70 | row 62, column min: The lowest temperature of the day (71) is above the highest (70)",
    "2001-03-01,50,70 | 2001-03-01,mild,70 | row 62, column min: “mild” is not a number",
    "2001-03-01,50,70 | 2001-03-01,50,1e400 | row 62, column max: “1e400” is not a number",
    "2001-03-01,50,70 | 2001-03-01,-9999,70 | row 62, column min: -9999 is no temperature",
    "2001-03-01,50,70 | 2001-02-28,50,70 | row 62, column date: The day 2001-02-28 stands in row 61 already",
    "2001-03-01,50,70 | 2001-03-01,50 | row 62: The row has 2 cells, the header 3",
    "2001-03-01,50,70 | 2001-03-01,,70 | station.csv: There is no whole year without a missing day, from 1 January",
    "date,min,max | day,min,max | station.csv: Columns are missing in the first row: date",
    ",F,F | ,F,C | row 2, column max: The row of units must give the same unit",
    ",F,F | ,K,K | row 2, column min: “K” is not a number",
    ",F,F | 2000-12-31,50,70 | station.csv: The unit is not known"
  })
  void saysWhatIsWrongAndWhere(String right, String wrong, String message) throws IOException {
    String csv = HEADER + days("2001-01-01", "2002-01-01", Map.of());
    assertTrue(csv.contains(right), right);
    assertBad(csv.replaceFirst(right, wrong), message);
  }

  @Test
  void namesEverythingThatIsWrongAtOnce() throws IOException {
    assertBad(HEADER + "2001-01-01,60,50\n2001-01-02,a,50\n2001-13-01,40,50\n", "row 3, column min");
    assertTrue(err.toString().contains("row 4, column min") && err.toString().contains("row 5, column date"), err::toString);
    err.getBuffer().setLength(0);
    assertBad(HEADER + "x,40,50\n".repeat(500), "and 450 more");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
    "--base | fifty | --base: “fifty” is not a temperature with its unit",
    "--base | 50 | --base: “50” is not a temperature with its unit",
    "--base | 50K | --base: “50K”",
    "--hemisphere | east | --hemisphere: “east” is not one of: north, south",
    "--unit | K | --unit: “K” is not one of: F, C",
    "--unit | C | row 2, column min: The file says F, the option --unit says C",
    "--hemisphere | south | There is no whole year without a missing day; in the south it runs from 1 July"
  })
  void saysWhatIsWrongWithAnOption(String option, String value, String message) throws IOException {
    assertBad(HEADER + days("2001-01-01", "2002-01-01", Map.of()), message, option, value);
  }

  @Test
  void refusesFilesWithoutDays() throws IOException {
    assertBad("", "station.csv: The file is empty");
    assertBad("date,min,max\n", "There is nothing below the header");
    assertBad(HEADER, "There is nothing below the header");
    assertBad("date;min;max\n2001-01-01;40;50\n", "another sign than commas");
    assertEquals(2, execute("climate", "--days", folder.resolve("nowhere.csv").toString()));
    assertTrue(err.toString().contains("The file cannot be read"), err::toString);
    assertEquals(2, execute("climate"));
  }

  private JsonNode answer(String csv, String... options) throws IOException {
    out.getBuffer().setLength(0);
    assertEquals(0, run(csv, options), err::toString);
    return new ObjectMapper().readTree(out.toString());
  }

  private void assertBad(String csv, String message, String... options) throws IOException {
    assertEquals(2, run(csv, options), out::toString);
    assertTrue(err.toString().contains(message), err::toString);
    assertEquals("", out.toString());
    assertFalse(err.toString().contains("Exception"), err::toString);
  }

  private int run(String csv, String... options) throws IOException {
    Path file = folder.resolve("station.csv");
    Files.writeString(file, csv);
    List<String> words = new ArrayList<>(List.of("climate", "--days", file.toString()));
    words.addAll(List.of(options));
    return execute(words.toArray(String[]::new));
  }

  private int execute(String... words) {
    return new CommandLine(new Main()).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(words);
  }

  private static void assertDates(String mean, String p10, String p90, JsonNode dates) {
    assertEquals(List.of(mean, p10, p90),
        List.of(dates.get("mean").textValue(), dates.get("p10").textValue(), dates.get("p90").textValue()));
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }
}
