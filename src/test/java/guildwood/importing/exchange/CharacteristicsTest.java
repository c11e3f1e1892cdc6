package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.RowOutcome;
import guildwood.kernel.Range;
import guildwood.species.Trait;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * A table of 40 invented plants in the style of an agency's table of characteristics: feet, degrees F, ends of ranges in
 * columns of their own. The numbers to be had from it were worked out by another program, in another language, and stand
 * in a second file.
 */
class CharacteristicsTest {
  private static final Path FOLDER = Path.of("src/test/resources/importing");
  private static final List<Trait> NUMBERS = List.of(Trait.HEIGHT, Trait.FROST_FREE_DAYS, Trait.PH, Trait.COLDEST_WINTER);

  private final CharacteristicsImport brought = new CharacteristicsImport(FOLDER.resolve("characteristics-40.csv"));

  @Test
  void mapsBySuggestionAlone() {
    Map<String, String> expected = new TreeMap<>(Map.ofEntries(
        Map.entry("Scientific Name", "scientific-name"), Map.entry("Common Name", "common-names"), Map.entry("Family", "family"),
        Map.entry("Duration", "value:duration"), Map.entry("Growth Habit", "value:layer"), Map.entry("Growth Rate", "value:growth_rate"),
        Map.entry("Height, Mature (feet)", "value:height feet"), Map.entry("Nitrogen Fixation", "value:function.nitrogen-fixer"),
        Map.entry("Toxicity", "cautions:caution.toxic"), Map.entry("Adapted to Coarse Textured Soils", "mark:texture:coarse"),
        Map.entry("Adapted to Medium Textured Soils", "mark:texture:medium"), Map.entry("Adapted to Fine Textured Soils", "mark:texture:fine"),
        Map.entry("Fertility Requirement", "value:fertility_preferred"), Map.entry("Frost Free Days, Minimum", "value:frost_free_days days"),
        Map.entry("pH (Minimum)", "lowest:ph"), Map.entry("pH (Maximum)", "highest:ph"), Map.entry("Shade Tolerance", "value:light"),
        Map.entry("Temperature, Minimum (°F)", "value:coldest_winter fahrenheit"), Map.entry("Bloom Period", "value:bloom"),
        Map.entry("Propagated by Bare Root", "value:propagation.bare-root"), Map.entry("Propagated by Seed", "value:propagation.seed"),
        Map.entry("Palatable Human", "mark:use:food")));
    assertEquals(expected, brought.meanings());
  }

  @Test
  void everyNumberEqualsTheConvertedOriginal() throws IOException {
    List<CSVRecord> expected;
    try (CSVParser parser = CSVParser.parse(FOLDER.resolve("characteristics-40-converted.csv"), StandardCharsets.UTF_8,
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      expected = parser.getRecords();
    }
    assertEquals(40, brought.rows.size());
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (RowOutcome row : brought.rows) {
      for (Trait trait : NUMBERS) {
        Optional<CSVRecord> wanted = expected.stream()
            .filter(r -> r.get("species").equals(row.name().replace("× ", "×")) && r.get("trait").equals(trait.key())).findFirst();
        Optional<Range> read = CharacteristicsImport.range(row, trait);
        boolean same = wanted.isPresent() == read.isPresent() && (read.isEmpty()
            || near(read.get().min(), wanted.get().get("min")) && near(read.get().max(), wanted.get().get("max")));
        if (!same) {
          wrong.add(row.name() + " " + trait + ": " + read + ", worked out " + wanted);
        }
        compared += wanted.isPresent() ? 1 : 0;
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(expected.size(), compared, "every number that was worked out was looked for");
  }

  @Test
  void whatCannotBeReadIsListed() {
    List<String> unread = brought.rows.stream().flatMap(row -> row.unread().stream()).filter(cell -> !cell.header().equals("Bloom Period"))
        .map(cell -> cell.row() + " " + cell.header() + " " + cell.text()).sorted().toList();
    List<String> numbers = List.of("35 Temperature, Minimum (°F) 170", "36 pH (Maximum) 75", "37 Height, Mature (feet) tall");
    assertTrue(unread.containsAll(numbers), unread.toString());
    // Without a height a tree is neither tall nor small.
    assertEquals(6, unread.size(), unread.toString());
  }

  private static boolean near(double read, String workedOut) {
    return Math.abs(read - Double.parseDouble(workedOut)) < 1e-9;
  }
}
