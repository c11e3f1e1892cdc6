package guildwood.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.species.Trait;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FitTest {
  private static final Species CURRANT = Stated.species("Ribes exemplum")
      .with(Trait.LIGHT, "3..16").with(Trait.LIGHT_PREFERRED, "6..16")
      .with(Trait.MOISTURE, "dry..wet").with(Trait.PH, "5.5..7.0").with(Trait.TEXTURE, "medium; fine").make();

  @Test
  void theLowestAxisRulesAndIsNamed() {
    Fit fit = Fit.ofRanges(Tolerances.of(CURRANT), Map.of(Axis.LIGHT, Range.of(4.5), Axis.MOISTURE, Range.of(3)));
    assertEquals(0.5, fit.overall().orElseThrow(), 1e-12);
    assertEquals(Axis.LIGHT, fit.limiting().orElseThrow().axis());
    assertEquals(Verdict.BORDERLINE, fit.verdict());
  }

  @Test
  void ofEqualAxesTheFirstOneIsNamed() {
    Fit fit = Fit.ofRanges(Tolerances.of(CURRANT), Map.of(Axis.MOISTURE, Range.of(5), Axis.REACTION, Range.of(9)));
    assertEquals(Axis.MOISTURE, fit.limiting().orElseThrow().axis());
    assertEquals(List.of(Axis.MOISTURE, Axis.REACTION), fit.failing().stream().map(AxisFit::axis).toList());
    assertEquals(-1, fit.limiting().orElseThrow().shortfall());
  }

  @Test
  void theUnknownIsListedOnItsSideAndNeverCounts() {
    Fit fit = Fit.ofRanges(Tolerances.of(CURRANT), Map.of(Axis.LIGHT, Range.of(8), Axis.FERTILITY, Range.of(2)));
    assertEquals(1, fit.overall().orElseThrow());
    assertEquals(List.of(Axis.FERTILITY, Axis.WINTER_COLD, Axis.SEASON), fit.speciesSilent());
    assertEquals(List.of(Axis.MOISTURE, Axis.REACTION, Axis.TEXTURE, Axis.WINTER_COLD, Axis.SEASON), fit.placeSilent());
  }

  @Test
  void withoutADecisiveAxisItIsNotKnownUnlessSomethingFails() {
    Fit nothing = Fit.ofRanges(Tolerances.of(CURRANT), Map.of());
    assertEquals(Verdict.NOT_KNOWN, nothing.verdict());
    assertTrue(nothing.overall().isEmpty());
    assertEquals(Verdict.NOT_KNOWN, Fit.ofRanges(Tolerances.of(CURRANT), Map.of(Axis.TEXTURE, Range.of(2))).verdict());
    assertEquals(Verdict.DOES_NOT_FIT, Fit.ofRanges(Tolerances.of(CURRANT), Map.of(Axis.TEXTURE, Range.of(1))).verdict());
  }

  @Test
  void aMissingPreferenceIsTheToleranceAndAPreferenceAloneIsNotTheLimit() {
    Species onlyPreferred = Stated.species("Rubus exemplum").with(Trait.PH_PREFERRED, "6.0..7.0").make();
    Trapezoid expected = new Trapezoid(new Range(5, 8), new Range(6, 7));
    assertEquals(expected, Tolerances.of(onlyPreferred).on(Axis.REACTION).orElseThrow());
    assertEquals(new Trapezoid(new Range(5.5, 7), new Range(5.5, 7)), Tolerances.of(CURRANT).on(Axis.REACTION).orElseThrow());
  }

  @Test
  void aSpanOfColdOrSeasonIsReadAtItsCautiousEnd() {
    Species statedAsSpan = Stated.species("Prunus exemplum")
        .with(Trait.COLDEST_WINTER, "-34..-29 C").with(Trait.FROST_FREE_DAYS, "120..140").make();
    Tolerances bears = Tolerances.of(statedAsSpan);
    assertEquals(-29, bears.on(Axis.WINTER_COLD).orElseThrow().tolerated().min());
    assertEquals(140, bears.on(Axis.SEASON).orElseThrow().tolerated().min());
    assertEquals(Verdict.DOES_NOT_FIT, Fit.ofRanges(bears, Map.of(Axis.SEASON, Range.of(130))).verdict());
  }

  @Test
  void aClassStandsForTheStretchAroundIt() {
    Species likesRichGround = Stated.species("Pyrus exemplum")
        .with(Trait.FERTILITY, "medium..rich").with(Trait.FERTILITY_PREFERRED, "rich").make();
    Tolerances bears = Tolerances.of(likesRichGround);
    assertEquals(1, fertilityFit(bears, new Range(3, 3)), 1e-12);
    // Medium ground is 1.5 to 2.5, where the response climbs from 0 to 1: half on average.
    assertEquals(0.5, fertilityFit(bears, new Range(2, 2)), 1e-12);
    assertEquals(0.75, fertilityFit(bears, new Range(2, 3)), 1e-12);
    assertEquals(0, fertilityFit(bears, new Range(1, 1)), 1e-12);
  }

  @Test
  void nobodyFitsWhoseThirstOrHardinessIsNotKnown() {
    Species onlyLight = Stated.species("Malus exemplum").with(Trait.LIGHT, "full sun").make();
    Tolerances bears = Tolerances.of(onlyLight);
    assertEquals(Verdict.FITS, Fit.ofRanges(bears, Map.of(Axis.LIGHT, Range.of(8))).verdict());
    Fit inWater = Fit.ofRanges(bears, Map.of(Axis.LIGHT, Range.of(8), Axis.MOISTURE, Range.of(5)));
    assertEquals(Verdict.NOT_KNOWN, inWater.verdict());
    assertEquals(List.of(Axis.MOISTURE), inWater.unsaid());
    Fit inShade = Fit.ofRanges(bears, Map.of(Axis.LIGHT, Range.of(1), Axis.MOISTURE, Range.of(5)));
    assertEquals(Verdict.DOES_NOT_FIT, inShade.verdict());
  }

  private static double fertilityFit(Tolerances bears, Range bed) {
    return Fit.ofRanges(bears, Map.of(Axis.FERTILITY, bed)).on(Axis.FERTILITY).orElseThrow().value();
  }
}
