package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which plants of the shipped library are said to fix nitrogen, and on what grounds. */
class NitrogenFixerReferenceCheck {
  private static final String FIXER = GuildFunction.NITROGEN_FIXER.key();

  /**
   * Genera outside the legumes that USDA NRCS PLANTS, characteristics, grades as fixing nitrogen, as far as
   * they live with Frankia in root nodules. The table also grades single species of Catalpa, Cleome, Morinda,
   * Oenothera, Phragmites and Pluchea; none of these may stand here.
   */
  private static final Set<String> ACTINORHIZAL_IN_THE_TABLE = Set.of("Alnus", "Casuarina", "Ceanothus", "Cercocarpus",
      "Comptonia", "Dryas", "Elaeagnus", "Hippophae", "Morella", "Myrica", "Purshia", "Shepherdia");

  /** Schwintzer and Tjepkema 1990, as far as remembered: shown beside the outcome, never asserted. */
  private static final Set<String> ACTINORHIZAL_FROM_MEMORY = Set.of("Alnus", "Casuarina", "Allocasuarina", "Gymnostoma",
      "Ceuthostoma", "Coriaria", "Datisca", "Elaeagnus", "Hippophae", "Shepherdia", "Comptonia", "Myrica", "Morella",
      "Ceanothus", "Colletia", "Discaria", "Kentrothamnus", "Retanilla", "Talguenea", "Trevoa", "Cercocarpus", "Chamaebatia",
      "Cowania", "Dryas", "Purshia");

  /** Species that Northeast SARE, FNE20-967, tried in the field after screening tissue analyses. */
  private static final Set<String> SCREENED_BY_TISSUE = Set.of("taraxacum-officinale", "chenopodium-album",
      "trifolium-pratense", "amaranthus-retroflexus", "symphytum-x-uplandicum", "symphytum-x-uplandicum-bocking-14", "urtica-dioica");

  /** Alnus: NFTA 86-03 and the USDA table. Trifolium: University of Georgia, Quantity of Nitrogen Fixed. */
  @ParameterizedTest
  @ValueSource(strings = {"Alnus", "Trifolium"})
  void allOfAGenusKnownToFixDoSo(String genus) {
    List<Species> species = Shipped.species().stream().filter(s -> s.genus().equals(genus)).toList();
    assertTrue(species.size() >= 4, "only " + species.size() + " " + genus);
    species.forEach(s -> assertEquals(Optional.of(true), s.does(GuildFunction.NITROGEN_FIXER), s.id()));
  }

  /** University of Georgia (Hancock), Quantity of Nitrogen Fixed: pounds an acre are given for these. */
  @ParameterizedTest
  @ValueSource(strings = {"medicago-sativa", "lotus-corniculatus", "trifolium-incarnatum", "trifolium-pratense",
      "trifolium-repens", "vicia-villosa"})
  void fieldLegumesWithMeasuredAmountsFix(String id) {
    assertEquals(Optional.of(true), Shipped.find(id).does(GuildFunction.NITROGEN_FIXER));
  }

  /**
   * Of 349 species of the Caesalpinia type that were tested only 23 percent nodulate (de Faria and others 1989,
   * as quoted elsewhere), and for these genera nobody has shown it. The USDA table grades Gymnocladus low.
   */
  @ParameterizedTest
  @ValueSource(strings = {"Gleditsia", "Cercis", "Gymnocladus"})
  void noLegumeOfTheCaesalpiniaTypeFixes(String genus) {
    List<Species> species = Shipped.species().stream().filter(s -> s.genus().equals(genus)).toList();
    assertFalse(species.isEmpty(), "no " + genus + " to look at");
    for (Species s : species) {
      assertTrue(s.statements().stream().noneMatch(said -> said.item().equals(FIXER) && ((TraitValue.YesNo) said.value()).yes()), s.id());
    }
  }

  @Test
  void everyFixerIsALegumeOrOfAGenusThatTheTableGrades() {
    TreeMap<String, TreeSet<String>> genera = new TreeMap<>();
    List<String> neither = new ArrayList<>();
    for (Species species : fixers()) {
      boolean legume = species.family().equals("Fabaceae");
      genera.computeIfAbsent(legume ? "legumes" : ACTINORHIZAL_FROM_MEMORY.contains(species.genus())
          ? "actinorhizal, on the list from memory" : "actinorhizal, not on the list from memory", k -> new TreeSet<>())
          .add(species.genus());
      if (!legume && !ACTINORHIZAL_IN_THE_TABLE.contains(species.genus())) {
        neither.add(species.id());
      }
    }
    System.out.println(fixers().size() + " nitrogen fixers: " + genera);
    assertEquals(List.of(), neither);
  }

  /** A claim that plants of one genus fix and do not fix is a slip of the pen in one of them. */
  @Test
  void aGenusOutsideTheCaesalpiniaTypeFixesAsAWhole() {
    TreeMap<String, TreeSet<Boolean>> verdicts = new TreeMap<>();
    for (Species species : Shipped.species()) {
      species.does(GuildFunction.NITROGEN_FIXER)
          .ifPresent(fixes -> verdicts.computeIfAbsent(species.genus(), g -> new TreeSet<>()).add(fixes));
    }
    assertEquals(List.of(), verdicts.entrySet().stream().filter(e -> e.getValue().size() > 1).map(e -> e.getKey()).toList());
  }

  /** A table's grade is an observation at best; a trial of the very species would be needed for more. */
  @Test
  void everyFixerHasASourceAndAGrade() {
    for (Species species : fixers()) {
      Statement said = species.ruling(Trait.FUNCTION, FIXER).orElseThrow();
      assertFalse(Shipped.isCommonPractice(said), species.id());
      assertTrue(said.evidence().isPresent(), species.id());
      if (said.sourceId().equals("usda-plants")) {
        assertEquals(Evidence.OBSERVED, said.evidence().get(), species.id());
      }
    }
  }

  /** Northeast SARE, FNE20-967: tissue analyses and a preliminary investigation, no trial of a benefit. */
  @Test
  void dynamicAccumulatorsCarryWeakEvidenceOnly() {
    String key = GuildFunction.DYNAMIC_ACCUMULATOR.key();
    int seen = 0;
    for (Species species : Shipped.species()) {
      for (Statement said : species.statements()) {
        if (said.trait() == Trait.FUNCTION && said.item().equals(key) && ((TraitValue.YesNo) said.value()).yes()) {
          seen++;
          Evidence strongest = SCREENED_BY_TISSUE.contains(species.id()) ? Evidence.OBSERVED : Evidence.FOLK;
          assertTrue(said.evidence().orElseThrow().compareTo(strongest) >= 0, Shipped.show(species, said));
          assertTrue(said.evidence().get() == Evidence.FOLK || said.note().contains("tissue analysis only"), Shipped.show(species, said));
        }
      }
    }
    assertTrue(seen >= 4, "only " + seen + " statements about dynamic accumulators");
  }

  private static List<Species> fixers() {
    return Shipped.species().stream().filter(s -> s.does(GuildFunction.NITROGEN_FIXER).orElse(false)).toList();
  }
}
