package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.RowOutcome;
import guildwood.kernel.Range;
import guildwood.species.OpenTables;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * USDA, NRCS, PLANTS Database, characteristics (2,162 taxa, 89 columns; public domain): imported by suggestion alone,
 * every number of every row against the original, converted here by the definitions of the foot (0.3048 m) and of the
 * Fahrenheit scale (NIST SP 811, 2008, appendix B). Not run where the table is absent.
 */
class UsdaImportReferenceCheck {
  private static final String FILE = "usda_plants_characteristics.csv";
  private static final double ARITHMETIC = 1e-9;

  /** What the columns mean, as a person who knows the table would say. */
  private static final Map<String, String> RIGHT = new TreeMap<>(Map.ofEntries(
      Map.entry("scientific_name", "scientific-name"), Map.entry("common_name", "common-names"), Map.entry("family", "family"),
      Map.entry("duration", "value:duration"), Map.entry("growth_habit", "value:layer"), Map.entry("growth_rate", "value:growth_rate"),
      Map.entry("height_mature_feet", "value:height feet"), Map.entry("nitrogen_fixation", "value:function.nitrogen-fixer"),
      Map.entry("toxicity", "cautions:caution.toxic"), Map.entry("adapted_to_coarse_textured_soils", "mark:texture:coarse"),
      Map.entry("adapted_to_medium_textured_soils", "mark:texture:medium"), Map.entry("adapted_to_fine_textured_soils", "mark:texture:fine"),
      Map.entry("fertility_requirement", "value:fertility_preferred"), Map.entry("frost_free_days_minimum", "value:frost_free_days days"),
      Map.entry("ph_minimum", "lowest:ph"), Map.entry("ph_maximum", "highest:ph"), Map.entry("shade_tolerance", "value:light"),
      Map.entry("temperature_minimum_f", "value:coldest_winter fahrenheit"), Map.entry("bloom_period", "value:bloom"),
      Map.entry("propagated_by_bare_root", "value:propagation.bare-root"), Map.entry("propagated_by_bulb", "value:propagation.bulb"),
      Map.entry("propagated_by_seed", "value:propagation.seed"), Map.entry("propagated_by_tubers", "value:propagation.tuber"),
      Map.entry("fodder_product", "mark:use:fodder"), Map.entry("fuelwood_product", "mark:use:fuelwood"),
      Map.entry("lumber_product", "mark:use:timber"), Map.entry("palatable_human", "mark:use:food")));

  @Test
  void bySuggestionAloneEveryRowAndNumberComesIn() {
    CharacteristicsImport brought = new CharacteristicsImport(OpenTables.path(FILE));
    checkMapping(brought);
    List<CSVRecord> originals = OpenTables.rows(FILE);
    assertEquals(originals.size(), brought.rows.size(), "no row is lost");
    List<String> wrong = new ArrayList<>();
    int numbers = 0;
    for (int i = 0; i < originals.size(); i++) {
      CSVRecord original = originals.get(i);
      RowOutcome row = brought.rows.get(i);
      assertEquals(original.get("scientific_name").strip(), row.reading().writtenName());
      assertTrue(row.fate().isBrought(), row.toString());
      numbers += numbers(original, row, wrong);
      words(original, row, wrong);
    }
    assertEquals(List.of(), wrong);
    System.out.println(numbers + " numbers of " + originals.size() + " rows equal the converted originals");
    assertTrue(numbers > 9_000, "only " + numbers + " numbers were compared");
  }

  private static void checkMapping(CharacteristicsImport brought) {
    Map<String, String> meanings = brought.meanings();
    Set<String> differ = new TreeSet<>();
    meanings.forEach((header, meaning) -> {
      if (!meaning.equals(RIGHT.get(header))) {
        differ.add(header + " as " + meaning);
      }
    });
    long right = RIGHT.entrySet().stream().filter(e -> e.getValue().equals(meanings.get(e.getKey()))).count();
    System.out.println(right + " of the table's columns are mapped rightly by suggestion, the others are kept as notes");
    assertEquals(Set.of(), differ, "a column that is mapped is mapped rightly");
    assertTrue(right >= 15, "only " + right + " columns are right");
  }

  /** How many numbers of a row were compared. */
  private static int numbers(CSVRecord original, RowOutcome row, List<String> wrong) {
    return number(original, row, Trait.HEIGHT, "height_mature_feet", "height_mature_feet", 0, 0.3048, wrong)
        + number(original, row, Trait.FROST_FREE_DAYS, "frost_free_days_minimum", "frost_free_days_minimum", 0, 1, wrong)
        + number(original, row, Trait.COLDEST_WINTER, "temperature_minimum_f", "temperature_minimum_f", 32, 1 / 1.8, wrong)
        + number(original, row, Trait.PH, "ph_minimum", "ph_maximum", 0, 1, wrong);
  }

  private static int number(CSVRecord original, RowOutcome row, Trait trait, String low, String high, double zero, double factor, List<String> wrong) {
    String lowText = original.get(low);
    String highText = original.get(high);
    Optional<Range> read = CharacteristicsImport.range(row, trait);
    boolean told = row.unread().stream().anyMatch(cell -> cell.header().equals(low) || cell.header().equals(high));
    if (lowText.isEmpty() && highText.isEmpty() || told) {
      if (read.isPresent()) {
        wrong.add(row.name() + " " + trait + ": " + read + " from nothing or from a cell that is said to be unread");
      }
      return 0;
    }
    if (read.isEmpty() || Math.abs(read.get().min() - (Double.parseDouble(lowText) - zero) * factor) > ARITHMETIC
        || Math.abs(read.get().max() - (Double.parseDouble(highText) - zero) * factor) > ARITHMETIC) {
      wrong.add(row.name() + " " + trait + ": " + read + " from " + lowText + ", " + highText);
    }
    return low.equals(high) ? 1 : 2;
  }

  private static void words(CSVRecord original, RowOutcome row, List<String> wrong) {
    TreeSet<String> textures = new TreeSet<>(List.of("coarse", "fine", "medium"));
    textures.removeIf(texture -> original.get("adapted_to_" + texture + "_textured_soils").equals("FALSE"));
    compare(row, Trait.TEXTURE, textures.isEmpty() ? "" : textures.toString(), wrong);
    String rate = original.get("growth_rate");
    compare(row, Trait.GROWTH_RATE, rate.isEmpty() ? "" : "[" + Map.of("Slow", "slow", "Moderate", "medium", "Rapid", "fast").get(rate) + "]", wrong);
    Optional<Boolean> fixes = row.reading().values().stream().filter(v -> v.trait() == Trait.FUNCTION && v.item().equals("nitrogen-fixer"))
        .map(v -> ((TraitValue.YesNo) v.value()).yes()).findFirst();
    if (!fixes.equals(Optional.of(!original.get("nitrogen_fixation").equals("None")))) {
      wrong.add(row.name() + " nitrogen: " + fixes);
    }
  }

  private static void compare(RowOutcome row, Trait trait, String expected, List<String> wrong) {
    String read = row.reading().values().stream().filter(v -> v.trait() == trait).map(v -> v.value() instanceof TraitValue.Words words
        ? new TreeSet<>(words.words()).toString() : "[" + ((TraitValue.Word) v.value()).word() + "]").findFirst().orElse("");
    if (!read.equals(expected)) {
      wrong.add(row.name() + " " + trait + ": " + read + ", not " + expected);
    }
  }
}
