package guildwood.species.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.names.NameMatch.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameIndexTest {
  private NameIndex index;

  @BeforeEach
  void listSomeNames() {
    index = NameIndex.of(List.of("Acer rubrum L.", "Acer saccharum", "Galium verum", "Carex rostrata", "Quercus × bebbiana",
        "Cirsium arvense", "Impatiens noli-tangere", "Rosa canina", "Achillea millefolium var. occidentalis", "Agrostol"));
    index.addSynonym("Quercus prinus", "Quercus × bebbiana");
  }

  @ParameterizedTest
  @CsvSource({
      "Acer rubrum, SAME, Acer rubrum L.",
      "acer RUBRUM, SAME, Acer rubrum L.",
      "ACER RUBRUM, SAME, Acer rubrum L.",
      "Acer_rubrum, SAME, Acer rubrum L.",
      "Acer rubrum Marshall, SAME, Acer rubrum L.",
      "Quercus xbebbiana, SPELLING, Quercus × bebbiana",
      "Quercus x bebbiana C.K.Schneid., SAME, Quercus × bebbiana",
      "Quercus bebbiana, SAME, Quercus × bebbiana",
      "Quercus prinus L., SYNONYM, Quercus × bebbiana",
      "Cirsium arvensis, SPELLING, Cirsium arvense",
      "Impatiens nolitangere, SPELLING, Impatiens noli-tangere",
      "Achillea millefolium ssp. occidentalis, SPELLING, Achillea millefolium var. occidentalis",
      "Acer rubrum var. trilobum, SPECIES_OF, Acer rubrum L.",
      "Acer rubrum 'October Glory', SPECIES_OF, Acer rubrum L.",
      "Rosa canina agg., SPECIES_OF, Rosa canina",
      "AGROSTOL, SAME, Agrostol",
      "Acer rubrun, LIKE, ",
      "Galium vernum, LIKE, ",
      "Acer cf. rubrum, LIKE, ",
      "A. rubrum, LIKE, ",
      "Acer sp., UNKNOWN, ",
      "Tilia americana, UNKNOWN, "})
  void takesANameForTheListedOne(String written, Kind kind, String listed) {
    NameMatch match = index.find(written);
    assertEquals(kind, match.kind());
    assertEquals(Optional.ofNullable(listed), match.name());
  }

  @Test
  void offersNearNamesInsteadOfMergingThem() {
    assertEquals(List.of("Acer rubrum L."), index.find("Acer rubrun").suggestions());
    assertEquals(List.of("Galium verum"), index.find("Galium vernum").suggestions());
    assertEquals(List.of("Acer rubrum L."), index.find("A. rubrum").suggestions());
    assertTrue(index.find("Tilia americana").suggestions().isEmpty());
  }

  @Test
  void aSpeciesIsNeverTakenForItsVariety() {
    assertTrue(index.find("Achillea millefolium").name().isEmpty());
  }

  @Test
  void twoNamesOfOneStemAreLeftToAPerson() {
    NameIndex two = NameIndex.of(List.of("Rubus silvaticus", "Rubus sylvatica"));
    assertTrue(two.find("Rubus sylvaticum").name().isEmpty());
  }
}
