package guildwood.site.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;

/**
 * The sun over one place in one year.
 *
 * <p>Positions come from the library's version of NREL's Solar Position Algorithm (Reda & Andreas,
 * NREL/TP-560-34302), good to 0.0003 degrees, far better than shade needs. Rise and set are found here
 * on those positions: the library's own take a single step from a first guess and miss by an hour or
 * more on the days when a polar day or night begins or ends.
 */
final class Sun {
  /**
   * Geometric elevation of the sun's centre at sunrise and sunset, degrees: the upper limb on the
   * horizon with 34' of refraction, as in the tables of the US Naval Observatory.
   */
  static final double RISE_AND_SET_DEGREES = SPA.Horizon.SUNRISE_SUNSET.elevation();

  /** Air pressure and temperature for refraction; near the horizon 10 % more changes the sun by 0.06 degrees. */
  private static final double PRESSURE_HPA = 1010;
  private static final double TEMPERATURE_C = 10;

  private static final long HOUR = 3_600_000;

  /** The sky is looked at this often to find rise and set; noon and midnight are among these moments. */
  private static final long LOOK = 2 * HOUR;

  private final Coordinates place;
  private final double deltaT;

  Sun(Coordinates place, int year) {
    this.place = place;
    this.deltaT = DeltaT.estimate(LocalDate.of(year, 7, 1));
  }

  /** Where the sun seems to stand, lifted by refraction. */
  SunPosition seenAt(long millis) {
    var position = SPA.calculateSolarPosition(
        at(millis), place.latitudeDegrees(), place.longitudeDegrees(), 0, deltaT, PRESSURE_HPA, TEMPERATURE_C);
    return new SunPosition(position.azimuth(), 90 - position.zenithAngle());
  }

  /** Elevation of the sun's centre in degrees as if there were no air. */
  double geometricElevationDegrees(long millis) {
    return 90 - SPA.calculateSolarPosition(
        at(millis), place.latitudeDegrees(), place.longitudeDegrees(), 0, deltaT).zenithAngle();
  }

  /** The solar day whose noon falls on this date by local mean time. */
  SunDay day(LocalDate date) {
    return day(date, RISE_AND_SET_DEGREES);
  }

  /** The same with another elevation of the sun's centre taken as rise and set. */
  SunDay day(LocalDate date, double horizonDegrees) {
    long transit = transitMillis(date);
    List<SunDay.Spell> up = new ArrayList<>();
    long since = transit - 12 * HOUR;
    boolean before = geometricElevationDegrees(since) > horizonDegrees;
    for (long look = since + LOOK; look <= transit + 12 * HOUR; look += LOOK) {
      boolean now = geometricElevationDegrees(look) > horizonDegrees;
      if (before != now) {
        long crossing = crossing(look - LOOK, look, now, horizonDegrees);
        if (before) {
          up.add(new SunDay.Spell(since, crossing));
        }
        since = crossing;
      }
      before = now;
    }
    if (before) {
      up.add(new SunDay.Spell(since, transit + 12 * HOUR));
    }
    return new SunDay(date, transit, up);
  }

  private long transitMillis(LocalDate date) {
    ZoneOffset meanTime = ZoneOffset.ofTotalSeconds((int) Math.round(place.longitudeDegrees() * 240));
    return SPA.calculateSunriseTransitSet(
            date.atTime(12, 0).atZone(meanTime), place.latitudeDegrees(), place.longitudeDegrees(), deltaT)
        .transit().toInstant().toEpochMilli();
  }

  /** Halves the stretch between two looks until the moment of rising or setting is known to a second. */
  private long crossing(long from, long to, boolean rising, double horizonDegrees) {
    long left = from;
    long right = to;
    while (right - left > 1000) {
      long middle = left + (right - left) / 2;
      if (geometricElevationDegrees(middle) > horizonDegrees == rising) {
        right = middle;
      } else {
        left = middle;
      }
    }
    return left + (right - left) / 2;
  }

  private static ZonedDateTime at(long millis) {
    return Instant.ofEpochMilli(millis).atZone(ZoneOffset.UTC);
  }
}
