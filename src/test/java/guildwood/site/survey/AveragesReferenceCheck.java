package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The classical averages against worked examples and against R. */
class AveragesReferenceCheck {
  private static final String[] SPECIES = {"a", "b", "c", "d", "e", "f"};

  private static AxisReading read(double[] covers, double[] values) {
    Map<String, IndicatorValue> table = new LinkedHashMap<>();
    List<Occurrence> plants = new ArrayList<>();
    for (int i = 0; i < covers.length; i++) {
      if (!Double.isNaN(values[i])) {
        table.put(SPECIES[i], new IndicatorValue.Point(values[i], OptionalDouble.empty()));
      }
      plants.add(Occurrence.wild(SPECIES[i], covers[i]));
    }
    IndicatorTable values1 = new IndicatorTable(SurveyAxis.REACTION, "test", table);
    return new SurveyReader(List.of(values1)).read(Survey.of("p", plants)).readings().get(SurveyAxis.REACTION);
  }

  /** Covers 40, 20, 15, 5; R = 3, 5, 7, indifferent; N = 7, 6, 8, 5: plain arithmetic. */
  @Test
  void indifferentSpeciesDropOutOfBothSums() {
    AxisReading reaction = read(new double[] {40, 20, 15, 5}, new double[] {3, 5, 7, Double.NaN});
    assertEquals(4.333, reaction.averages().weightedMean(), 0.0005);
    assertEquals(325.0 / 75, reaction.averages().weightedMean(), 1e-12);
    assertEquals(5.000, reaction.averages().unweightedMean(), 1e-12);
    assertEquals(100.0 * 75 / 80, reaction.matchedCoverPercent(), 1e-12);
    AxisReading fertility = read(new double[] {40, 20, 15, 5}, new double[] {7, 6, 8, 5});
    assertEquals(6.8125, fertility.averages().weightedMean(), 1e-12);
  }

  /** A made-up table; the scores are those of wascores(values, t(table)) of the R package vegan, version 2.6-4. */
  @Test
  void agreesWithWeightedAveragingInVegan() {
    double[] values = {3, 5, 7, 4.2, 8.1, 1.5};
    double[][] covers = {{40, 20, 15, 5, 0, 0}, {0, 10, 0, 62.5, 3, 0.1}, {2.5, 2.5, 37.5, 0, 0, 15}, {0.5, 0, 0, 0, 87.5, 12}};
    double[] vegan = {4.325000000000000, 4.457010582010582, 5.304347826086956, 7.282500000000000};
    for (int i = 0; i < vegan.length; i++) {
      assertEquals(vegan[i], read(covers[i], values).averages().weightedMean(), 1e-9);
    }
  }

  @Test
  void theErrorOfEqualCoversIsTheUsualOne() {
    AxisReading reading = read(new double[] {5, 5, 5}, new double[] {3, 5, 7});
    assertEquals(2 / Math.sqrt(3), reading.averages().standardError(), 1e-12);
  }
}
