package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Wetland ratings of the shipped library against US EPA, National Wetland Condition Assessment 2016, wetland
 * indicator status by region (CC0). The ratings below stand in that table: species drawn by lot from those that it
 * names, and a few more for its two ends, with every region that has a rating. It is not the newest list.
 */
class WetlandReferenceCheck {
  private static final String TABLE = "nwca2016_wetland_indicator_by_region.csv";

  @ParameterizedTest
  @CsvSource({
      "Amelanchier canadensis, cstl-plain=FAC ne=FAC",
      "Aquilegia canadensis, ne=FACU",
      "Arctostaphylos uva-ursi, arid-w=FACU w-mtns=FACU",
      "Asparagus officinalis, arid-w=FACU cstl-plain=FACU gt-plains=FACU ne=FACU w-mtns=FACU",
      "Caltha palustris, gt-plains=OBL midwest=OBL ne=OBL w-mtns=OBL",
      "Cephalanthus occidentalis, cstl-plain=OBL e-mtns=OBL gt-plains=OBL midwest=OBL ne=OBL",
      "Elaeagnus commutata, w-mtns=FAC",
      "Eupatorium perfoliatum, cstl-plain=FACW e-mtns=FACW gt-plains=FACW midwest=OBL ne=FACW",
      "Fagus grandifolia, cstl-plain=FACU e-mtns=FACU midwest=FACU ne=FACU",
      "Gaultheria procumbens, cstl-plain=FACU e-mtns=FACU ne=FACU",
      "Humulus lupulus, e-mtns=FACU gt-plains=FACU midwest=FACU ne=FACU w-mtns=FACU",
      "Juglans nigra, cstl-plain=UPL e-mtns=FACU midwest=FACU ne=FACU w-mtns=UPL",
      "Liriodendron tulipifera, cstl-plain=FACU e-mtns=FACU midwest=FACU ne=FACU",
      "Lotus corniculatus, arid-w=FAC e-mtns=FACU ne=FACU w-mtns=FAC",
      "Maclura pomifera, cstl-plain=FACU e-mtns=UPL gt-plains=FACU midwest=FACU",
      "Matteuccia struthiopteris, gt-plains=FACW ne=FAC",
      "Melissa officinalis, w-mtns=FACU",
      "Mitchella repens, cstl-plain=FACU e-mtns=FACU ne=FACU",
      "Pinus strobus, e-mtns=FACU ne=FACU",
      "Prunus serotina, cstl-plain=FACU e-mtns=FACU gt-plains=FACU midwest=FACU ne=FACU",
      "Pycnanthemum virginianum, midwest=FACW ne=FACW",
      "Quercus alba, cstl-plain=FACU e-mtns=FACU midwest=FACU ne=FACU",
      "Quercus macrocarpa, cstl-plain=FACU e-mtns=FAC gt-plains=FACU midwest=FAC ne=FACU",
      "Rhus glabra, midwest=UPL",
      "Ribes aureum var. villosum, gt-plains=FACU",
      "Rosa canina, arid-w=UPL",
      "Rosa palustris, cstl-plain=OBL e-mtns=OBL midwest=OBL ne=OBL",
      "Rudbeckia hirta, cstl-plain=FACU e-mtns=FACU gt-plains=FACU midwest=FACU w-mtns=FACU",
      "Symphyotrichum lateriflorum, e-mtns=FACW midwest=FACW ne=FAC",
      "Symphyotrichum novi-belgii, cstl-plain=OBL e-mtns=FACW ne=FACW",
      "Symphyotrichum puniceum, cstl-plain=OBL e-mtns=OBL gt-plains=OBL midwest=OBL ne=OBL",
      "Thuja occidentalis, midwest=FACW ne=FACW",
      "Tiarella cordifolia, e-mtns=FAC ne=FACU",
      "Tsuga canadensis, e-mtns=FACU ne=FACU",
      "Vaccinium vitis-idaea, ne=FAC",
      "Viburnum nudum var. cassinoides, e-mtns=OBL ne=FACW",
      "Viburnum opulus var. americanum, ne=FACW",
      "Viburnum prunifolium, cstl-plain=FACU e-mtns=FACU midwest=FACU ne=FACU",
      "Vitis labrusca, cstl-plain=FAC e-mtns=FACU midwest=FACU ne=FACU"})
  void ratingsAreThoseOfTheTable(String name, String byRegion) {
    Map<String, String> expected = new TreeMap<>();
    for (String rating : byRegion.split(" ")) {
      expected.put(rating.substring(0, rating.indexOf('=')), rating.substring(rating.indexOf('=') + 1));
    }
    Map<String, String> listed = new TreeMap<>();
    ratings(named(name)).stream().filter(s -> !s.note().startsWith("listed as")).forEach(s -> listed.put(s.item(), word(s)));
    assertEquals(expected, listed);
  }

  /** Every rating that names this table as its source, under the name it is listed by there. */
  @Test
  void everyRatingIsInTheTable() {
    Map<String, String> table = new HashMap<>();
    for (CSVRecord row : OpenTables.rows(TABLE)) {
      table.put(key(row.get("NWCA_NAME"), row.get("GEOG_ID").toLowerCase(Locale.ROOT).replace('_', '-')), row.get("WIS"));
    }
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (Species species : Shipped.species()) {
      for (Statement said : ratings(species)) {
        String name = said.note().startsWith("listed as ") ? said.note().substring("listed as ".length()) : species.scientificName();
        compared++;
        if (!word(said).equals(table.get(key(name, said.item())))) {
          wrong.add(Shipped.show(species, said) + ", table " + table.get(key(name, said.item())));
        }
      }
    }
    System.out.println(compared + " wetland ratings compared with the table, " + wrong.size() + " differ");
    assertEquals(List.of(), wrong);
    assertTrue(compared >= 500, "only " + compared + " ratings");
  }

  /** A plant that belongs in standing water nearly everywhere bears wet ground here, a dry-land plant no flood. */
  @Test
  void moistureAgreesWithTheRatings() {
    List<String> wrong = new ArrayList<>();
    for (Species species : Shipped.species()) {
      Set<String> words = ratings(species).stream().map(WetlandReferenceCheck::word).collect(Collectors.toSet());
      species.range(Trait.MOISTURE).ifPresent(moisture -> {
        if (words.equals(Set.of("OBL")) && moisture.max() < 4 || words.equals(Set.of("UPL")) && moisture.max() > 4) {
          wrong.add(species.id() + " is " + words + " and bears moisture " + moisture);
        }
      });
    }
    assertEquals(List.of(), wrong);
  }

  private static List<Statement> ratings(Species species) {
    return species.statements().stream().filter(s -> s.trait() == Trait.WETLAND && s.sourceId().equals("nwca-2016")).toList();
  }

  private static String word(Statement rating) {
    return ((TraitValue.Word) rating.value()).word();
  }

  private static Species named(String scientificName) {
    return Shipped.species().stream().filter(s -> s.scientificName().equals(scientificName)).findFirst().orElseThrow();
  }

  private static String key(String name, String region) {
    return name.toUpperCase(Locale.ROOT).replace(" SSP. ", " SUBSP. ").replace("× ", "×") + "|" + region;
  }
}
