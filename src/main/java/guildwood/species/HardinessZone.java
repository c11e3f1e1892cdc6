package guildwood.species;

import guildwood.kernel.Range;
import guildwood.kernel.Temperature;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A USDA plant hardiness zone or half zone: a display of the mean annual extreme minimum temperature.
 *
 * <p>Thirteen zones of 10 degrees F, half zones a and b of 5 degrees F, from -60 F (USDA ARS, 2023 Plant
 * Hardiness Zone Map). A temperature on an edge belongs to the warmer zone.
 *
 * @param number 1 to 13
 * @param half 'a', 'b', or ' ' for the whole zone
 */
public record HardinessZone(int number, char half) {
  private static final Pattern WRITTEN = Pattern.compile("(?:zone\\s*)?(\\d{1,2})\\s*([ab]?)");

  public HardinessZone {
    if (number < 1 || number > 13 || (half != 'a' && half != 'b' && half != ' ')) {
      throw new IllegalArgumentException("no hardiness zone " + number + half);
    }
  }

  /** Reads '5', '5b', 'zone 5b'. */
  public static Optional<HardinessZone> read(String written) {
    Matcher matcher = WRITTEN.matcher(written.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int number = Integer.parseInt(matcher.group(1));
    if (number < 1 || number > 13) {
      return Optional.empty();
    }
    return Optional.of(new HardinessZone(number, matcher.group(2).isEmpty() ? ' ' : matcher.group(2).charAt(0)));
  }

  /** The half zone of a mean annual extreme minimum in degrees C; empty below zone 1 and above zone 13. */
  public static Optional<HardinessZone> ofCelsius(double celsius) {
    // Half zones are defined in degrees F; a millionth of a degree absorbs the conversion's rounding.
    double steps = Math.floor((Temperature.toFahrenheit(celsius) + 60) / 5 + 1e-6);
    if (steps < 0 || steps > 25) {
      return Optional.empty();
    }
    int step = (int) steps;
    return Optional.of(new HardinessZone(step / 2 + 1, step % 2 == 0 ? 'a' : 'b'));
  }

  /** The band of mean annual extreme minima, degrees C; its upper end belongs to the next zone. */
  public Range celsius() {
    double low = -60 + 10.0 * (number - 1) + (half == 'b' ? 5 : 0);
    double high = low + (half == ' ' ? 10 : 5);
    return new Range(Temperature.toCelsius(low), Temperature.toCelsius(high));
  }

  @Override
  public String toString() {
    return half == ' ' ? Integer.toString(number) : number + "" + half;
  }
}
