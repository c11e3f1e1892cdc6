package guildwood.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What holds for every fit, on seeded random tolerances and places. */
class FitProperties {

  /** Simpson's rule on each of many slices; the response is piecewise linear, so only slices with a bend err. */
  private static double quadrature(Trapezoid trapezoid, Range bed, int slices) {
    double sum = 0;
    double step = bed.width() / slices;
    for (int i = 0; i < slices; i++) {
      double from = bed.min() + i * step;
      sum += (trapezoid.at(from) + 4 * trapezoid.at(from + step / 2) + trapezoid.at(from + step)) / 6;
    }
    return sum / slices;
  }

  private static Range random(Random dice, double low, double high) {
    double a = low + (high - low) * dice.nextDouble();
    double b = low + (high - low) * dice.nextDouble();
    return new Range(Math.min(a, b), Math.max(a, b));
  }

  private static Range within(Random dice, Range outer) {
    return random(dice, outer.min(), outer.max());
  }

  private static Trapezoid trapezoid(Random dice) {
    Range tolerated = random(dice, 0, 16);
    return new Trapezoid(tolerated, within(dice, tolerated));
  }

  @RepeatedTest(20)
  void closedFormAgreesWithNumericQuadrature(RepetitionInfo run) {
    Random dice = new Random(run.getCurrentRepetition());
    for (int i = 0; i < 20; i++) {
      Trapezoid slopes = trapezoid(dice);
      Range bed = random(dice, -2, 18);
      // A step's jump costs the quadrature up to one slice; sloped sides keep it below 1e-6.
      boolean gentle = slopes.preferred().min() - slopes.tolerated().min() > 0.05
          && slopes.tolerated().max() - slopes.preferred().max() > 0.05;
      if (gentle && bed.width() > 0) {
        assertEquals(quadrature(slopes, bed, 20_000), slopes.mean(bed), 1e-6, slopes + " over " + bed);
      }
    }
  }

  @RepeatedTest(20)
  void wideningAToleranceNeverLowersTheFit(RepetitionInfo run) {
    Random dice = new Random(100 + run.getCurrentRepetition());
    for (int i = 0; i < 200; i++) {
      Range tolerated = random(dice, 2, 12);
      Range preferred = random(dice, 2, 12);
      Range bed = random(dice, 0, 14);
      Trapezoid before = Trapezoid.reconciled(tolerated, preferred);
      Range wider = new Range(tolerated.min() - dice.nextDouble(), tolerated.max() + dice.nextDouble());
      assertTrue(Trapezoid.reconciled(wider, preferred).mean(bed) >= before.mean(bed) - 1e-12);
      Range wish = new Range(preferred.min() - dice.nextDouble(), preferred.max() + dice.nextDouble());
      assertTrue(Trapezoid.reconciled(tolerated, wish).mean(bed) >= before.mean(bed) - 1e-12);
    }
  }

  @RepeatedTest(20)
  void movingTheBedByItsShortfallBringsItInside(RepetitionInfo run) {
    Random dice = new Random(200 + run.getCurrentRepetition());
    for (int i = 0; i < 200; i++) {
      Trapezoid bears = trapezoid(dice);
      Range bed = random(dice, -4, 20);
      double move = bears.shortfall(bed);
      Range moved = new Range(bed.min() + move, bed.max() + move);
      Range slack = new Range(bears.tolerated().min() - 1e-9, bears.tolerated().max() + 1e-9);
      Range roomy = new Range(moved.min() - 1e-9, moved.max() + 1e-9);
      assertTrue(slack.contains(moved) || roomy.contains(bears.tolerated()), bears + " moved to " + moved);
    }
  }

  @RepeatedTest(20)
  void theOverallFitIsTheLowestKnownAxisAndTheUnknownNeverCounts(RepetitionInfo run) {
    Random dice = new Random(300 + run.getCurrentRepetition());
    for (int i = 0; i < 50; i++) {
      Map<Axis, Tolerance> bears = new EnumMap<>(Axis.class);
      Map<Axis, Range> place = new EnumMap<>(Axis.class);
      for (Axis axis : new Axis[] {Axis.LIGHT, Axis.MOISTURE, Axis.REACTION, Axis.FERTILITY}) {
        if (dice.nextBoolean()) {
          bears.put(axis, trapezoid(dice));
        }
        if (dice.nextBoolean()) {
          place.put(axis, random(dice, 0, 16));
        }
      }
      Fit fit = Fit.ofRanges(new Tolerances(bears), place);
      double lowest = 1;
      for (AxisFit axis : fit.axes()) {
        assertTrue(axis.value() >= 0 && axis.value() <= 1);
        assertTrue(bears.containsKey(axis.axis()) && place.containsKey(axis.axis()));
        lowest = Math.min(lowest, axis.value());
      }
      assertEquals(fit.axes().isEmpty(), fit.overall().isEmpty());
      assertEquals(lowest, fit.overall().orElse(1));
      boolean vitalUnsaid = fit.unsaid().stream().anyMatch(Fit.VITAL::contains);
      // Taking away all that is known on one side only changes no number; the verdict stands unless the
      // species was silent on what it lives or dies by.
      bears.keySet().retainAll(place.keySet());
      place.keySet().retainAll(bears.keySet());
      assertEquals(fit.overall(), Fit.ofRanges(new Tolerances(bears), place).overall());
      Verdict ofKnown = Fit.ofRanges(new Tolerances(bears), place).verdict();
      assertEquals(vitalUnsaid && ofKnown != Verdict.DOES_NOT_FIT ? Verdict.NOT_KNOWN : ofKnown, fit.verdict());
    }
  }
}
