package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.survey.WetlandRules.Dominance;
import guildwood.site.survey.WetlandRules.Rated;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** US Army Corps of Engineers, regional supplement Midwest, ERDC/EL TR-10-16 (2010), and a county's filed data form. */
class WetlandRulesReferenceCheck {
  private static final int OBL = 1;
  private static final int FACW = 2;
  private static final int FAC = 3;
  private static final int FACU = 4;
  private static final int UPL = 5;

  private static Rated plant(String species, double cover, int rating) {
    return new Rated(species, "", cover, OptionalDouble.of(rating));
  }

  private static Rated unrated(String species, double cover) {
    return new Rated(species, "", cover, OptionalDouble.empty());
  }

  /** Table 3, p. 30: A = 164, B = 451, PI 2.75, hydrophytic. */
  private static List<Rated> midwestTable3() {
    return List.of(plant("Glyceria striata", 2, OBL), plant("Impatiens capensis", 15, FACW),
        plant("Arisaema triphyllum", 0.5, FACW), plant("Quercus bicolor", 40, FACW), plant("Fraxinus pennsylvanica", 17, FACW),
        plant("Ulmus americana", 10, FACW), plant("Toxicodendron radicans", 6, FAC), plant("Carpinus caroliniana", 35, FAC),
        plant("Lonicera tatarica", 2, FACU), plant("Parthenocissus quinquefolia", 1, FACU), plant("Carex laxiflora", 0.5, FACU),
        plant("Carya ovata", 18, FACU), plant("Acer saccharum", 5, FACU), plant("Quercus rubra", 5, FACU),
        plant("Geranium carolinianum", 7, UPL));
  }

  @Test
  void theSupplementsExampleHasIndex275() {
    double index = WetlandRules.prevalenceIndex(midwestTable3()).orElseThrow();
    assertEquals(451.0 / 164, index, 1e-12);
    assertEquals(2.75, index, 0.005);
  }

  /** Corps data form, point WET-1, Burnett County, Wisconsin: four at 25 tie, so five dominants; A 140, B 165, PI 1.18. */
  @Test
  void allThatTieAreDominant() {
    List<Rated> wet1 = List.of(plant("Calamagrostis canadensis", 40, OBL), plant("Glyceria canadensis", 25, OBL),
        plant("Typha latifolia", 25, OBL), plant("Bidens frondosa", 25, FACW), plant("Juncus effusus", 25, OBL));
    Dominance dominance = WetlandRules.dominance(wet1);
    assertEquals(5, dominance.dominants().size());
    assertEquals(100, dominance.wetlandPercent().orElseThrow());
    assertTrue(dominance.isMostlyWetland());
    assertEquals(165.0 / 140, WetlandRules.prevalenceIndex(wet1).orElseThrow(), 1e-12);
    assertEquals(1.18, WetlandRules.prevalenceIndex(wet1).orElseThrow(), 0.005);
  }

  /** The rule takes species until the sum exceeds half; exactly half is not enough. */
  @Test
  void exactlyHalfIsNotExceeded() {
    Dominance dominance = WetlandRules.dominance(List.of(plant("a", 50, FAC), plant("b", 30, FACU), plant("c", 20, OBL)));
    assertEquals(List.of("a", "b", "c"), dominance.dominants().stream().map(Rated::species).toList());
    Dominance three = WetlandRules.dominance(List.of(plant("a", 51, FAC), plant("b", 30, FACU), plant("c", 19, OBL)));
    assertEquals(List.of("a", "b"), three.dominants().stream().map(Rated::species).toList());
    assertFalse(three.isMostlyWetland(), "one of two is not more than half");
  }

  @Test
  void strataAreJudgedEachOnItsOwn() {
    List<Rated> plants = List.of(new Rated("Acer rubrum", "tree", 60, OptionalDouble.of(FAC)),
        new Rated("Quercus rubra", "tree", 10, OptionalDouble.of(FACU)),
        new Rated("Acer rubrum", "herb", 2, OptionalDouble.of(FAC)), new Rated("Carex x", "herb", 1, OptionalDouble.of(OBL)));
    Dominance dominance = WetlandRules.dominance(plants);
    assertEquals(List.of("Acer rubrum", "Acer rubrum", "Carex x"), dominance.dominants().stream().map(Rated::species).toList());
  }

  @Test
  void fourFifthsOfTheCoverMustBeRated() {
    assertTrue(WetlandRules.prevalenceIndex(List.of(plant("a", 80, FAC), unrated("b", 20))).isPresent());
    assertTrue(WetlandRules.prevalenceIndex(List.of(plant("a", 79, FAC), unrated("b", 21))).isEmpty());
  }

  @Test
  void theIndexHasTheStatedProperties() {
    List<Rated> plants = midwestTable3();
    double index = WetlandRules.prevalenceIndex(plants).orElseThrow();
    List<Rated> tripled = plants.stream()
        .map(p -> new Rated(p.species(), p.stratum(), 3 * p.coverPercent(), p.rating())).toList();
    assertEquals(index, WetlandRules.prevalenceIndex(tripled).orElseThrow(), 1e-12);
    for (int rating = OBL; rating <= UPL; rating++) {
      assertEquals(rating, WetlandRules.prevalenceIndex(List.of(plant("alone", 7, rating))).orElseThrow());
    }
    for (double cover : new double[] {0.1, 5, 90}) {
      List<Rated> wetter = new ArrayList<>(plants);
      wetter.add(plant("Carex lacustris", cover, OBL));
      assertTrue(WetlandRules.prevalenceIndex(wetter).orElseThrow() <= index);
    }
  }
}
