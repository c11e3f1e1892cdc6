package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names, the ids made from them, and what is no name. */
class SpeciesNamesTest {
  @ParameterizedTest
  @CsvSource(quoteCharacter = '"', value = {
      "Amelanchier alnifolia, Amelanchier alnifolia, amelanchier-alnifolia",
      "Symphytum x uplandicum, Symphytum × uplandicum, symphytum-x-uplandicum",
      "Symphytum × uplandicum, Symphytum × uplandicum, symphytum-x-uplandicum",
      "x Sorbaronia, × Sorbaronia, x-sorbaronia",
      "Malus domestica 'Liberty', Malus domestica 'Liberty', malus-domestica-liberty",
      "Ribes aureum var. villosum, Ribes aureum var. villosum, ribes-aureum-var-villosum"})
  void makesIdsFromNames(String typed, String name, String id) {
    SpeciesNames names = SpeciesNames.read(typed, "", "", "").orThrow();
    assertEquals(name, names.scientificName());
    assertEquals(id, names.id());
  }

  @ParameterizedTest
  @ValueSource(strings = {"123", "apple", "<b>Malus</b>", "Абв где", "=Malus", "'Liberty'", "×"})
  void refusesWhatIsNoScientificName(String typed) {
    Checked<SpeciesNames> read = SpeciesNames.read(typed, "", "", "");
    assertEquals("species.not-a-name", read.findings().get(0).code());
  }

  @Test
  void gathersEveryFinding() {
    List<String> found = SpeciesNames.read(" ", "x".repeat(501), "4", "apple").findings().stream()
        .map(f -> f.field() + " " + f.code()).toList();
    assertEquals(List.of("common_names text.too-long", "scientific_name value.missing",
        "family species.not-a-family", "synonyms species.not-a-name"), found);
    assertEquals("text.control-characters", SpeciesNames.read("Malus\u0001", "", "", "").findings().get(0).code());
  }

  @Test
  void foldsSpellingsOfOneName() {
    assertEquals(SpeciesNames.folded("Symphytum × uplandicum"), SpeciesNames.folded("SYMPHYTUM  uplandicum"));
    assertEquals(SpeciesNames.folded("× Sorbaronia"), SpeciesNames.folded("Sorbaronia"));
    assertTrue(!SpeciesNames.folded("Malus domestica").equals(SpeciesNames.folded("Malus domestica 'Liberty'")));
  }

  @Test
  void aVeryLongNameStillMakesAnIdThatCanBeKept() {
    String id = SpeciesNames.read("M" + "a".repeat(98) + " " + "b".repeat(90), "", "", "").orThrow().id();
    assertEquals("m" + "a".repeat(98), id);
  }
}
