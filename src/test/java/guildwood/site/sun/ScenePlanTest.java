package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ScenePlanTest {
  private static final Footprint BED = new Rectangle(6, 4, 90).around(new GroundPoint(0, 0));
  private static final Obstacle OAK = new Tree("Oak <1>", new GroundPoint(10, 20), 12, 2, 5, 0.1, 0.6, false);
  private static final Obstacle BARN = new Building("Barn", new Rectangle(10, 8, 0).around(new GroundPoint(-20, 0)), 6);
  private static final Obstacle FAR = new Tree("Far", new GroundPoint(0, 300), 12, 2, 5, 0.1, 0.6, false);

  private static final DrawingWords WORDS = new DrawingWords() {
    @Override
    public String title() {
      return "Around \"the bed\"";
    }

    @Override
    public String description() {
      return "what stands there";
    }

    @Override
    public String north() {
      return "N";
    }

    @Override
    public String metres(double lengthM) {
      return lengthM / unitM() + " ft";
    }

    @Override
    public double unitM() {
      return 0.3048;
    }
  };

  @Test
  void showsWhatIsNearToScaleAndLeavesTheFarOff() {
    assertEquals(List.of(OAK, BARN), ScenePlan.shown(BED, List.of(OAK, BARN, FAR)));
    String svg = ScenePlan.draw(BED, "The bed", List.of(OAK, BARN, FAR), WORDS, "plan");
    // From the barn's west wall at -24 to the oak's crown at 15: 39 m over 600 units; the crown of 5 m stands north-east.
    double unit = 600 / 39.0;
    assertTrue(svg.contains(String.format(Locale.ROOT, "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"", 60 + 34 * unit, 60 + 5 * unit, 5 * unit)), svg);
    assertTrue(svg.contains("Oak &lt;1&gt;") && svg.contains(">Barn<") && svg.contains(">The bed<") && !svg.contains("Far"), svg);
    assertTrue(svg.contains("<title id=\"plan-title\">Around &quot;the bed&quot;</title>"), svg);
  }

  @Test
  void theScaleIsRoundInTheReadersUnit() {
    // A quarter of 39 m is 32 ft, so the scale is 20 ft long.
    String svg = ScenePlan.draw(BED, "The bed", List.of(OAK, BARN), WORDS, "plan");
    assertTrue(svg.contains(">20.0 ft<"), svg);
    assertFalse(svg.contains("style") || svg.contains("<script"), svg);
  }
}
