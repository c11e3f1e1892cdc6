package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every scene; scenes come from fixed seeds. */
class SunHoursProperties {
  private static final double SAME = 1e-9;
  private static final Coordinates SOUTH = new Coordinates(-44.9, -89.6);
  private static final SunPath PATH = SunPath.of(Scenes.WISCONSIN, 2026, 30);
  private static final SunPath SOUTH_PATH = SunPath.of(SOUTH, 2026, 30);

  static IntStream seeds() {
    return IntStream.range(1, 16);
  }

  @ParameterizedTest
  @CsvSource({"44.9, -89.6, 10", "0, 0, 60", "-36.8, 174.8, 7.3", "66.6, 25, 15", "78.2, 15.6, 30", "-77.8, 166.7, 25", "90, 0, 20", "-90, 0, 60"})
  void openGroundGetsTheDaysLength(double latitude, double longitude, double stepMinutes) {
    Coordinates place = new Coordinates(latitude, longitude);
    Scene scene = Scenes.open(place);
    SunHours hours = SunHours.of(scene, scene.sunPath(stepMinutes), List.of(new GroundPoint(3, 4)));
    Sun sun = new Sun(place, 2026);
    double[] byMonth = new double[12];
    double season = 0;
    for (LocalDate date = LocalDate.of(2026, 1, 1); date.getYear() == 2026; date = date.plusDays(1)) {
      double length = sun.day(date).lengthHours();
      byMonth[date.getMonthValue() - 1] += length / date.lengthOfMonth();
      season += Scenes.SUMMER.contains(date) ? length / 183 : 0;
    }
    assertEquals(season, hours.seasonMeanHours(0), SAME);
    for (int month = 0; month < 12; month++) {
      assertEquals(byMonth[month], hours.monthlyMeanHours(0).get(month), SAME);
    }
    assertTrue(hours.lostHours(0).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"44.9, -89.6", "-36.8, 174.8", "66.6, 25", "78.2, 15.6", "90, 0"})
  void theStepsOfADayAddUpToItsLength(double latitude, double longitude) {
    for (SunPath.Day day : SunPath.of(new Coordinates(latitude, longitude), 2026, 13).days()) {
      assertEquals(day.lengthHours(), day.steps().stream().mapToDouble(SunPath.Step::hours).sum(), 1e-5, day.date()::toString);
      assertTrue(day.steps().stream().allMatch(step -> step.hours() > 0 && step.hours() <= 13 / 60.0 + SAME), day.date()::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void shadowsAgreeWithARayFollowedStepByStep(int seed) {
    Random random = new Random(seed);
    int shaded = 0;
    for (int i = 0; i < 80; i++) {
      Obstacle obstacle = Scenes.obstacles(random).get(0);
      SunPath.Step step = SunPath.Step.of(new SunPosition(360 * random.nextDouble(), 4 + 70 * random.nextDouble()), 1, true);
      GroundPoint point = besideTheShadow(obstacle, step, random);
      double readAt = random.nextInt(3) == 0 ? 3 * random.nextDouble() : 0;
      boolean falls = ShadowTest.falls(obstacle, step, point, readAt);
      if (RayMarch.meets(obstacle, step, point, readAt, 0)) {
        assertTrue(falls, () -> point + " towards " + step.sun() + " from " + obstacle);
      }
      if (falls) {
        shaded++;
        assertTrue(RayMarch.meets(obstacle, step, point, readAt, 0.03), () -> point + " towards " + step.sun() + " past " + obstacle);
      }
    }
    assertTrue(shaded >= 10 && shaded <= 70, "cases of both kinds, not " + shaded);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void raisingAnObstacleNeverAddsSun(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 12);
    SunHours before = reckon(obstacles, points);
    int which = random.nextInt(obstacles.size());
    List<Obstacle> taller = new ArrayList<>(obstacles);
    taller.set(which, Scenes.raised(obstacles.get(which), 0.1 + 5 * random.nextDouble()));
    assertNoMoreSun(before, reckon(taller, points));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void raisingTheSkylineNeverAddsSun(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 6);
    List<Double> low = random.doubles(8, 0, 25).boxed().toList();
    List<Double> high = new ArrayList<>(low);
    high.replaceAll(each -> each + 10 * random.nextDouble());
    Season summer = Scenes.SUMMER;
    Scene lower = new Scene(Scenes.WISCONSIN, 2026, summer, summer, 0, Horizon.ofCompass(low), obstacles);
    Scene higher = new Scene(Scenes.WISCONSIN, 2026, summer, summer, 0, Horizon.ofCompass(high), obstacles);
    assertNoMoreSun(reckon(obstacles, points), SunHours.of(lower, PATH, points));
    assertNoMoreSun(SunHours.of(lower, PATH, points), SunHours.of(higher, PATH, points));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void lossesAddUpToWhatIsMissing(int seed) {
    Random random = new Random(seed);
    Horizon horizon = Horizon.ofCompass(random.doubles(8, 0, 20).boxed().toList());
    Scene scene = new Scene(Scenes.WISCONSIN, 2026, Season.of(10, 5, 2, 20), Scenes.SUMMER, 0, horizon, Scenes.obstacles(random));
    SunHours hours = SunHours.of(scene, PATH, Scenes.points(random, 10));
    for (int i = 0; i < 10; i++) {
      double lost = hours.lostHours(i).values().stream().mapToDouble(d -> d).sum();
      assertEquals(hours.openMeanHours() - hours.seasonMeanHours(i), lost, SAME);
      assertTrue(hours.lostHours(i).values().stream().allMatch(each -> each >= 0));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsWonByFellingIsWhatTheSceneWithoutItGets(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 8);
    SunHours all = reckon(obstacles, points);
    for (Obstacle gone : obstacles) {
      SunHours without = reckon(obstacles.stream().filter(each -> each != gone).toList(), points);
      for (int i = 0; i < points.size(); i++) {
        double won = all.wonIfGoneHours(i).get(gone.label());
        assertEquals(without.seasonMeanHours(i) - all.seasonMeanHours(i), won, SAME);
        assertTrue(all.lostHours(i).get(gone.label()) >= won - SAME, "its share is at least what it takes alone");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aPointGetsTheSameAloneAndAmongOthers(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> many = new ArrayList<>(new BedGrid(new GroundPoint(-6, -4), 0.4, 30, 20).middles());
    many.addAll(Scenes.points(random, 5));
    SunHours together = reckon(obstacles, many);
    for (int i : new int[] {0, 17, 299, 599, 600, 604}) {
      SunHours alone = reckon(obstacles, List.of(many.get(i)));
      assertEquals(alone.seasonMeanHours(0), together.seasonMeanHours(i), SAME);
      alone.lostHours(0).forEach((label, lost) -> assertEquals(lost, together.lostHours(i).get(label), SAME));
    }
  }

  /** North of the equator nothing that stands to the north takes sun while the sun stands south of the east-west line. */
  @ParameterizedTest
  @MethodSource("seeds")
  void nothingOnThePoleSideTakesWinterSun(int seed) {
    Random random = new Random(seed);
    List<Obstacle> north = Scenes.obstacles(random).stream().map(each -> moved(each, 0, 25)).toList();
    List<GroundPoint> points = Scenes.points(random, 6);
    PointField field = new PointField(points);
    for (Obstacle obstacle : north) {
      Shadow shadow = Shadow.of(obstacle, 0);
      PATH.days().stream().flatMap(day -> day.steps().stream()).filter(step -> step.north() <= 0).forEach(
          step -> assertEquals(0, shadow.mark(step, field, new int[points.size()], 0), () -> step + " " + obstacle));
    }
    Season winter = Season.of(10, 1, 3, 10);
    assertNothingLost(SunHours.of(Scenes.with(Scenes.WISCONSIN, winter, north), PATH, points));
    List<Obstacle> mirrored = north.stream().map(each -> Scenes.mirrored(each, 1, -1)).toList();
    assertNothingLost(SunHours.of(Scenes.with(SOUTH, Season.of(4, 1, 9, 10), mirrored), SOUTH_PATH, points));
  }

  /** In summer the sun rises and sets beyond the east-west line, so there the pole side does matter. */
  @Test
  void aHouseOnThePoleSideTakesSummerMorningsAndEvenings() {
    Building north = ShadowTest.building(8, -40, 2, 40, 2, 40, 6, -40, 6);
    Scene june = Scenes.with(Scenes.WISCONSIN, Season.of(6, 1, 6, 30), List.of(north));
    double lost = SunHours.of(june, PATH, List.of(new GroundPoint(0, 0))).lostHours(0).get("building");
    assertTrue(lost > 4 && lost < 8, "lost " + lost);
  }

  /** The sun's declination moves a little within a day and the year is not quite even, hence the hundredths. */
  @ParameterizedTest
  @MethodSource("seeds")
  void swappingEastAndWestSwapsMorningAndAfternoon(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 6);
    SunHours plain = reckon(obstacles, points);
    SunHours swapped = reckon(
        obstacles.stream().map(each -> Scenes.mirrored(each, -1, 1)).toList(),
        points.stream().map(point -> new GroundPoint(-point.xM(), point.yM())).toList());
    for (int i = 0; i < points.size(); i++) {
      assertEquals(plain.morningMeanHours(i), swapped.afternoonMeanHours(i), 0.03);
      assertEquals(plain.afternoonMeanHours(i), swapped.morningMeanHours(i), 0.03);
      assertEquals(plain.seasonMeanHours(i), swapped.seasonMeanHours(i), 0.03);
    }
  }

  @Test
  void aWallInTheEastTakesMorningsOnly() {
    Building east = ShadowTest.building(6, 3, -30, 4, -30, 4, 30, 3, 30);
    SunHours hours = reckon(List.of(east), List.of(new GroundPoint(0, 0)));
    assertEquals(hours.openMeanHours() / 2, hours.afternoonMeanHours(0), 0.01);
    assertTrue(hours.morningMeanHours(0) < hours.openMeanHours() / 2 - 3);
  }

  /** The southern year is the northern one half a year later, but for the shape of the Earth's orbit. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theSouthIsTheNorthHalfAYearLater(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 6);
    Scene north = Scenes.with(Scenes.WISCONSIN, Season.of(5, 1, 8, 15), obstacles);
    Scene south = Scenes.with(SOUTH, Season.of(11, 1, 2, 11),
        obstacles.stream().map(each -> Scenes.mirrored(each, 1, -1)).toList());
    SunHours up = SunHours.of(north, PATH, points);
    SunHours down = SunHours.of(south, SOUTH_PATH,
        points.stream().map(point -> new GroundPoint(point.xM(), -point.yM())).toList());
    for (int i = 0; i < points.size(); i++) {
      assertEquals(up.seasonMeanHours(i), down.seasonMeanHours(i), 0.15);
    }
  }

  /** Ground and obstacles moved together keep their hours. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whereTheOriginLiesDoesNotMatter(int seed) {
    Random random = new Random(seed);
    List<Obstacle> obstacles = Scenes.obstacles(random);
    List<GroundPoint> points = Scenes.points(random, 6);
    SunHours here = reckon(obstacles, points);
    SunHours there = reckon(obstacles.stream().map(each -> moved(each, 512, -256)).toList(),
        points.stream().map(point -> new GroundPoint(point.xM() + 512, point.yM() - 256)).toList());
    for (int i = 0; i < points.size(); i++) {
      assertEquals(here.seasonMeanHours(i), there.seasonMeanHours(i), 1e-6);
    }
  }

  @Test
  void aTreeThatShedsItsLeavesLetsMoreThroughInWinter() {
    Tree overhead = ShadowTest.tree(30, 0, 20);
    Scene scene = Scenes.with(Scenes.WISCONSIN, Season.of(5, 1, 10, 15), List.of(overhead));
    SunHours hours = SunHours.of(scene, PATH, List.of(new GroundPoint(0, 0)));
    // The foot of a crown clothed to the ground lies within it, so what is left is the share let through.
    assertEquals(0.1 * hours.openMeanHours(), hours.seasonMeanHours(0), SAME);
    assertEquals(0.1 * hours.openMonthlyMeanHours().get(6), hours.monthlyMeanHours(0).get(6), SAME);
    assertEquals(0.6 * hours.openMonthlyMeanHours().get(0), hours.monthlyMeanHours(0).get(0), SAME);
    double october = PATH.days().stream().filter(day -> day.date().getMonthValue() == 10)
        .mapToDouble(day -> (day.date().getDayOfMonth() <= 15 ? 0.1 : 0.6) * day.lengthHours()).average().orElseThrow();
    assertEquals(october, hours.monthlyMeanHours(0).get(9), SAME);
  }

  @Test
  void crownsBehindEachOtherMultiplyAndShareTheLoss() {
    Tree light = new Tree("light", new GroundPoint(0, 0), 30, 0, 20, 0.5, 0.5, true);
    Tree dense = new Tree("dense", new GroundPoint(0, 0), 30, 0, 20, 0.2, 0.2, true);
    SunHours hours = reckon(List.of(light, dense), List.of(new GroundPoint(0, 0)));
    double day = hours.openMeanHours();
    assertEquals(0.1 * day, hours.seasonMeanHours(0), SAME);
    // 0.9 is lost, shared as 0.5 to 0.8; without the light one 0.2 would be left, without the dense one 0.5.
    assertEquals(0.9 * 0.5 / 1.3 * day, hours.lostHours(0).get("light"), SAME);
    assertEquals(0.9 * 0.8 / 1.3 * day, hours.lostHours(0).get("dense"), SAME);
    assertEquals(0.1 * day, hours.wonIfGoneHours(0).get("light"), SAME);
    assertEquals(0.4 * day, hours.wonIfGoneHours(0).get("dense"), SAME);
  }

  /** Steps of ten minutes are within a minute or two of steps of two minutes in the mean of a season. */
  @Test
  void tenMinutesAreFineEnough() {
    Random random = new Random(3);
    Scene scene = Scenes.with(Scenes.WISCONSIN, Scenes.SUMMER, Scenes.obstacles(random));
    List<GroundPoint> points = Scenes.points(random, 40);
    SunHours coarse = SunHours.of(scene, scene.sunPath(10), points);
    SunHours fine = SunHours.of(scene, scene.sunPath(2), points);
    for (int i = 0; i < points.size(); i++) {
      assertEquals(fine.seasonMeanHours(i), coarse.seasonMeanHours(i), 2 / 60.0);
    }
  }

  /** A point that about as often lies in the shadow as beside it. */
  private static GroundPoint besideTheShadow(Obstacle obstacle, SunPath.Step step, Random random) {
    boolean tree = obstacle instanceof Tree;
    GroundPoint at = tree ? ((Tree) obstacle).foot() : ((Building) obstacle).footprint().corners().get(0);
    double height = tree ? ((Tree) obstacle).heightM() : ((Building) obstacle).heightM();
    double back = height / step.rise() * random.nextDouble();
    GroundPoint aside = Scenes.near(random, 4);
    return new GroundPoint(at.xM() + aside.xM() - back * step.east(), at.yM() + aside.yM() - back * step.north());
  }

  private static SunHours reckon(List<Obstacle> obstacles, List<GroundPoint> points) {
    return SunHours.of(Scenes.with(Scenes.WISCONSIN, Scenes.SUMMER, obstacles), PATH, points);
  }

  private static Obstacle moved(Obstacle obstacle, double eastM, double northM) {
    if (obstacle instanceof Tree t) {
      GroundPoint foot = new GroundPoint(t.foot().xM() + eastM, t.foot().yM() + northM);
      return new Tree(t.label(), foot, t.heightM(), t.crownBaseM(), t.crownRadiusM(), t.lightInLeaf(), t.lightBare(), t.evergreen());
    }
    Building b = (Building) obstacle;
    return new Building(b.label(), Footprint.through("", b.footprint().corners().stream()
        .map(corner -> new GroundPoint(corner.xM() + eastM, corner.yM() + northM)).collect(Collectors.toList())).orThrow(), b.heightM());
  }

  private static void assertNoMoreSun(SunHours before, SunHours after) {
    for (int i = 0; i < before.points().size(); i++) {
      assertTrue(after.seasonMeanHours(i) <= before.seasonMeanHours(i) + SAME);
      for (int month = 0; month < 12; month++) {
        assertTrue(after.monthlyMeanHours(i).get(month) <= before.monthlyMeanHours(i).get(month) + SAME);
      }
    }
  }

  private static void assertNothingLost(SunHours hours) {
    for (int i = 0; i < hours.points().size(); i++) {
      assertTrue(hours.lostHours(i).values().stream().allMatch(lost -> lost == 0), () -> hours.lostHours(0).toString());
    }
  }
}
