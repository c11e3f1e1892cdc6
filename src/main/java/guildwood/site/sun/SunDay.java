package guildwood.site.sun;

import java.time.LocalDate;
import java.util.List;

/**
 * One solar day: the 24 hours around the moment the sun crosses the meridian.
 *
 * @param transitMillis when the sun crosses the meridian, milliseconds since 1970-01-01 UTC
 * @param up when the sun is up, in order: empty in polar night, the whole day in polar day, and two
 *     spells at most where a polar day begins or ends
 */
public record SunDay(LocalDate date, long transitMillis, List<Spell> up) {
  public SunDay {
    up = List.copyOf(up);
  }

  /** Day length in hours, from 0 (polar night) to 24 (polar day). */
  public double lengthHours() {
    return up.stream().mapToDouble(Spell::hours).sum();
  }

  /** A stretch of time, milliseconds since 1970-01-01 UTC. */
  public record Spell(long fromMillis, long toMillis) {
    public Spell {
      if (toMillis < fromMillis) {
        throw new IllegalArgumentException("ends before it begins: " + fromMillis + " to " + toMillis);
      }
    }

    public double hours() {
      return (toMillis - fromMillis) / 3_600_000.0;
    }
  }
}
