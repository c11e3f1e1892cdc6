package guildwood.siteplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.siteplan.Labels.Box;
import guildwood.siteplan.Labels.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelsTest {
  /** Two hundred names of all lengths on one drawing, wherever their shapes lie: none overlaps, none leaves the drawing. */
  @Test
  void noLabelOverlapsAnotherOrLeavesTheDrawing() {
    Random random = new Random(7);
    int placedInAll = 0;
    for (int drawing = 0; drawing < 50; drawing++) {
      Labels labels = new Labels(720, 400, 20);
      Box frame = new Box(0, 0, 720, 400);
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        double left = random.nextDouble() * 800 - 40;
        double top = random.nextDouble() * 480 - 40;
        Box shape = new Box(left, top, left + random.nextDouble() * 200, top + random.nextDouble() * 100);
        Optional<Label> placed = labels.placeBy(shape, left + 10, top + 10, List.of("W".repeat(1 + random.nextInt(26)), Integer.toString(i)));
        placed.ifPresent(label -> {
          assertTrue(frame.holds(label.box()), label::toString);
          boxes.forEach(other -> assertFalse(other.meets(label.box()), label::toString));
          boxes.add(label.box());
        });
      }
      placedInAll += boxes.size();
    }
    assertTrue(placedInAll > 50 * 20, placedInAll + " labels found a place");
  }

  @Test
  void aNameStandsInItsShapeWhereThatIsLargeEnoughAndBesideASmallOne() {
    Labels labels = new Labels(720, 400, 20);
    Label inside = labels.placeBy(new Box(100, 100, 400, 300), 250, 200, List.of("Pond")).orElseThrow();
    assertEquals(250, inside.x());
    Label beside = labels.placeBy(new Box(500, 100, 510, 110), 505, 105, List.of("Small bed")).orElseThrow();
    assertTrue(beside.box().bottom() <= 100 || beside.box().top() >= 110, beside::toString);
  }

  @Test
  void aNumberStandsWhereANameDoesNotFit() {
    Labels labels = new Labels(100, 30, 20);
    assertEquals("7", labels.placeBy(new Box(0, 0, 10, 10), 5, 5, List.of("A name far longer than the drawing", "7")).orElseThrow().words());
    assertEquals(Optional.empty(), new Labels(5, 5, 20).place("no room", 2, 2));
  }
}
