package guildwood.bed.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.sun.Building;
import guildwood.site.sun.Coordinates;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.Horizon;
import guildwood.site.sun.LightClass;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Rectangle;
import guildwood.site.sun.Scene;
import guildwood.site.sun.Season;
import guildwood.site.sun.Tree;
import guildwood.species.Axis;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BedSunTest {
  private static final Obstacle WALL = new Building("wall", new Rectangle(40, 1, 90).around(new GroundPoint(0, -4)), 6);
  private static final Obstacle MAPLE = new Tree("maple", new GroundPoint(6, 5), 9, 2, 3, 0.1, 0.6, false);
  private static final SunReadings READINGS = new SunReadings();

  /**
   * Day lengths at latitude 45, CHECKS 1.4 (FAO 56's formula: geometric, no refraction): 21 June 15.42 h, 21 December 8.58 h.
   * By sunrise tables the day is some 12 minutes longer; June's mean lies within minutes of the solstice.
   */
  @Test
  void openGroundHasTheDaysLengthEverywhere() {
    BedSun sun = sun(45, List.of(), new Rectangle(6, 4, 30));
    assertEquals(15.42 + 0.2, sun.months().get(5).mean(), 0.15);
    assertEquals(8.58 + 0.2, sun.months().get(11).mean(), 0.15);
    assertEquals(sun.hours().openMeanHours(), sun.meanHours(), 1e-9);
    assertEquals(0, sun.extremeHours().width(), 1e-9);
    assertEquals(1, sun.classShares().get(LightClass.FULL_SUN), 1e-9);
    assertEquals(Map.of(), sun.lostHours());
  }

  @Test
  void whatIsLostAddsUpAndFellingNeverBringsMoreThanEverything() {
    BedSun sun = sun(44.3, List.of(WALL, MAPLE), new Rectangle(9, 2, 90));
    double lost = sun.lostHours().values().stream().mapToDouble(h -> h).sum();
    assertEquals(sun.hours().openMeanHours() - sun.meanHours(), lost, 1e-6);
    double felled = sun(44.3, List.of(WALL), new Rectangle(9, 2, 90)).meanHours() - sun.meanHours();
    assertTrue(felled > 0.05, felled + " h won");
    assertEquals(felled, sun.wonIfGoneHours().get("maple"), 1e-6);
    assertEquals(1, sun.classShares().values().stream().mapToDouble(s -> s).sum(), 1e-9);
    assertTrue(sun.extremeHours().contains(sun.middleHours()) && sun.extremeHours().contains(sun.meanHours()));
    for (BedSun.Month month : sun.months()) {
      assertTrue(month.extremes().contains(month.mean()) && month.extremes().max() <= month.dayLength() + 1e-9, month::toString);
    }
  }

  @Test
  void onlyCellsOfATurnedBedCount() {
    Rectangle strip = new Rectangle(20, 1, 45);
    BedSun sun = sun(45, List.of(WALL), strip);
    for (GroundPoint point : sun.hours().points()) {
      assertTrue(Math.abs(point.xM() - point.yM()) <= Math.sqrt(0.5) + 1e-9, point::toString);
    }
    double cellM = sun.grid().cellM();
    assertEquals(20 / (cellM * cellM), sun.cells(), 0.1 * sun.cells());
  }

  @Test
  void onlyCellsOfATracedOutlineCountAndOneTooThinForThemTakesItsRectangle() {
    Rectangle ground = new Rectangle(4, 4, 0);
    Footprint ell = outline(-2, -2, 2, -2, 2, 0, 0, 0, 0, 2, -2, 2);
    BedSun sun = READINGS.of(scene(45, List.of(WALL)), ground, ell, 0.5);
    assertEquals(48, sun.cells());
    assertTrue(sun.hours().points().stream().allMatch(p -> p.xM() < 0 || p.yM() < 0));
    assertEquals(64, READINGS.of(scene(45, List.of(WALL)), ground, 0.5).cells());
    Footprint corner = outline(-2, -2, 2, -2, 2, 2, 1.99, -1.99);
    assertEquals(4, READINGS.of(scene(45, List.of(WALL)), ground, corner, 2).cells());
  }

  private static Footprint outline(double... eastNorth) {
    return Footprint.through("", java.util.stream.IntStream.range(0, eastNorth.length / 2)
        .mapToObj(i -> new GroundPoint(eastNorth[2 * i], eastNorth[2 * i + 1])).toList()).orThrow();
  }

  @Test
  void theSameQuestionIsWorkedOutOnce() {
    Scene scene = scene(45, List.of(WALL));
    Rectangle ground = new Rectangle(4, 3, 0);
    BedSun first = READINGS.of(scene, ground, 0.5);
    assertSame(first, READINGS.of(scene(45, List.of(WALL)), new Rectangle(4, 3, 0), 0.5));
    assertFalse(first == READINGS.of(scene(45, List.of(MAPLE)), ground, 0.5));
  }

  @ParameterizedTest
  @CsvSource({"4, 4.5, 0, 0.2", "9, 2, 0, 0.2", "20, 20, 22, 1", "316, 316, 0, 10", "316, 316, 60, 10", "0.32, 0.32, 0, 0.1", "200, 1, 0, 0.5",
    "1000, 5, 60, 2.5"})
  void usualCellsAreRoundAndFewEnough(double length, double width, int obstacles, double cellM) {
    Rectangle ground = new Rectangle(length, width, 0);
    assertEquals(cellM, CellSize.usualM(ground, obstacles), 1e-12);
    assertEquals(Optional.of(cellM), CellSize.check(ground, obstacles, cellM, "cell").value());
  }

  @Test
  void tooManyCellsAreRefusedWithWhatWouldDo() {
    Rectangle ground = new Rectangle(20, 20, 0);
    var refused = CellSize.check(ground, 0, 0.1, "cell").findings().get(0);
    assertEquals("sun.cells-too-many", refused.code());
    assertEquals(List.of("40000", "2500", "0.4"), refused.args());
    assertTrue(CellSize.check(ground, 0, 0.4, "cell").value().isPresent());
    assertEquals("sun.cells-too-many", CellSize.check(ground, 60, 0.4, "cell").findings().get(0).code());
    assertEquals(List.of("20.0"), CellSize.check(ground, 0, 21, "cell").findings().get(0).args());
  }

  /** The thinnest bed there can be keeps some cells, whichever way it lies. */
  @Test
  void theThinnestBedHasCells() {
    for (double turn = 0; turn < 180; turn += 7.5) {
      Rectangle thin = new Rectangle(100, 0.5, turn);
      BedSun sun = BedSun.of(scene(45, List.of()), scene(45, List.of()).sunPath(60), thin, CellSize.usualM(thin, 60));
      assertTrue(sun.cells() > 50, turn + " degrees: " + sun.cells());
    }
  }

  @Test
  void anOfferIsARangeNeverANumber() {
    Condition open = SunOffer.of(sun(45, List.of(), new Rectangle(4, 4, 0)));
    assertEquals(1, open.range().width(), 1e-9);
    assertEquals(Basis.COMPUTED, open.basis());
    Condition shaded = SunOffer.of(sun(44.3, List.of(WALL, MAPLE), new Rectangle(9, 2, 90)));
    BedSun sun = sun(44.3, List.of(WALL, MAPLE), new Rectangle(9, 2, 90));
    assertEquals(sun.middleHours().min(), shaded.range().min(), 0.05 + 1e-9);
    assertEquals(sun.middleHours().max(), shaded.range().max(), 0.05 + 1e-9);
  }

  /** North of about 60 degrees summer days pass the 16 hours at which the class of full sun ends. */
  @Test
  void hoursBeyondFullSunAreCutOff() {
    Condition arctic = SunOffer.of(sun(69, List.of(), new Rectangle(4, 4, 0)));
    assertEquals(new Range(15, 16), arctic.range());
    assertEquals("15 to 16", arctic.entered());
  }

  @Test
  void deepShadeStaysARange() {
    Obstacle roof = new Building("roof", new Rectangle(40, 40, 0).around(new GroundPoint(0, 0)), 3);
    assertEquals(new Range(0, 1), SunOffer.of(sun(45, List.of(roof), new Rectangle(4, 4, 0))).range());
  }

  @Test
  void theOfferIsHeldAgainstWhatTheBedSays() {
    Condition offer = new Condition(Axis.LIGHT, new Range(2.4, 3.9), Basis.COMPUTED, "2.4 to 3.9");
    assertEquals(SunOffer.Standing.NEW, SunOffer.standing(offer, bed()));
    assertEquals(SunOffer.Standing.TAKEN, SunOffer.standing(offer, bed().withCondition(offer)));
    Bed observed = bed().withCondition(new Condition(Axis.LIGHT, new Range(0.5, 2.5), Basis.OBSERVED, "0.5 to 2.5"));
    assertEquals(SunOffer.Standing.AGREES, SunOffer.standing(offer, observed));
    assertFalse(SunOffer.isOutranked(observed));
    Bed shade = bed().withCondition(new Condition(Axis.LIGHT, new Range(0.5, 2.3), Basis.OBSERVED, "0.5 to 2.3"));
    assertEquals(SunOffer.Standing.AGREES, SunOffer.standing(offer, shade), "both reach into full shade");
    Bed dark = bed().withCondition(new Condition(Axis.LIGHT, new Range(4, 5), Basis.OBSERVED, "4 to 5"));
    assertEquals(SunOffer.Standing.AGREES, SunOffer.standing(offer, dark), "both reach into part shade");
    Condition sunny = new Condition(Axis.LIGHT, new Range(13.9, 14.9), Basis.COMPUTED, "13.9 to 14.9");
    assertEquals(SunOffer.Standing.CONTRADICTS, SunOffer.standing(sunny,
        bed().withCondition(new Condition(Axis.LIGHT, new Range(4, 6), Basis.OBSERVED, "4 to 6"))));
    assertEquals(SunOffer.Standing.AGREES, SunOffer.standing(sunny,
        bed().withCondition(new Condition(Axis.LIGHT, new Range(8, 10), Basis.OBSERVED, "8 to 10"))), "both are full sun");
    Bed measured = bed().withCondition(new Condition(Axis.LIGHT, new Range(6, 7), Basis.MEASURED, "6 to 7"));
    assertEquals(SunOffer.Standing.CONTRADICTS, SunOffer.standing(offer, measured));
    assertTrue(SunOffer.isOutranked(measured));
  }

  @ParameterizedTest
  @CsvSource({"44.3, FROST_DATES, 05-10, 10-01", "-37, FROST_DATES, 10-10, 04-01", "44.3, WARM_HALF, 04-01, 09-30", "-37, WARM_HALF, 10-01, 03-31",
    "5, WHOLE_YEAR, 01-01, 12-31", ", WARM_HALF, 04-01, 09-30"})
  void theSeasonIsTheFrostFreeOneOrAPlainGuess(Double latitude, GrowingSeason.Known known, String first, String last) {
    boolean frost = known == GrowingSeason.Known.FROST_DATES;
    Season days = new Season(MonthDay.parse("--" + first), MonthDay.parse("--" + last));
    Site site = new Site(1, "site", "", latitude == null ? OptionalDouble.empty() : OptionalDouble.of(latitude),
        frost ? Optional.of(days.first()) : Optional.empty(), frost ? Optional.of(days.last()) : Optional.empty(), Map.of(), "");
    assertEquals(new GrowingSeason(days, known), GrowingSeason.of(site));
  }

  private static Bed bed() {
    return new Bed(1, 1, "bed", 18, Map.of(), List.of(), "");
  }

  private static Scene scene(double latitude, List<Obstacle> obstacles) {
    Season season = Season.of(5, 10, 10, 1);
    return new Scene(new Coordinates(latitude, 0), 2026, season, season, 0, Horizon.LEVEL, obstacles);
  }

  private static BedSun sun(double latitude, List<Obstacle> obstacles, Rectangle ground) {
    return READINGS.of(scene(latitude, obstacles), ground, CellSize.usualM(ground, obstacles.size()));
  }
}
