package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.Statement.Topic;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Whether the shipped library agrees with itself: every value of every species. The bounds on sizes are
 * ours: wide enough for any plant of a temperate garden, tight enough to catch feet taken for metres.
 */
class SeedConsistencyTest {
  private static final Pattern TWO_ENDS = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\.\\.(-?\\d+(?:\\.\\d+)?)(?: \\w+)?");

  /** Parts that grow out of a flower. */
  private static final Set<String> AFTER_BLOOM = Set.of("fruit", "nut", "seed");

  private final List<String> wrong = new ArrayList<>();

  /** Reads the numbers afresh, so that the reader's own check is not the only one. */
  @Test
  void noRangeRunsBackwards() {
    everyStatement((species, said) -> {
      Matcher ends = TWO_ENDS.matcher(said.entered());
      if (said.value() instanceof TraitValue.Span span && ends.matches()
          && (Double.parseDouble(ends.group(1)) > Double.parseDouble(ends.group(2))
              || span.range().min() > span.range().max())) {
        wrong.add(Shipped.show(species, said));
      }
    });
    assertNothingWrong();
  }

  /** Light words of two schemes may part by half an hour: 'full shade' begins at 0 h, 'shade-tolerant' at 0.5 h. */
  @Test
  void whatAPlantPrefersItAlsoBears() {
    Map<Trait, Trait> pairs = Map.of(Trait.LIGHT_PREFERRED, Trait.LIGHT, Trait.MOISTURE_PREFERRED, Trait.MOISTURE,
        Trait.PH_PREFERRED, Trait.PH, Trait.FERTILITY_PREFERRED, Trait.FERTILITY);
    for (Species species : Shipped.species()) {
      pairs.forEach((preferred, borne) -> {
        Optional<Range> likes = species.range(preferred);
        Optional<Range> bears = species.range(borne);
        double slack = borne == Trait.LIGHT ? 0.5 : 0;
        if (likes.isPresent() && bears.isPresent()
            && !new Range(bears.get().min() - slack, bears.get().max() + slack).contains(likes.get())) {
          wrong.add(species.id() + " " + preferred.key() + " " + likes.get() + " outside " + bears.get());
        }
      });
    }
    assertNothingWrong();
  }

  @Test
  void bloomComesBeforeTheHarvestOfFruitNutAndSeed() {
    for (Species species : Shipped.species()) {
      Optional<Months> bloom = species.bloom();
      species.harvest().forEach((part, months) -> {
        if (AFTER_BLOOM.contains(part) && bloom.isPresent() && !months.isEmpty()
            && first(months).compareTo(first(bloom.get())) <= 0) {
          wrong.add(species.id() + " blooms " + bloom.get().list() + ", " + part + " " + months.list());
        }
      });
    }
    assertNothingWrong();
  }

  @Test
  void aClimberIsNotATree() {
    for (Species species : Shipped.species()) {
      Set<Layer> layers = species.layers();
      if (layers.contains(Layer.CLIMBER) && (layers.contains(Layer.TALL_TREE) || layers.contains(Layer.SMALL_TREE))) {
        wrong.add(species.id() + " " + layers);
      }
    }
    assertNothingWrong();
  }

  /** A plant with several layers may be as tall as the tallest of them. */
  @Test
  void layersAgreeWithHeights() {
    for (Species species : Shipped.species()) {
      Optional<Range> height = species.range(Trait.HEIGHT);
      Set<Layer> layers = species.layers();
      if (height.isEmpty() || layers.isEmpty()) {
        continue;
      }
      double low = height.get().min();
      double high = height.get().max();
      if (layers.contains(Layer.TALL_TREE) && high < 10
          || layers.contains(Layer.SMALL_TREE) && (high < 2.5 || low > 10)
          || layers.equals(Set.of(Layer.SHRUB)) && (low > 6.5 || high < 0.1)
          || layers.equals(Set.of(Layer.HERB)) && high > 3.5
          || layers.equals(Set.of(Layer.GROUND_COVER)) && high > 1
          || layers.contains(Layer.CLIMBER) && high > 30) {
        wrong.add(species.id() + " " + layers + " of " + low + " to " + high + " m");
      }
    }
    assertNothingWrong();
  }

  @Test
  void everySpeciesHasALayer() {
    Shipped.species().stream().filter(s -> s.layers().isEmpty()).forEach(s -> wrong.add(s.id()));
    assertNothingWrong();
  }

