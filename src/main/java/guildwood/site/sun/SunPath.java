package guildwood.site.sun;

import guildwood.kernel.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The sun's path over one place in one year, worked out once and shared by every point, bed and plan.
 *
 * <p>Every spell of sun is cut into an even number of equal steps no longer than asked for, and the sun
 * is taken where it stands in the middle of each. So the steps of a day add up to its day length exactly,
 * whatever their length, and half of them lie before noon.
 */
public final class SunPath {
  public static final Range YEARS = new Range(1900, 2200);
  public static final Range STEP_MINUTES = new Range(1, 60);

  /** A fine step for a drawing, and the usual one for files. */
  public static final double USUAL_STEP_MINUTES = 10;

  private final int year;
  private final List<Day> days;

  private SunPath(int year, List<Day> days) {
    this.year = year;
    this.days = List.copyOf(days);
  }

  /** The path over a calendar year in steps of at most so many minutes. */
  public static SunPath of(Place place, int year, double stepMinutes) {
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

  private static void addSteps(List<Step> steps, Sun sun, SunDay day, SunDay.Spell spell, double stepMinutes) {
    int pairs = (int) Math.ceil(spell.hours() * 60 / stepMinutes / 2);
    double hours = spell.hours() / (2 * pairs);
    for (int i = 0; i < 2 * pairs; i++) {
      long middle = spell.fromMillis() + Math.round((i + 0.5) * hours * 3_600_000);
      steps.add(Step.of(sun.seenAt(middle), hours, middle < day.transitMillis()));
    }
  }

  public int year() {
    return year;
  }

  List<Day> days() {
    return days;
  }

  /** One date with its steps in order of time. */
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
