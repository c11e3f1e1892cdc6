package guildwood.drawing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.drawing.SvgBoxes;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every bed of the demonstration with a composed guild: arranged without crowding, drawn with labels apart and nothing cut off. */
class DemoDrawingsHttpTest {
  @Test
  void everyBedIsArrangedAndDrawn() {
    try (App app = App.start(Settings.demoOnFreePort())) {
      HttpVisitor visitor = new HttpVisitor(app);
      String site = visitor.get("/sites").first("href=\"(/sites/\\d+)\"").orElseThrow();
      List<String> beds = Pattern.compile("href=\"(/beds/\\d+)\"").matcher(visitor.get(site).html()).results().map(r -> r.group(1)).distinct().toList();
      assertEquals(4, beds.size());
      for (String bed : beds) {
        plan(visitor, bed);
        Page page = visitor.get(bed + "/drawing");
        assertFalse(page.says("too close for") || page.says("outside the bed, by") || page.says("stands on a path"), page.text());
        for (String units : List.of("metric", "us")) {
          visitor.post("/units", "units", units, "back", "/");
          for (String year : List.of("year=0", "year=3", "year=99", "year=99&paper=large")) {
            SvgBoxes drawing = SvgBoxes.of(visitor.get(bed + "/drawing.svg?" + year).html());
            assertTrue(drawing.spots().size() > 3, bed);
            assertEquals(List.of(), drawing.overlapping(), bed + " " + year);
            assertEquals(List.of(), drawing.cutOff(), bed + " " + year);
          }
        }
      }
    }
  }

  /** Takes the first proposal where nothing is saved yet. */
  private static void plan(HttpVisitor visitor, String bed) {
    if (!visitor.get(bed + "/drawing").says("There is nothing to draw yet")) {
      return;
    }
    String run = visitor.post(bed + "/guild/compose").location();
    long end = System.nanoTime() + 60_000_000_000L;
    while (visitor.get(run).html().contains("id=\"progress\"") && System.nanoTime() < end) {
      java.util.concurrent.locks.LockSupport.parkNanos(100_000_000L);
    }
    assertEquals(303, visitor.post(run + "/1").status());
  }
}
