package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.drawing.SvgBoxes.Text;
import guildwood.species.Layer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings of invented guilds, read back from their SVG: labels apart, nothing cut off, everything to scale. */
class BedDrawingTest {
  private static Grown grown(long seed, double share, int year) {
    RandomGuilds.Case guild = RandomGuilds.filled(seed, share);
    return Grown.of(new Arranger(guild.ground(), ArrangingRules.USUAL).arrange(guild.kinds(), List.of(), 1), year, YearsToMaturity.USUAL);
  }

  @ParameterizedTest
  @CsvSource({"1, 0.2, 0", "2, 0.3, 5", "3, 0.4, 40", "4, 0.3, 10", "5, 0.5, 40", "6, 0.7, 3", "7, 0.7, 40", "8, 0.1, 1"})
  void labelsKeepApartAndNothingIsCutOff(long seed, double share, int year) {
    for (boolean feet : new boolean[] {false, true}) {
      SvgBoxes drawing = SvgBoxes.of(BedDrawing.svg(grown(seed, share, year), new PlainWords(feet), "bed"));
      assertEquals(List.of(), drawing.overlapping());
      assertEquals(List.of(), drawing.cutOff());
    }
  }

  /** Every group of plants has its label, by name or by number, and every number stands in the key. */
  @Test
  void everyPlantIsNamed() {
    Grown grown = grown(2, 0.15, 40);
    SvgBoxes drawing = SvgBoxes.of(BedDrawing.svg(grown, new PlainWords(false), "bed"));
    assertEquals(grown.arrangement().spots().size(), drawing.spots().size());
    for (int i = 1; i <= grown.arrangement().kinds().size(); i++) {
      String number = i + " ";
      assertTrue(drawing.texts("key").stream().map(Text::words).anyMatch(w -> w.startsWith(number)), number + " in the key");
      assertTrue(drawing.texts("label").stream().map(Text::words).anyMatch(w -> (w + " ").startsWith(number)), number + " on the drawing");
    }
  }

  @Test
  void distancesOnTheSheetAreThoseOnTheGroundAtItsScale() {
    BedGround ground = RandomGuilds.rectangle(6, 4);
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 2, 2);
    Arrangement arrangement = new Arrangement(ground, List.of(shrub), List.of(
        new Spot("shrub", 1, new guildwood.site.sun.GroundPoint(-2, 1), false), new Spot("shrub", 2, new guildwood.site.sun.GroundPoint(1, -1), false)));
    Sheet sheet = Sheet.of(arrangement);
    assertEquals(50, sheet.scale());
    SvgBoxes drawing = SvgBoxes.of(BedDrawing.svg(Grown.of(arrangement, 99, YearsToMaturity.USUAL), new PlainWords(false), "bed"));
    assertEquals(drawing.widthMm(), drawing.viewWidth(), 1e-9, "a unit of the drawing is a millimetre");
    double[] one = drawing.spots().get("shrub.1");
    double[] other = drawing.spots().get("shrub.2");
    assertEquals(3_000.0 / 50, other[0] - one[0], 0.011);
    assertEquals(2_000.0 / 50, other[1] - one[1], 0.011, "south is down");
    assertEquals(1_000.0 / 50, one[2], 0.006, "the radius of a crown of 2 m");
    assertEquals(drawing.scaleBarMetres() * 1000 / 50, drawing.scaleBarMm(), 0.002);
  }

  @ParameterizedTest
  @CsvSource({"1.5, 1, 20, 50", "6, 4, 50, 50", "12, 8, 100, 50", "16, 14, 100, 100", "30, 17, 200, 100", "80, 60, 500, 500"})
  void theScaleIsTheLargestWhoseSheetFitsItsPaper(double eastM, double northM, int small, int large) {
    Arrangement arrangement = new Arranger(RandomGuilds.rectangle(eastM, northM), ArrangingRules.USUAL)
        .arrange(List.of(RandomGuilds.kind("herb", Layer.HERB, 3, 0.5)), List.of(), 1);
    for (Sheet sheet : List.of(Sheet.of(arrangement), Sheet.of(arrangement, true))) {
      assertEquals(sheet.paper().isLarge() ? large : small, sheet.scale());
      assertTrue(sheet.widthMm() <= sheet.paper().widthMm() && sheet.heightMm() <= sheet.paper().heightMm(), sheet.toString());
    }
  }

  /** In black and white layers must differ in something else than their tint. */
  @Test
  void layersDifferWithoutColour() {
    List<String> looks = java.util.Arrays.stream(Layer.values())
        .map(l -> LayerStyle.of(l).line() + LayerStyle.of(l).dashes() + LayerStyle.of(l).hatch() + LayerStyle.stem(l)).toList();
    assertEquals(looks.size(), looks.stream().distinct().count());
  }

  @Test
  void namesThatPeopleTypeDoNoHarm() {
    BedGround ground = RandomGuilds.rectangle(4, 3);
    PlantKind odd = RandomGuilds.kind("odd", Layer.SHRUB, 1, 1);
    PlantKind named = new PlantKind("odd", "<b>\"Rose\" & co</b>", 1, 0, Layer.SHRUB, 1, 2, false, GrowthRate.FAST, false, false, false, false,
        odd.kinship(), odd.light(), 40);
    String svg = BedDrawing.svg(Grown.of(new Arranger(ground, ArrangingRules.USUAL).arrange(List.of(named), List.of(), 1), 3, YearsToMaturity.USUAL),
        new PlainWords(false), "bed");
    assertTrue(SvgBoxes.of(svg).texts("label").stream().anyMatch(t -> t.words().contains("<b>\"Rose\" & co</b>")));
  }
}
