package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whether nobody is shown food without the warning that belongs to it. */
class SeedCautionsTest {
  private final List<String> wrong = new ArrayList<>();

  /** FDA letter of 6 July 2001: pyrrolizidine alkaloids of comfrey harm the liver when eaten. */
  @Test
  void comfreyIsPoisonous() {
    for (String id : List.of("symphytum-officinale", "symphytum-x-uplandicum", "symphytum-x-uplandicum-bocking-14")) {
      assertTrue(has(Shipped.find(id), CautionKind.TOXIC), id);
    }
  }

  /** CDC, MMWR 1984: raw juice pressed with leaves made people ill; cooked berries are commonly eaten. */
  @Test
  void elderIsToBeCookedAndNotCalledAPoisonousPlant() {
    for (String id : List.of("sambucus-canadensis", "sambucus-nigra")) {
      Species elder = Shipped.find(id);
      assertTrue(has(elder, CautionKind.COOK_FIRST), id);
      assertTrue(elder.cautions().stream().noneMatch(s -> s.item().equals("toxic:plant")), id);
    }
  }

  @Test
  void whatMustBeCookedIsNotOfferedRaw() {
    for (Species species : Shipped.species()) {
      if (has(species, CautionKind.COOK_FIRST) && species.words(Trait.USE).contains("raw-food")) {
        wrong.add(species.id());
      }
    }
    assertEquals(List.of(), wrong);
  }

  /**
   * Poisons run in genera. Where a source calls a named part of one food plant poisonous, its relatives in the
   * library that offer food warn too, unless it is known why they need not.
   */
  @Test
  void relativesOfAPoisonousFoodPlantWarnToo() {
    Set<String> genera = Shipped.species().stream()
        .filter(s -> s.offersFood() && s.cautions().stream().anyMatch(SeedCautionsTest::namesAPoisonousPart))
        .map(Species::genus).collect(Collectors.toCollection(TreeSet::new));
    for (Species species : Shipped.species()) {
      if (genera.contains(species.genus()) && species.offersFood()
          && !has(species, CautionKind.TOXIC) && !has(species, CautionKind.COOK_FIRST)) {
        wrong.add(species.id());
      }
    }
    System.out.println("genera of food plants with a poisonous part: " + genera);
    assertEquals(List.of(), wrong);
  }

  /** Illinois Exotic Weed Act, 525 ILCS 10: autumn olive may not be planted without a permit. */
  @Test
  void autumnOliveNamesTheActOfIllinois() {
    assertTrue(Shipped.find("elaeagnus-umbellata").cautions().stream()
        .anyMatch(s -> s.item().equals("listed:US-IL") && s.entered().contains("Exotic Weed Act")));
  }

  /** New York ECL 9-1301; Massachusetts 330 CMR 9.03; Maine DACF; Rhode Island 250-RICR-40-10-2. */
  @Test
  void blackCurrantIsListedWhereItIsForbidden() {
    Set<String> places = Shipped.find("ribes-nigrum").cautions().stream().map(Statement::item)
        .filter(item -> item.startsWith("listed:")).collect(Collectors.toSet());
    assertTrue(places.containsAll(Set.of("listed:US-NY", "listed:US-MA", "listed:US-ME", "listed:US-RI")), places.toString());
  }

  /** Law changes: every legal caution shows when it was looked up, in its text or in its source. */
  @Test
  void whatTheLawSaysCarriesTheDayItWasChecked() {
    for (Species species : Shipped.species()) {
      for (Statement caution : species.cautions()) {
        boolean dated = (caution.entered() + " " + Shipped.source(caution).locator()).contains("checked");
        if (CautionKind.of(caution.item()).orElseThrow().isLegal() && !dated) {
          wrong.add(Shipped.show(species, caution));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean namesAPoisonousPart(Statement caution) {
    return CautionKind.of(caution.item()).orElseThrow() == CautionKind.TOXIC && !caution.item().equals("toxic:plant");
  }

  private static boolean has(Species species, CautionKind kind) {
    return species.cautions().stream().anyMatch(s -> CautionKind.of(s.item()).orElseThrow() == kind);
  }
}
