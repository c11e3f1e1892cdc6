package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seasons, light classes, paced heights, grids, and what a scene will not take. */
class SceneTest {
  @Test
  void seasonsIncludeBothEndsAndMayRunOverTheNewYear() {
    Season summer = Season.of(4, 1, 9, 30);
    assertTrue(summer.contains(LocalDate.of(2026, 4, 1)));
    assertTrue(summer.contains(LocalDate.of(2026, 9, 30)));
    assertFalse(summer.contains(LocalDate.of(2026, 10, 1)));
    assertEquals(183, summer.daysIn(2026));
    Season southern = Season.of(10, 1, 3, 31);
    assertTrue(southern.contains(LocalDate.of(2026, 1, 1)));
    assertTrue(southern.contains(LocalDate.of(2026, 10, 1)));
    assertFalse(southern.contains(LocalDate.of(2026, 4, 1)));
    assertEquals(365 - 183, southern.daysIn(2026));
    assertEquals(1, Season.of(6, 21, 6, 21).daysIn(2026));
    assertEquals(366, Season.of(1, 1, 12, 31).daysIn(2028));
    assertEquals(0, Season.of(2, 29, 2, 29).daysIn(2026));
  }

  /** Sources name different limits, but all call 6 h full sun, none 2.5 h, and 5 h some kind of part sun or shade. */
  @ParameterizedTest
  @CsvSource({"6.0, full sun", "5.9999999999, full sun", "5.99, part shade", "5, part shade", "3, part shade", "2.5, full shade", "0, full shade", "16, full sun", "24, full sun"})
  void lightClasses(double hours, String word) {
    assertEquals(word, LightClass.of(hours).word());
  }

  /** height = distance x tan(angle) + eye height, with tan 45 = 1 and tan 30 = 0.57735. */
  @ParameterizedTest
  @CsvSource({"10, 45, 1.6, 11.6", "20, 30, 1.5, 13.047", "10, 0, 1.7, 1.7", "10, -5, 1.6, 0.725"})
  void heightByPacing(double distance, double angle, double eye, double height) {
    assertEquals(height, Pacing.heightM(distance, angle, eye), 5e-4);
  }

  @Test
  void aPacedAngleUpTheSkyIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Pacing.heightM(10, 90, 1.6));
    assertThrows(IllegalArgumentException.class, () -> Pacing.heightM(0, 45, 1.6));
  }

  @Test
  void gridsCoverAnOutline() {
    BedGrid grid = BedGrid.over(ShadowTest.footprint(1, 2, 4.1, 2, 4.1, 3, 1, 3), 0.5);
    assertEquals(new BedGrid(new GroundPoint(1, 2), 0.5, 7, 2), grid);
    assertEquals(new GroundPoint(1.25, 2.25), grid.middles().get(0));
    assertEquals(new GroundPoint(4.25, 2.75), grid.middles().get(13));
    assertEquals(3, BedGrid.over(ShadowTest.footprint(0, 0, 0.3, 0, 0.3, 0.1, 0, 0.1), 0.1).columns(), "0.1 x 3 is a hair over 0.3");
    assertThrows(IllegalArgumentException.class, () -> new BedGrid(new GroundPoint(0, 0), 0.5, 1000, 1000));
    assertThrows(IllegalArgumentException.class, () -> new BedGrid(new GroundPoint(0, 0), 0, 10, 10));
  }

  @Test
  void whatABedOffersIsARange() {
    Scene scene = Scenes.with(Scenes.WISCONSIN, Scenes.SUMMER, List.of(ShadowTest.building(6, -5, -8, 5, -8, 5, -4, -5, -4)));
    SunHours hours = SunHours.of(scene, scene.sunPath(30), new BedGrid(new GroundPoint(-5, -4), 1, 10, 10).middles());
    Range all = hours.seasonRange(1);
    Range most = hours.seasonRange(0.8);
    assertTrue(all.min() < most.min() && most.min() < most.max() && most.max() <= all.max());
    assertTrue(all.contains(hours.seasonMeanHours(0)) && all.contains(hours.seasonMeanHours(99)));
    assertThrows(IllegalArgumentException.class, () -> hours.seasonRange(0));
  }

  @Test
  void scenesCheckThemselves() {
    Tree tree = ShadowTest.tree(5, 2, 1);
    assertThrows(IllegalArgumentException.class, () -> Scenes.with(Scenes.WISCONSIN, Scenes.SUMMER, List.of(tree, tree)));
    assertThrows(IllegalArgumentException.class, () -> Scenes.with(Scenes.WISCONSIN, Season.of(2, 29, 2, 29), List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Coordinates(95, 0));
    assertThrows(IllegalArgumentException.class, () -> new Coordinates(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new GroundPoint(Double.POSITIVE_INFINITY, 0));
    assertThrows(IllegalArgumentException.class, () -> ShadowTest.tree(5, 5, 1));
    assertThrows(IllegalArgumentException.class, () -> ShadowTest.tree(5, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> ShadowTest.post(0));
    assertThrows(IllegalArgumentException.class, () -> SunPath.of(Scenes.WISCONSIN, 2026, 0));
    assertThrows(IllegalArgumentException.class, () -> SunPath.of(Scenes.WISCONSIN, 2500, 10));
    Scene scene = Scenes.open(Scenes.WISCONSIN);
    assertThrows(IllegalArgumentException.class,
        () -> SunHours.of(scene, SunPath.of(Scenes.WISCONSIN, 2027, 60), List.of(new GroundPoint(0, 0))));
  }
}
