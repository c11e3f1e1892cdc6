package guildwood.site;

import guildwood.species.Axis;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A piece of ground with one climate; its beds inherit what they do not say themselves.
 *
 * @param place ISO 3166 code of country or state ({@code US-WI}, {@code DE}), for lists of regulated plants; may be empty
 * @param latitudeDegrees north positive; absent where not known
 * @param longitudeDegrees east positive; absent where not known
 * @param lastSpringFrost mean date of the last frost; absent where not known
 * @param firstAutumnFrost mean date of the first frost; absent where not known
 * @param conditions by axis, only those that are stated
 */
public record Site(
    long id,
    String name,
    String place,
    OptionalDouble latitudeDegrees,
    OptionalDouble longitudeDegrees,
    Optional<MonthDay> lastSpringFrost,
    Optional<MonthDay> firstAutumnFrost,
    Map<Axis, Condition> conditions,
    String note) {
  public static final int LONGEST_NAME = 120;
  public static final int LONGEST_NOTE = 2000;

  public Site {
    conditions = Map.copyOf(conditions);
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("a site needs a name of at most " + LONGEST_NAME + " characters: " + name);
    }
    if (latitudeDegrees.isPresent() && !(Math.abs(latitudeDegrees.getAsDouble()) <= 90)) {
      throw new IllegalArgumentException("no latitude " + latitudeDegrees.getAsDouble());
    }
    if (longitudeDegrees.isPresent() && !(Math.abs(longitudeDegrees.getAsDouble()) <= 180)) {
      throw new IllegalArgumentException("no longitude " + longitudeDegrees.getAsDouble());
    }
  }

  /** A site whose longitude is not known. */
  public Site(long id, String name, String place, OptionalDouble latitudeDegrees, Optional<MonthDay> lastSpringFrost,
      Optional<MonthDay> firstAutumnFrost, Map<Axis, Condition> conditions, String note) {
    this(id, name, place, latitudeDegrees, OptionalDouble.empty(), lastSpringFrost, firstAutumnFrost, conditions, note);
  }

  /** Days from the last spring frost to the first autumn frost, over the new year where the autumn date comes first. */
  public OptionalInt frostFreeDays() {
    if (lastSpringFrost.isEmpty() || firstAutumnFrost.isEmpty()) {
      return OptionalInt.empty();
    }
    // 2023 is an ordinary year; the count is the same in a leap year unless 29 February lies between.
    int days = (int) ChronoUnit.DAYS.between(lastSpringFrost.get().atYear(2023), firstAutumnFrost.get().atYear(2023));
    return OptionalInt.of(days >= 0 ? days : days + 365);
  }
}
