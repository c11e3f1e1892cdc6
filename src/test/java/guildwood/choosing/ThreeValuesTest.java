package guildwood.choosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Fit;
import guildwood.fit.Stated;
import guildwood.fit.Tolerances;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.WetlandRegion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Yes, no and not known, one small case each. */
class ThreeValuesTest {
  private static Outcome choose(Query query, Stated... species) {
    return choose(query, Optional.empty(), species);
  }

  private static Outcome choose(Query query, Optional<Map<Axis, Range>> place, Stated... species) {
    List<Species> made = java.util.Arrays.stream(species).map(Stated::make).toList();
    FacetIndex index = FacetIndex.of(new SpeciesLibrary(1, made, List.of(), Map.of()));
    return index.choose(query, place.map(p -> index.judge(s -> Fit.ofRanges(Tolerances.of(s), p))));
  }

  private static List<String> names(Outcome outcome) {
    return outcome.list(Order.SCIENTIFIC_NAME, 0, 100).stream().map(r -> r.species().scientificName()).toList();
  }

  private static OptionCount count(Outcome outcome, Facet facet, String option) {
    return outcome.counts().get(facet).options().stream().filter(o -> o.option().equals(option)).findFirst().orElseThrow();
  }

  private static final Stated SHRUB = Stated.species("Aronia prunifolia").with(Trait.LAYER, "shrub");
  private static final Stated HERB = Stated.species("Borago officinalis").with(Trait.LAYER, "herb");
  private static final Stated SILENT = Stated.species("Camassia quamash");

  @Test
  void whatNobodyStatesStaysOnlyWhereItIsAskedToStay() {
    Query shrubs = Query.NOTHING.with(Facet.LAYER, "shrub");
    Outcome strict = choose(shrubs, SHRUB, HERB, SILENT);
    assertEquals(List.of("Aronia prunifolia"), names(strict));
    assertEquals(1, strict.counts().get(Facet.LAYER).notKnown());

    Outcome lenient = choose(shrubs.keeping(Set.of(Facet.LAYER)), SHRUB, HERB, SILENT);
    assertEquals(List.of("Aronia prunifolia", "Camassia quamash"), names(lenient));
    assertEquals(1, lenient.counts().get(Facet.LAYER).notKnown());
    assertEquals(List.of(), lenient.list(Order.SCIENTIFIC_NAME, 0, 1).get(0).notKnownIn());
    assertEquals(List.of(Facet.LAYER), lenient.list(Order.SCIENTIFIC_NAME, 1, 1).get(0).notKnownIn());
  }

  @Test
  void optionsOfAFacetWidenAndCountsSayByHowMuch() {
    Outcome outcome = choose(Query.NOTHING.with(Facet.LAYER, "shrub"), SHRUB, HERB, SILENT);
    assertEquals(new OptionCount("shrub", true, 1), count(outcome, Facet.LAYER, "shrub"));
    assertEquals(new OptionCount("herb", false, 2), count(outcome, Facet.LAYER, "herb"));
    assertEquals(List.of("Aronia prunifolia", "Borago officinalis"),
        names(choose(Query.NOTHING.with(Facet.LAYER, Set.of("shrub", "herb")), SHRUB, HERB, SILENT)));
  }

  @Test
  void aClaimBelowTheEvidenceAskedForIsNotKnownRatherThanNo() {
    Stated folk = Stated.species("Achillea millefolium").with(Trait.FUNCTION, "deep-rooted", "yes", Optional.of(Evidence.FOLK));
    Stated seen = Stated.species("Baptisia alba").with(Trait.FUNCTION, "deep-rooted", "yes", Optional.of(Evidence.OBSERVED));
    Stated denied = Stated.species("Carex alba").with(Trait.FUNCTION, "deep-rooted", "no", Optional.of(Evidence.FOLK));
    Query any = Query.NOTHING.with(Facet.FUNCTION, "deep-rooted");
    assertEquals(List.of("Achillea millefolium", "Baptisia alba"), names(choose(any, folk, seen, denied)));
    assertEquals(List.of("Baptisia alba"), names(choose(any.withEvidence(Evidence.OBSERVED), folk, seen, denied)));
    assertEquals(List.of(), names(choose(any.withEvidence(Evidence.MEASURED), folk, seen, denied)));
    assertEquals(List.of("Achillea millefolium", "Baptisia alba"),
        names(choose(any.withEvidence(Evidence.MEASURED).keeping(Set.of(Facet.FUNCTION)), folk, seen, denied)));
  }

  @Test
  void theHarvestMonthIsThatOfThePartsChosen() {
    Stated elder = Stated.species("Sambucus nigra").with(Trait.HARVEST, "flower", "6").with(Trait.HARVEST, "fruit", "9");
    Stated currant = Stated.species("Ribes rubrum").with(Trait.HARVEST, "fruit", "6..7");
    Stated undated = Stated.species("Aronia prunifolia").with(Trait.HARVEST, "fruit", "yes");
    Query june = Query.NOTHING.with(Facet.HARVEST_MONTH, "june");
    assertEquals(List.of("Ribes rubrum", "Sambucus nigra"), names(choose(june, elder, currant, undated)));
    Outcome fruit = choose(june.with(Facet.HARVEST, "fruit"), elder, currant, undated);
    assertEquals(List.of("Ribes rubrum"), names(fruit));
    assertEquals(1, fruit.counts().get(Facet.HARVEST_MONTH).notKnown());
    // Flowers as well as fruit in June brings the elder back.
    assertEquals(2, count(fruit, Facet.HARVEST, "flower").species());
  }

