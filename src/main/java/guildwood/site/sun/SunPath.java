package guildwood.site.sun;

import guildwood.kernel.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The sun's path over one place in one year, worked out once and shared by every point, bed and plan.
 *
 * <p>Every spell of sun is cut into steps of equal length from noon outwards, with shorter ones at noon and
 * at the ends, and the sun is taken where it stands in the middle of each. So the steps of a day add up to
 * its day length exactly, whatever their length. The cuts move on by the golden section of a step from day
 * to day: the error of a step, half of it at the worst at each edge of a shadow, then evens out over a month,
 * where cuts at the same moments would repeat it every day.
 */
public final class SunPath {
  public static final Range YEARS = new Range(1900, 2200);
  public static final Range STEP_MINUTES = new Range(1, 60);

  /** A season's mean is then within about a minute of that by one-minute steps (the benchmark prints the difference). */
  public static final double USUAL_STEP_MINUTES = 10;

  private static final double GOLDEN = 0.6180339887498949;

  private final int year;
  private final List<Day> days;

  private SunPath(int year, List<Day> days) {
    this.year = year;
    this.days = List.copyOf(days);
  }

  /** The path over a calendar year in steps of at most so many minutes. */
  public static SunPath of(Coordinates place, int year, double stepMinutes) {
    if (!YEARS.contains(year) || !STEP_MINUTES.contains(stepMinutes)) {
      throw new IllegalArgumentException("no sun path for " + year + " in steps of " + stepMinutes + " minutes");
    }
    Sun sun = new Sun(place, year);
    List<Day> days = new ArrayList<>();
    for (LocalDate date = LocalDate.of(year, 1, 1); date.getYear() == year; date = date.plusDays(1)) {
      SunDay day = sun.day(date);
      List<Step> steps = new ArrayList<>();
      day.up().forEach(spell -> addSteps(steps, sun, day, spell, stepMinutes));
      days.add(new Day(date, day.lengthHours(), steps));
    }
    return new SunPath(year, days);
  }

  /** Steps before and after the meridian are laid out from noon outwards, so a day is the same in both halves. */
  private static void addSteps(List<Step> steps, Sun sun, SunDay day, SunDay.Spell spell, double stepMinutes) {
    long noon = day.transitMillis();
    double stepMillis = stepMinutes * 60_000;
    double first = stepMillis * ((day.date().toEpochDay() * GOLDEN) % 1);
    addHalf(steps, sun, noon, spell.fromMillis() - noon, Math.min(0, spell.toMillis() - noon), first, stepMillis);
    addHalf(steps, sun, noon, Math.max(0, spell.fromMillis() - noon), spell.toMillis() - noon, first, stepMillis);
  }

  /** Steps of a stretch on one side of noon, both ends told in milliseconds after noon. */
  private static void addHalf(
      List<Step> steps, Sun sun, long noon, double from, double to, double first, double stepMillis) {
    boolean morning = to <= 0;
    double near = morning ? -to : from;
    double far = morning ? -from : to;
    while (near < far) {
      double next = first + stepMillis * (Math.floor((near - first) / stepMillis) + 1);
      double end = Math.min(far, Math.max(next, near + 1));
      double middle = (near + end) / 2;
      steps.add(Step.of(sun.seenAt(noon + Math.round(morning ? -middle : middle)), (end - near) / 3_600_000, morning));
      near = end;
    }
  }

  /** The same path with only every so many days of it, for means that may be a little coarser. */
  public SunPath everyDays(int every) {
    return new SunPath(year, IntStream.iterate(0, i -> i < days.size(), i -> i + every).mapToObj(days::get).toList());
  }

  /** How many of its days lie in a season. */
  public int daysIn(Season season) {
    return (int) days.stream().filter(day -> season.contains(day.date())).count();
  }

  public int year() {
    return year;
  }

  List<Day> days() {
    return days;
  }

  /** One date with its steps: those of the morning from noon back to sunrise, then those of the afternoon. */
  record Day(LocalDate date, double lengthHours, List<Step> steps) {
    Day {
      steps = List.copyOf(steps);
    }
  }

  /**
   * A short time of sun from one direction.
   *
   * @param east the horizontal direction towards the sun as a unit vector
   * @param rise metres that the ray towards the sun climbs on one metre of ground; never 0
   */
  record Step(SunPosition sun, double east, double north, double rise, double hours, boolean morning) {
    /** Half a sun still above the horizon casts shadows of finite length: 1 m throws 570 m. */
    private static final double LOWEST_DEGREES = 0.1;

    static Step of(SunPosition sun, double hours, boolean morning) {
      double azimuth = Math.toRadians(sun.azimuthDegrees());
      double elevation = Math.toRadians(Math.max(sun.elevationDegrees(), LOWEST_DEGREES));
      return new Step(sun, Math.sin(azimuth), Math.cos(azimuth), Math.tan(elevation), hours, morning);
    }
  }
}
