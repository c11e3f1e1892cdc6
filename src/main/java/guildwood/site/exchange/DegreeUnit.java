package guildwood.site.exchange;

import guildwood.kernel.Temperature;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Degrees Fahrenheit or Celsius, as files and options name them. */
enum DegreeUnit {
  F,
  C;

  private static final Pattern WITH_NUMBER = Pattern.compile("(-?\\d{1,3}(?:\\.\\d{1,4})?)\\s*(\\S{1,2})");

  /** Reads 'F', 'c', '°C'. */
  static Optional<DegreeUnit> read(String text) {
    return switch (text.strip().toUpperCase(Locale.ROOT)) {
      case "F", "\u00b0F" -> Optional.of(F);
      case "C", "\u00b0C" -> Optional.of(C);
      default -> Optional.empty();
    };
  }

  /** Reads '50F' or '10 C' as degrees F; empty where it is neither. */
  static OptionalDouble readDegreesF(String text) {
    Matcher matcher = WITH_NUMBER.matcher(text.strip());
    Optional<DegreeUnit> unit = matcher.matches() ? read(matcher.group(2)) : Optional.empty();
    if (unit.isEmpty()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(matcher.group(1));
    return OptionalDouble.of(unit.get() == C ? Temperature.toFahrenheit(number) : number);
  }
}
