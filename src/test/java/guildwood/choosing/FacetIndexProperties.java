package guildwood.choosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Fit;
import guildwood.fit.Tolerances;
import guildwood.fit.Verdict;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.WetlandRegion;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The index against a plain filter that asks every species: who remains, and every count beside every option. */
class FacetIndexProperties {
  private static final Map<Axis, Range> PLACE = Map.of(
      Axis.LIGHT, new Range(4, 7), Axis.MOISTURE, new Range(2, 3), Axis.WINTER_COLD, Range.of(-26));

  /** Sizes on both sides of the word edges of a row. */
  @ParameterizedTest
  @ValueSource(ints = {1, 63, 64, 65, 130, 40, 97, 128})
  void theSameRemainAndTheSameCountsStand(int size) {
    SpeciesLibrary library = RandomLibrary.of(size, size);
    Trial trial = new Trial(library);
    Random random = new Random(1000 + size);
    for (int n = 0; n < 40; n++) {
      trial.check(randomQuery(random, library), random.nextBoolean());
    }
    // A check that passes only on empty results would show nothing.
    assertTrue(size < 40 || trial.nonTrivial >= 15, "only " + trial.nonTrivial + " queries kept some and lost some");
  }

  @Test
  void anEmptyLibraryIsNoSpecialCase() {
    FacetIndex index = FacetIndex.of(new SpeciesLibrary(0, List.of(), List.of(), Map.of()));
    Outcome outcome = index.choose(Query.NOTHING.with(Facet.LAYER, "shrub").withText("a"), Optional.empty());
    assertEquals(0, outcome.count());
    assertTrue(outcome.list(Order.NAME, 0, 50).isEmpty());
    assertTrue(outcome.counts().values().stream().flatMap(f -> f.options().stream()).allMatch(o -> o.species() == 0));
  }

  private static Query randomQuery(Random random, SpeciesLibrary library) {
    Query query = Query.NOTHING.withEvidence(Evidence.values()[random.nextInt(3)]).inRegion(random.nextBoolean()
        ? Optional.of(WetlandRegion.values()[random.nextInt(WetlandRegion.values().length)]) : Optional.empty());
    List<Facet> facets = new ArrayList<>(List.of(Facet.values()));
    // The one pair of facets that depend on each other comes up more often than chance would have it.
    if (random.nextInt(4) == 0) {
      facets = new ArrayList<>(List.of(Facet.HARVEST, Facet.HARVEST_MONTH, Facet.LAYER));
    }
    for (int n = random.nextInt(4); n > 0; n--) {
      Facet facet = facets.get(random.nextInt(facets.size()));
      for (int o = 1 + random.nextInt(4); o > 0; o--) {
        query = query.with(facet, facet.options().get(random.nextInt(facet.options().size())));
      }
    }
    EnumSet<Facet> keeps = EnumSet.noneOf(Facet.class);
    List.of(Facet.values()).stream().filter(f -> random.nextInt(3) == 0).forEach(keeps::add);
    return query.keeping(keeps).withText(random.nextInt(5) == 0 ? someStart(random, library) : "");
  }

  private static String someStart(Random random, SpeciesLibrary library) {
    Species species = library.species().get(random.nextInt(library.species().size()));
    String name = random.nextBoolean() ? species.name() : species.scientificName();
    return name.substring(0, 1 + random.nextInt(name.length()));
  }

  /** One library under both. */
  private static final class Trial {
    private final SpeciesLibrary library;
    private final FacetIndex index;
    private final BedFits fits;
    private final Map<String, Verdict> verdicts = new HashMap<>();
    private int nonTrivial;

    Trial(SpeciesLibrary library) {
      this.library = library;
      this.index = FacetIndex.of(library);
      this.fits = index.judge(Trial::fit);
      library.species().forEach(s -> verdicts.put(s.id(), fit(s).verdict()));
    }

    private static Fit fit(Species species) {
      return Fit.ofRanges(Tolerances.of(species), PLACE);
    }

    void check(Query query, boolean bed) {
      Outcome outcome = index.choose(query, bed ? Optional.of(fits) : Optional.empty());
      Set<String> expected = plain(query, bed);
      assertEquals(expected, ids(outcome), () -> "who remains under " + query);
      assertEquals(expected.size(), outcome.count());
      checkOrder(outcome);
      nonTrivial += !expected.isEmpty() && expected.size() < library.species().size() ? 1 : 0;
      outcome.counts().forEach((facet, count) -> check(query, bed, expected, count));
    }

    /** Certain ones first, each part by name; and pages are pieces of the whole. */
    private void checkOrder(Outcome outcome) {
      List<Outcome.Remaining> listed = outcome.list(Order.NAME, 0, Integer.MAX_VALUE);
      long certain = listed.stream().takeWhile(r -> r.notKnownIn().isEmpty()).count();
      assertTrue(listed.stream().skip(certain).noneMatch(r -> r.notKnownIn().isEmpty()), "a certain one after an uncertain one");
      List<Outcome.Remaining> paged = new ArrayList<>();
      for (int first = 0; first < listed.size(); first += 7) {
        paged.addAll(outcome.list(Order.NAME, first, 7));
      }
      assertEquals(listed, paged);
    }

    private void check(Query query, boolean bed, Set<String> remaining, FacetCount count) {
      Facet facet = count.facet();
      assertEquals(facet.options(), count.options().stream().map(OptionCount::option).toList());
      for (OptionCount option : count.options()) {
        assertEquals(query.has(facet, option.option()), option.chosen());
        int expected = option.chosen()
            ? (int) library.species().stream().filter(s -> remaining.contains(s.id()))
                .filter(s -> filter(query.with(facet, Set.of(option.option())), bed).passes(s, facet)).count()
            : plain(query.with(facet, option.option()), bed).size();
        assertEquals(expected, option.species(), () -> facet + " " + option + " under " + query);
      }
      if (query.chosen(facet).isEmpty()) {
        assertEquals(0, count.notKnown());
      } else {
        EnumSet<Facet> with = EnumSet.of(facet);
        with.addAll(query.keepsNotKnown());
        EnumSet<Facet> without = EnumSet.copyOf(with);
        without.remove(facet);
        assertEquals(plain(query.keeping(with), bed).size() - plain(query.keeping(without), bed).size(), count.notKnown(),
            () -> "not known in " + facet + " under " + query);
      }
    }

    private PlainFilter filter(Query query, boolean bed) {
      return new PlainFilter(query, verdicts, bed);
    }

    private Set<String> plain(Query query, boolean bed) {
      PlainFilter filter = filter(query, bed);
      Set<String> ids = new HashSet<>();
      library.species().stream().filter(filter::passes).forEach(s -> ids.add(s.id()));
      return ids;
    }

    private static Set<String> ids(Outcome outcome) {
      Set<String> ids = new HashSet<>();
      outcome.list(Order.NAME, 0, Integer.MAX_VALUE).forEach(r -> ids.add(r.species().id()));
      return ids;
    }
  }
}
