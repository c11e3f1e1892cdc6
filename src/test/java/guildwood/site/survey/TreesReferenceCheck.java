package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.exchange.IndicatorFiles;
import guildwood.species.Axis;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Trees as indicators: McNab et al. 2002 (USDA Forest Service), Nova Scotia woodlot course, as kept in the app's table. */
class TreesReferenceCheck {
  private static final SurveyReader READER = new SurveyReader(IndicatorFiles.read().tables(Optional.empty()));

  private static PlotReading read(String... trees) {
    return READER.read(Survey.of("trees", Arrays.stream(trees).map(Occurrence::seen).toList()));
  }

  /** Both on sites of high productivity: McNab et al. 2002. */
  @Test
  void ashWithTulipTreeReadsFertile() {
    AxisReading fertility = read("Fraxinus americana", "Liriodendron tulipifera").readings().get(SurveyAxis.FERTILITY);
    assertTrue(fertility.called());
    assertTrue(fertility.median() > 2.33, "in the upper third of poor 1 to rich 3: " + fertility.median());
    assertTrue(fertility.interval80().min() > 1.75, "poor is ruled out: " + fertility.interval80());
  }

  /** Both on sites of low productivity: McNab et al. 2002. */
  @Test
  void chestnutOakWithScarletOakReadsInfertile() {
    AxisReading fertility = read("Quercus montana", "Quercus coccinea").readings().get(SurveyAxis.FERTILITY);
    assertTrue(fertility.called());
    assertTrue(fertility.median() < 1.67, "in the lower third: " + fertility.median());
    assertTrue(fertility.interval80().max() < 2.25, "rich is ruled out: " + fertility.interval80());
  }

  /** From poorly drained ground to dry upland: Nova Scotia woodlot course. */
  @Test
  void redMapleAloneGivesNoCallOnMoisture() {
    AxisReading moisture = read("Acer rubrum").readings().get(SurveyAxis.MOISTURE);
    assertFalse(moisture.called());
    assertEquals(moisture.scale(), moisture.interval80());
    assertTrue(moisture.warnsOf("indication.generalists"));
    assertTrue(moisture.warnsOf("indication.few-species"));
    assertTrue(moisture.condition("plot").isEmpty());
    assertFalse(moisture.contradicts(new Range(1, 1)));
  }

  @Test
  void aReadingBecomesAConditionAndContradictsAMeasurement() {
    AxisReading fertility = read("Quercus montana", "Quercus coccinea").readings().get(SurveyAxis.FERTILITY);
    Condition condition = fertility.condition("the ridge").orElseThrow();
    assertEquals(Basis.INDICATED, condition.basis());
    assertEquals(Axis.FERTILITY, condition.axis());
    assertTrue(condition.range().contains(fertility.interval80()));
    assertTrue(fertility.contradicts(Range.of(3)));
    assertFalse(fertility.contradicts(Range.of(1)));
  }

  /** Expected, but on facts from memory or second hand, hence printed and not asserted. */
  @Test
  void printsTheReadingsThatAreExpectedButNotAsserted() {
    print("ash, tulip tree, basswood: expected moist, fertile", "Fraxinus americana", "Liriodendron tulipifera", "Tilia americana");
    print("chestnut oak, scarlet oak: expected dry", "Quercus montana", "Quercus coccinea");
    print("black spruce, tamarack, white cedar: expected wet, poor or acid", "Picea mariana", "Larix laricina", "Thuja occidentalis");
  }

  private static void print(String what, String... trees) {
    PlotReading reading = read(trees);
    System.out.println(what);
    for (SurveyAxis axis : List.of(SurveyAxis.MOISTURE, SurveyAxis.FERTILITY, SurveyAxis.REACTION)) {
      AxisReading one = reading.readings().get(axis);
      System.out.printf(Locale.ROOT, "  %-10s %.2f (%.2f to %.2f)%s%n", axis.key(), one.median(), one.interval80().min(),
          one.interval80().max(), one.called() ? "" : ", no call");
    }
  }
}
