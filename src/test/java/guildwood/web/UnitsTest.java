package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import org.junit.jupiter.api.Test;

/** Numbers in words. A foot is 0.3048 m exactly, 12 inches (the international foot, by agreement since 1959). */
class UnitsTest {
  @Test
  void lengthsInMetres() {
    assertEquals("30 cm", Units.METRIC.length(0.3));
    assertEquals("1 m", Units.METRIC.length(1));
    assertEquals("1.2 m", Units.METRIC.length(1.2));
    assertEquals("12.5 m", Units.METRIC.length(12.45));
    assertEquals("0 cm", Units.METRIC.length(0));
  }

  @Test
  void lengthsInFeet() {
    assertEquals("12 in", Units.US.length(0.3048));
    assertEquals("35 in", Units.US.length(0.889));
    assertEquals("3 ft", Units.US.length(0.9144));
    assertEquals("4.5 ft", Units.US.length(1.3716));
    assertEquals("40 ft", Units.US.length(12.192));
  }

  /** What rounds up to the next unit is written in that unit: never 100 cm or 36 in. */
  @Test
  void lengthsJustBelowTheNextUnit() {
    assertEquals("1 m", Units.METRIC.length(0.996));
    assertEquals("99 cm", Units.METRIC.length(0.994));
    assertEquals("3 ft", Units.US.length(0.91));
    assertEquals("35 in", Units.US.length(0.9));
    assertEquals("10 ft", Units.US.length(3.046));
  }

  @Test
  void bothEndsOfARangeHaveOneUnit() {
    assertEquals("0.5 – 1.5 m", Units.METRIC.length(new Range(0.5, 1.5)));
    assertEquals("20 – 60 cm", Units.METRIC.length(new Range(0.2, 0.6)));
    assertEquals("0.2 – 1 m", Units.METRIC.length(new Range(0.2, 0.996)));
    assertEquals("2 m", Units.METRIC.length(Range.of(2)));
    assertEquals("2 m", Units.METRIC.length(new Range(2, 2.01)));
    assertEquals("7 – 13 ft", Units.US.length(new Range(2, 4)));
    assertEquals("12 – 24 in", Units.US.length(new Range(0.3048, 0.6096)));
  }

  @Test
  void areas() {
    assertEquals("9.3 m²", Units.METRIC.area(9.290304));
    assertEquals("24 m²", Units.METRIC.area(24.2));
    assertEquals("100 sq ft", Units.US.area(9.290304));
    assertEquals("1 sq ft", Units.US.area(0.09290304));
  }

  /** Minus 40 is the same on both scales; water freezes at 0 and 32. */
  @Test
  void temperatures() {
    assertEquals("−40 °C", Units.METRIC.temperature(-40));
    assertEquals("−40 °F", Units.US.temperature(-40));
    assertEquals("32 °F", Units.US.temperature(0));
    assertEquals("−28.9 °C", Units.METRIC.temperature(-28.89));
  }

  @Test
  void numbersCarryNoTrailingZerosAndNoSignOfZero() {
    assertEquals("100", Units.number(100, 2));
    assertEquals("1.5", Units.number(1.50, 2));
    assertEquals("0.13", Units.number(0.125, 2));
    assertEquals("−2.5", Units.number(-2.5, 1));
    assertEquals("0", Units.number(-0.04, 1));
    assertEquals("0", Units.number(0, 3));
    assertEquals("1000000", Units.number(1e6, 0));
  }
}