  @Test
  void numbersLieWhereTheyCanForATemperateGarden() {
    Map<Trait, Range> sane = Map.of(
        Trait.HEIGHT, new Range(0.02, 50), Trait.CROWN, new Range(0.05, 35), Trait.PH, new Range(3, 9.5),
        // All of them bear a winter of -7 degrees C, the mildest the library is made for.
        Trait.COLDEST_WINTER, new Range(-56, -7), Trait.FROST_FREE_DAYS, new Range(40, 210));
    everyStatement((species, said) -> {
      Range bounds = sane.get(said.trait());
      if (bounds != null && !bounds.contains(((TraitValue.Span) said.value()).range())) {
        wrong.add(Shipped.show(species, said));
      }
    });
    assertNothingWrong();
  }

  @Test
  void lengthsAndTemperaturesAreWrittenWithTheirUnit() {
    everyStatement((species, said) -> {
      Unit unit = said.trait().unit();
      if (unit == Unit.METRES && !said.entered().matches(".* (m|cm|ft|in)")
          || unit == Unit.CELSIUS && !said.entered().matches("-?[\\d.]+ [FC]|zone \\d{1,2}[ab]?")) {
        wrong.add(Shipped.show(species, said));
      }
    });
    assertNothingWrong();
  }

  /** A metre is 3.28 feet: two sources that differ by more than 2.5 times differ in unit, plant or care. */
  @Test
  void sourcesAgreeRoughlyOnSizes() {
    for (Species species : Shipped.species()) {
      for (Trait size : List.of(Trait.HEIGHT, Trait.CROWN)) {
        List<Double> tallest = species.statements().stream().filter(s -> s.trait() == size)
            .map(s -> ((TraitValue.Span) s.value()).range().max()).sorted().toList();
        if (!tallest.isEmpty() && tallest.get(tallest.size() - 1) > 2.5 * tallest.get(0)) {
          wrong.add(species.id() + " " + size.key() + " " + tallest + " m");
        }
      }
    }
    assertNothingWrong();
  }

  /** A planting density of close plantings, taken for a crown, makes poles of shrubs. */
  @Test
  void woodyPlantsHaveCrownsInProportion() {
    for (Species species : Shipped.species()) {
      Optional<Range> height = species.range(Trait.HEIGHT);
      Optional<Range> crown = species.range(Trait.CROWN);
      if (height.isEmpty() || crown.isEmpty()) {
        continue;
      }
      double proportion = crown.get().middle() / height.get().middle();
      boolean tree = species.layers().contains(Layer.TALL_TREE) || species.layers().contains(Layer.SMALL_TREE);
      if (tree && proportion > 1.5 || species.layers().equals(Set.of(Layer.SHRUB)) && proportion < 0.35) {
        wrong.add(species.id() + " crown " + crown.get() + ", height " + height.get());
      }
    }
    assertNothingWrong();
  }

  @Test
  void exactlyOneValueRulesWhereSourcesDisagree() {
    for (Species species : Shipped.species()) {
      species.byTopic().forEach((topic, said) -> rulers(species, topic, said));
    }
    assertNothingWrong();
  }

  /** The same value written in two ways, such as zone 3 and zone 3a, may have a ruler and needs none. */
  private void rulers(Species species, Topic topic, List<Statement> said) {
    long rulers = said.stream().filter(Statement::chosen).count();
    boolean disagree = !topic.trait().addsUp() && said.stream().map(Statement::value).distinct().count() > 1;
    boolean writtenAlike = topic.trait().addsUp() || said.stream().map(Statement::entered).distinct().count() == 1;
    if (disagree ? rulers != 1 : rulers > (writtenAlike ? 0 : 1)) {
      wrong.add(species.id() + " " + topic + ": " + said.size() + " values, " + rulers + " of them rule");
    }
  }

  private void everyStatement(BiConsumer<Species, Statement> check) {
    Shipped.species().forEach(species -> species.statements().forEach(said -> check.accept(species, said)));
  }

  /** The first month of a run; what runs over the new year begins in the old one. */
  private static Month first(Months months) {
    return months.list().stream().filter(m -> !months.contains(m.minus(1))).reduce((a, b) -> b.getValue() == 12 ? b : a)
        .orElse(Month.JANUARY);
  }

  private void assertNothingWrong() {
    assertEquals(List.of(), wrong);
  }
}