  @Test
  void harvestedPartsAreAListWithoutWhichNothingIsKnown() {
    Stated apple = Stated.species("Malus domestica").with(Trait.HARVEST, "fruit", "9");
    Query nuts = Query.NOTHING.with(Facet.HARVEST, "nut").keeping(Set.of(Facet.HARVEST));
    assertEquals(List.of("Camassia quamash"), names(choose(nuts, apple, SILENT)));
  }

  @Test
  void cautionsLeaveOutWhatCarriesThemAndNothingElse() {
    Stated toxic = Stated.species("Taxus baccata").with(Trait.CAUTION, "toxic:seed", "Seeds and leaves are deadly.");
    Stated thorny = Stated.species("Rosa rugosa").with(Trait.CAUTION, "thorns", "Thorns.");
    Outcome outcome = choose(Query.NOTHING.with(Facet.WITHOUT, "toxic"), toxic, thorny, SILENT);
    assertEquals(List.of("Camassia quamash", "Rosa rugosa"), names(outcome));
    assertEquals(new OptionCount("toxic", true, 2), count(outcome, Facet.WITHOUT, "toxic"));
    assertEquals(new OptionCount("thorns", false, 1), count(outcome, Facet.WITHOUT, "thorns"));
    assertEquals(0, outcome.counts().get(Facet.WITHOUT).notKnown());
  }

  /** Hardy to zone 5 passes where 5a is asked; hardy to 6a fails where 5b is (zones: USDA ARS, 2023 map). */
  @Test
  void aWinterIsSurvivedOnlyIfAllOfItsZoneIs() {
    Stated five = Stated.species("Asimina triloba").with(Trait.COLDEST_WINTER, "zone 5");
    Stated six = Stated.species("Ficus carica").with(Trait.COLDEST_WINTER, "zone 6a");
    assertEquals(List.of("Asimina triloba"), names(choose(Query.NOTHING.with(Facet.WINTER, "5a"), five, six, SILENT)));
    assertEquals(List.of("Asimina triloba"), names(choose(Query.NOTHING.with(Facet.WINTER, "5b"), five, six)));
    assertEquals(List.of("Asimina triloba", "Ficus carica"), names(choose(Query.NOTHING.with(Facet.WINTER, "6a"), five, six)));
    assertEquals(List.of(), names(choose(Query.NOTHING.with(Facet.WINTER, "4b"), five, six)));
  }

  @Test
  void aPlaceClassIsBorneIfMostOfItIs() {
    Stated sunny = Stated.species("Lavandula angustifolia").with(Trait.LIGHT, "shade-intolerant").with(Trait.MOISTURE, "dry");
    Stated woodland = Stated.species("Asarum canadense").with(Trait.LIGHT, "part shade; full shade").with(Trait.PH, "5.5..6.5");
    assertEquals(List.of("Lavandula angustifolia"), names(choose(Query.NOTHING.with(Facet.LIGHT, "full-sun"), sunny, woodland)));
    assertEquals(List.of("Asarum canadense"), names(choose(Query.NOTHING.with(Facet.LIGHT, "part-shade"), sunny, woodland)));
    assertEquals(List.of("Lavandula angustifolia"), names(choose(Query.NOTHING.with(Facet.MOISTURE, "dry"), sunny, woodland)));
    assertEquals(List.of("Asarum canadense"), names(choose(Query.NOTHING.with(Facet.PH, "slightly-acid"), sunny, woodland)));
    assertEquals(List.of(), names(choose(Query.NOTHING.with(Facet.PH, "strongly-acid"), sunny, woodland)));
  }

  @Test
  void aWetlandRatingNeverStandsWithoutItsRegion() {
    Stated alder = Stated.species("Alnus incana").with(Trait.WETLAND, "midwest", "FACW");
    Query rated = Query.NOTHING.with(Facet.WETLAND, "facw");
    assertEquals(2, choose(rated, alder, SILENT).count());
    assertTrue(!choose(rated, alder, SILENT).counts().containsKey(Facet.WETLAND));
    assertEquals(List.of("Alnus incana"), names(choose(rated.inRegion(Optional.of(WetlandRegion.MIDWEST)), alder, SILENT)));
    Outcome elsewhere = choose(rated.inRegion(Optional.of(WetlandRegion.NE)), alder, SILENT);
    assertEquals(0, elsewhere.count());
    assertEquals(2, elsewhere.counts().get(Facet.WETLAND).notKnown());
  }

  @Test
  void aVerdictNeedsABedAndMayBeNotKnown() {
    Stated sunny = Stated.species("Lavandula angustifolia").with(Trait.LIGHT, "8..14");
    Stated shady = Stated.species("Asarum canadense").with(Trait.LIGHT, "0..4");
    Optional<Map<Axis, Range>> sun = Optional.of(Map.of(Axis.LIGHT, Range.of(10)));
    Query fitting = Query.NOTHING.with(Facet.VERDICT, "fits");
    assertEquals(3, choose(fitting, sunny, shady, SILENT).count());
    Outcome outcome = choose(fitting, sun, sunny, shady, SILENT);
    assertEquals(List.of("Lavandula angustifolia"), names(outcome));
    assertEquals(1, outcome.counts().get(Facet.VERDICT).notKnown());
    assertEquals(2, count(outcome, Facet.VERDICT, "not-known").species());
    // What is known comes before what is not, whatever the order.
    assertEquals(List.of("Lavandula angustifolia", "Camassia quamash"),
        names(choose(fitting.keeping(Set.of(Facet.VERDICT)), sun, sunny, shady, SILENT)));
    assertEquals(List.of("Lavandula angustifolia", "Camassia quamash", "Asarum canadense"),
        choose(Query.NOTHING, sun, sunny, shady, SILENT).list(Order.FIT, 0, 9).stream()
            .map(r -> r.species().scientificName()).toList());
  }
}
