package guildwood.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.kernel.Range;
import org.junit.jupiter.api.Test;

class TrapezoidTest {
  private static final Trapezoid PH = new Trapezoid(new Range(5, 8), new Range(6, 7));

  @Test
  void isOneInsideThePreferredRangeAndFallsStraightToTheEdges() {
    assertEquals(1, PH.at(6));
    assertEquals(1, PH.at(7));
    assertEquals(0.5, PH.at(5.5), 1e-12);
    assertEquals(0.25, PH.at(7.75), 1e-12);
    assertEquals(0, PH.at(5));
    assertEquals(0, PH.at(4.99));
    assertEquals(0, PH.at(8.01));
  }

  @Test
  void averagesOverTheBedsRange() {
    // From 5 to 6 the response climbs from 0 to 1: mean 1/2. From 5 to 8: area 0.5 + 1 + 0.5 over 3.
    assertEquals(0.5, PH.mean(new Range(5, 6)), 1e-12);
    assertEquals(2.0 / 3, PH.mean(new Range(5, 8)), 1e-12);
    assertEquals(0.25, PH.mean(new Range(4, 6)), 1e-12);
    assertEquals(0, PH.mean(new Range(3, 5)));
  }

  @Test
  void aStepHasItsEdgeInside() {
    Trapezoid step = new Trapezoid(new Range(-28.9, 25), new Range(-28.9, 25));
    assertEquals(1, step.mean(Range.of(-28.9)));
    assertEquals(0.5, step.mean(new Range(-30.9, -26.9)), 1e-12);
  }

  @Test
  void aWideBedInTheMiddleOfNowhereStaysExact() {
    Trapezoid narrow = new Trapezoid(new Range(6, 6 + 1e-9), Range.of(6));
    assertEquals(0.5, narrow.mean(new Range(6, 6 + 1e-9)), 1e-6);
  }

  @Test
  void saysHowFarTheBedWouldHaveToMove() {
    assertEquals(0, PH.shortfall(new Range(5, 8)));
    assertEquals(1, PH.shortfall(new Range(4, 5.5)), 1e-12);
    assertEquals(-0.5, PH.shortfall(new Range(7.5, 8.5)), 1e-12);
    assertEquals(-2, PH.shortfall(Range.of(10)), 1e-12);
  }

  @Test
  void aBedWiderThanTheToleranceMovesUntilItHoldsIt() {
    assertEquals(0, PH.shortfall(new Range(4, 9)));
    assertEquals(-1, PH.shortfall(new Range(6, 10)), 1e-12);
    assertEquals(2, PH.shortfall(new Range(2.5, 6)), 1e-12);
  }

  @Test
  void whatIsPreferredIsTolerated() {
    Trapezoid stretched = Trapezoid.reconciled(new Range(5, 6.5), new Range(6, 7.5));
    assertEquals(new Range(5, 7.5), stretched.tolerated());
    assertEquals(1, stretched.at(7.5));
    assertThrows(IllegalArgumentException.class, () -> new Trapezoid(new Range(5, 6), new Range(5, 7)));
  }
}
