package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * USDA Natural Resources Conservation Service 1998, <em>Soil Quality Indicators: pH</em>, as reprinted by
 * Oregon State University (forages.oregonstate.edu, soil pH): the printed ends of every class.
 */
class PhClassReferenceCheck {

  @ParameterizedTest
  @CsvSource({
    "extremely acid, 3.5, 4.4", "very strongly acid, 4.5, 5.0", "strongly acid, 5.1, 5.5",
    "moderately acid, 5.6, 6.0", "slightly acid, 6.1, 6.5", "neutral, 6.6, 7.3", "slightly alkaline, 7.4, 7.8",
    "moderately alkaline, 7.9, 8.4", "strongly alkaline, 8.5, 9.0"})
  void bothPrintedEndsLieInTheClass(String name, double low, double high) {
    assertEquals(name, PhClass.of(low).orElseThrow().word());
    assertEquals(name, PhClass.of(high).orElseThrow().word());
    assertEquals(new Range(low, high), PhClass.of(low).orElseThrow().range());
  }

  /** The same table closes with 'above 9.0'. */
  @Test
  void aboveTheLastPrintedEnd() {
    assertEquals("strongly alkaline", PhClass.of(9.0).orElseThrow().word());
    assertEquals("very strongly alkaline", PhClass.of(9.1).orElseThrow().word());
    assertEquals("very strongly alkaline", PhClass.of(11).orElseThrow().word());
  }

  /** The stated rule: to 0.1 first, halves upward as written. The first row is the case between two printed classes. */
  @ParameterizedTest
  @CsvSource({
    "5.05, strongly acid", "5.04, very strongly acid", "5.049, very strongly acid", "4.45, very strongly acid",
    "6.55, neutral", "6.54, slightly acid", "7.35, slightly alkaline", "9.04, strongly alkaline", "9.05, very strongly alkaline"})
  void betweenTwoClassesTheRoundedValueDecides(double ph, String name) {
    assertEquals(name, PhClass.of(ph).orElseThrow().word());
  }

  @Test
  void everyValueFromTheFirstClassUpHasExactlyOneClass() {
    for (int hundredths = 345; hundredths <= 1100; hundredths++) {
      double ph = hundredths / 100.0;
      double rounded = Math.floorDiv(hundredths + 5, 10) / 10.0;
      Range named = PhClass.of(ph).orElseThrow(() -> new AssertionError("no class for " + ph)).range();
      assertEquals(true, named.contains(rounded), ph + " is not in " + named);
    }
    assertEquals(Optional.empty(), PhClass.of(3.44));
  }
}
