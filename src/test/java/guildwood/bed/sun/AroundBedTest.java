package guildwood.bed.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.bed.Bed;
import guildwood.bed.sun.Nearby.Height;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class AroundBedTest {
  private static final Bed HERE = bed(1, Optional.of(new GroundPoint(10, 0)));
  private static final Bed THERE = bed(2, Optional.of(new GroundPoint(0, 30)));
  private static final Bed SOMEWHERE = bed(3, Optional.empty());
  private static final List<Bed> ALL = List.of(HERE, THERE, SOMEWHERE);

  @Test
  void whatWasMeasuredFromTheBedStandsWhereItWasMeasured() {
    for (Bed bed : ALL) {
      AroundBed around = AroundBed.of(bed, ALL, List.of(tree(1, OptionalLong.of(bed.id()), "oak")));
      assertEquals(new GroundPoint(3, 4), around.placed().get(0).at());
    }
  }

  @Test
  void whatWasMeasuredElsewhereIsMovedOverByWhereBothBedsLie() {
    AroundBed around = AroundBed.of(HERE, ALL, List.of(tree(1, OptionalLong.of(2), "from there"), tree(2, OptionalLong.empty(), "from the site")));
    assertEquals(new GroundPoint(-7, 34), around.placed().get(0).at());
    assertEquals(new GroundPoint(-7, 4), around.placed().get(1).at());
    assertEquals(List.of(), around.unplaced());
  }

  @Test
  void whatCannotBePlacedIsLeftOutByName() {
    AroundBed fromLost = AroundBed.of(HERE, ALL, List.of(tree(1, OptionalLong.of(3), "lost")));
    assertEquals(List.of("lost"), fromLost.unplaced().stream().map(Nearby::name).toList());
    AroundBed atLost = AroundBed.of(SOMEWHERE, ALL, List.of(tree(1, OptionalLong.of(1), "a"), tree(2, OptionalLong.empty(), "b")));
    assertEquals(List.of("a", "b"), atLost.unplaced().stream().map(Nearby::name).toList());
    assertEquals(List.of(), atLost.placed());
  }

  @Test
  void noTwoLabelsAreAlikeAndNoneIsTheHorizons() {
    OptionalLong here = OptionalLong.of(1);
    AroundBed around = AroundBed.of(HERE, ALL, List.of(tree(1, here, "oak"), tree(2, here, "oak"), tree(3, here, "oak (2)"), tree(4, here, "horizon")));
    assertEquals(List.of("oak", "oak (2)", "oak (2) (2)", "horizon (2)"), around.obstacles().stream().map(Obstacle::label).toList());
  }

  private static Bed bed(long id, Optional<GroundPoint> middle) {
    return new Bed(id, 1, "bed " + id, 20, Optional.empty(), middle, Map.of(), List.of(), "");
  }

  private static Nearby tree(long id, OptionalLong from, String name) {
    return new Nearby(id, 1, from, name, new GroundPoint(3, 4), Height.told(8), new Crown(2, 3, 0.1, 0.6, false));
  }
}
