package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every survey. */
class IndicationProperties {
  private static final double SAME = 1e-9;

  /** A made-up flora of points with widths, points without, or ranges. */
  private static IndicatorTable flora(long seed, String kind) {
    Random random = new Random(seed);
    Map<String, IndicatorValue> values = new LinkedHashMap<>();
    for (int i = 0; i < 40; i++) {
      double centre = 1 + 8 * random.nextDouble();
      double width = 0.5 + random.nextDouble();
      values.put("Genus epithet" + (char) ('a' + i / 6) + (char) ('a' + i % 6), switch (kind) {
        case "widths" -> new IndicatorValue.Point(centre, OptionalDouble.of(width));
        case "points" -> new IndicatorValue.Point(centre, OptionalDouble.empty());
        case "ranks" -> new IndicatorValue.Point(Math.rint(centre), OptionalDouble.empty());
        default -> new IndicatorValue.Tolerated(new Range(centre - 2 * width, centre + 2 * width),
            Optional.of(new Range(centre - width / 2, centre + width)));
      });
    }
    return new IndicatorTable(SurveyAxis.MOISTURE, kind, values);
  }

  private static List<Occurrence> plants(IndicatorTable table, long seed, int count) {
    Random random = new Random(seed);
    List<String> species = new ArrayList<>(table.species());
    java.util.Collections.shuffle(species, random);
    return species.stream().limit(count).map(s -> Occurrence.wild(s, Math.exp(3 * random.nextGaussian()) % 100 + 0.1)).toList();
  }

  private static AxisReading read(IndicatorTable table, List<Occurrence> plants) {
    return new SurveyReader(List.of(table)).read(Survey.of("p", plants)).readings().get(SurveyAxis.MOISTURE);
  }

  private static List<Occurrence> scaled(List<Occurrence> plants, double factor) {
    return plants.stream().map(p -> Occurrence.wild(p.species(), factor * p.coverPercent().orElseThrow())).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"widths", "points", "ranks", "ranges"})
  void multiplyingAllCoversChangesNothing(String kind) {
    for (long seed = 1; seed <= 20; seed++) {
      IndicatorTable table = flora(seed, kind);
      List<Occurrence> plants = plants(table, seed, 3 + (int) seed % 9);
      AxisReading once = read(table, plants);
      for (double factor : new double[] {0.01, 3, 50}) {
        AxisReading scaled = read(table, scaled(plants, factor));
        assertEquals(once.median(), scaled.median(), SAME);
        assertEquals(once.interval80().min(), scaled.interval80().min(), SAME);
        assertEquals(once.interval80().max(), scaled.interval80().max(), SAME);
        assertEquals(once.averages().weightedMean(), scaled.averages().weightedMean(), SAME);
        assertEquals(once.averages().standardError(), scaled.averages().standardError(), SAME);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"widths", "points", "ranks", "ranges"})
  void everyNumberLiesWhereItMust(String kind) {
    for (long seed = 1; seed <= 40; seed++) {
      IndicatorTable table = flora(seed, kind);
      int count = 1 + (int) seed % 15;
      AxisReading reading = read(table, plants(table, 100 + seed, count));
      assertTrue(reading.interval80().contains(reading.median()), kind + seed);
      assertTrue(table.scale().contains(reading.interval80()), kind + seed);
      assertEquals(count, reading.voices().size());
      assertTrue(reading.effectiveSpecies() >= 1 - SAME && reading.effectiveSpecies() <= count + SAME);
      assertEquals(1, reading.voices().stream().mapToDouble(AxisReading.Voice::weight).sum(), SAME);
      assertEquals(100, reading.matchedCoverPercent(), SAME);
      double mass = 0;
      for (int i = 0; i < reading.curve().points(); i++) {
        mass += reading.curve().density(i);
      }
      assertEquals(1, mass, SAME);
    }
  }

  @Test
  void aSpeciesAloneGivesItsOwnRangeAndAWarning() {
    IndicatorTable table = flora(5, "widths");
    for (String species : table.species()) {
      AxisReading reading = read(table, List.of(Occurrence.wild(species, 12)));
      Response.Bell bell = (Response.Bell) table.response(species);
      assertTrue(reading.warnsOf("indication.few-species"));
      assertEquals(0, reading.strongest().stream().count());
      if (bell.optimum() - 2 * bell.tolerance() > table.scale().min() && bell.optimum() + 2 * bell.tolerance() < table.scale().max()) {
        assertEquals(bell.optimum(), reading.median(), 0.1);
        assertEquals(2 * 1.2816 * bell.tolerance(), reading.interval80().width(), 0.15 * reading.interval80().width());
      }
    }
  }

  @Test
  void aToleratedRangeAloneStaysWithinItself() {
    IndicatorTable table = new IndicatorTable(SurveyAxis.MOISTURE, SurveyAxis.OWN_AXES, Map.of(
        "wet", new IndicatorValue.Tolerated(new Range(3.5, 5), Optional.empty()),
        "moist", new IndicatorValue.Tolerated(new Range(2.5, 4), Optional.empty()),
        "anywhere", new IndicatorValue.Tolerated(new Range(1.5, 5), Optional.empty())));
    assertTrue(new Range(3.3, 5).contains(read(table, List.of(Occurrence.seen("wet"))).interval80()));
    assertTrue(new Range(2.3, 4.2).contains(read(table, List.of(Occurrence.seen("moist"))).interval80()));
    AxisReading anywhere = read(table, List.of(Occurrence.seen("anywhere")));
    assertFalse(anywhere.called());
    assertEquals(new Range(1, 5), anywhere.interval80());
    assertTrue(anywhere.warnsOf("indication.generalists"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"widths", "points", "ranks", "ranges"})
  void plantedOnesNeverSpeak(String kind) {
    IndicatorTable table = flora(3, kind);
    List<Occurrence> wild = plants(table, 3, 6);
    List<Occurrence> mixed = new ArrayList<>(wild);
    for (String species : table.species()) {
      mixed.add(new Occurrence(species, OptionalDouble.of(80), Origin.PLANTED, Stage.MATURE, ""));
    }
    AxisReading with = read(table, mixed);
    AxisReading without = read(table, wild);
    assertEquals(without.median(), with.median());
    assertEquals(without.interval80(), with.interval80());
    assertEquals(without.matchedCoverPercent(), with.matchedCoverPercent());
    assertEquals(without.averages(), with.averages());
  }

  @Test
  void theOrderOfTheSpeciesDoesNotMatter() {
    IndicatorTable table = flora(9, "widths");
    List<Occurrence> plants = plants(table, 9, 8);
    List<Occurrence> turned = new ArrayList<>(plants);
    java.util.Collections.reverse(turned);
    assertEquals(read(table, plants).median(), read(table, turned).median(), SAME);
  }

  @Test
  void shiftingAndStretchingTheScaleShiftsAndStretchesTheAnswer() {
    for (long seed = 1; seed <= 10; seed++) {
      Random random = new Random(seed);
      Map<String, IndicatorValue> one = new LinkedHashMap<>();
      Map<String, IndicatorValue> other = new LinkedHashMap<>();
      for (int i = 0; i < 20; i++) {
        double value = random.nextDouble() * 7;
        double width = 0.4 + random.nextDouble();
        one.put("Genus epithet" + (char) ('a' + i), new IndicatorValue.Point(value, OptionalDouble.of(width)));
        other.put("Genus epithet" + (char) ('a' + i), new IndicatorValue.Point(100 + 3 * value, OptionalDouble.of(3 * width)));
      }
      IndicatorTable small = new IndicatorTable(SurveyAxis.MOISTURE, "x", one);
      List<Occurrence> plants = plants(small, seed, 7);
      AxisReading a = read(small, plants);
      AxisReading b = read(new IndicatorTable(SurveyAxis.MOISTURE, "x", other), plants);
      assertEquals(100 + 3 * a.median(), b.median(), 1e-6);
      assertEquals(100 + 3 * a.interval80().min(), b.interval80().min(), 1e-6);
      assertEquals(100 + 3 * a.interval80().max(), b.interval80().max(), 1e-6);
    }
  }

  @Test
  void aListIsReadMoreWidelyThanCoversAreAndASeedlingCountsLess() {
    IndicatorTable table = flora(4, "widths");
    List<Occurrence> covers = plants(table, 4, 8).stream().map(p -> Occurrence.wild(p.species(), 10)).toList();
    List<Occurrence> list = covers.stream().map(p -> Occurrence.seen(p.species())).toList();
    assertTrue(read(table, list).interval80().width() > read(table, covers).interval80().width());
    List<Occurrence> young = new ArrayList<>(covers);
    young.set(0, new Occurrence(covers.get(0).species(), OptionalDouble.of(10), Origin.WILD, Stage.SEEDLING, ""));
    assertTrue(read(table, young).voices().get(0).weight() < read(table, covers).voices().get(0).weight());
  }

  @Test
  void plantsThatContradictEachOtherWidenTheIntervalAndAreReported() {
    Map<String, IndicatorValue> values = new LinkedHashMap<>();
    for (int i = 0; i < 12; i++) {
      values.put("Genus epithet" + (char) ('a' + i), new IndicatorValue.Point(1 + 0.7 * i, OptionalDouble.of(0.6)));
    }
    IndicatorTable table = new IndicatorTable(SurveyAxis.MOISTURE, "x", values);
    List<Occurrence> agreeing = List.of(4, 5, 5, 6, 6, 7).stream().distinct()
        .map(i -> Occurrence.wild("Genus epithet" + (char) ('a' + i), 10)).toList();
    List<Occurrence> apart = List.of(0, 1, 10, 11).stream().map(i -> Occurrence.wild("Genus epithet" + (char) ('a' + i), 10)).toList();
    AxisReading sure = read(table, agreeing);
    AxisReading torn = read(table, apart);
    assertFalse(sure.warnsOf("indication.disagreement"));
    assertTrue(torn.warnsOf("indication.disagreement"));
    assertTrue(torn.interval80().width() > 2 * sure.interval80().width());
  }
}
