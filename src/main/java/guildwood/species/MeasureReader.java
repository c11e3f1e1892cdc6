package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers with units, ranges of them, and class words into a range in a trait's unit. */
final class MeasureReader {
  private static final Pattern ENDS = Pattern.compile("(.+?)\\s*(?:\\.\\.|\\bto\\b|–|(?<=[0-9a-z])\\s*-\\s*(?=[0-9a-z]))\\s*(.+)");
  private static final Pattern NUMBER = Pattern.compile("([-−+]?\\d{1,6}(?:[.,]\\d{1,6})?)\\s*([a-z°'\"]*)");

  private MeasureReader() {}

  static Checked<Range> read(Unit unit, String text, String field) {
    Optional<Range> word = word(unit, text);
    if (word.isPresent()) {
      return Checked.of(word.get());
    }
    if (text.contains(";")) {
      return union(unit, text, field);
    }
    Matcher ends = ENDS.matcher(text);
    if (ends.matches()) {
      return ends(unit, ends.group(1), ends.group(2), field);
    }
    return number(unit, text, "")
        .map(n -> TraitReader.span(n, n, unit, field))
        .orElseGet(() -> Checked.refused(Finding.of("number.unreadable", field, text)));
  }

  private static Checked<Range> union(Unit unit, String text, String field) {
    Range hull = null;
    for (String part : TraitReader.split(text)) {
      Checked<Range> read = read(unit, part, field);
      if (read.isRefused()) {
        return read;
      }
      hull = hull == null ? read.orThrow() : hull.hull(read.orThrow());
    }
    return hull == null ? Checked.refused(Finding.of("number.unreadable", field, text)) : Checked.of(hull);
  }

  private static Checked<Range> ends(Unit unit, String first, String last, String field) {
    Optional<Range> firstWord = word(unit, first);
    Optional<Range> lastWord = word(unit, last);
    String commonUnit = unitOf(last);
    Optional<Double> low = firstWord.map(Range::min).or(() -> number(unit, first, commonUnit));
    Optional<Double> high = lastWord.map(Range::max).or(() -> number(unit, last, ""));
    if (low.isEmpty() || high.isEmpty()) {
      return Checked.refused(Finding.of("number.unreadable", field, first + ".." + last));
    }
    return TraitReader.span(low.get(), high.get(), unit, field);
  }

  private static Optional<Range> word(Unit unit, String text) {
    if (unit == Unit.CELSIUS) {
      // 'Hardy to zone 5' means the whole zone is borne: its lower edge is the coldest winter survived.
      return text.startsWith("zone") ? HardinessZone.read(text).map(z -> Range.of(z.celsius().min())) : Optional.empty();
    }
    return ClassWords.range(unit, text);
  }

  private static String unitOf(String text) {
    Matcher matcher = NUMBER.matcher(text.strip());
    return matcher.matches() ? matcher.group(2) : "";
  }

  private static Optional<Double> number(Unit unit, String text, String unitIfNone) {
    Matcher matcher = NUMBER.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(matcher.group(1).replace('−', '-').replace(',', '.'));
    String written = matcher.group(2).isEmpty() ? unitIfNone : matcher.group(2);
    return convert(unit, number, written);
  }

  private static Optional<Double> convert(Unit unit, double number, String written) {
    return switch (unit) {
      case METRES -> switch (written) {
        case "", "m" -> Optional.of(number);
        case "cm" -> Optional.of(number / 100);
        case "ft", "'" -> Optional.of(number * 0.3048);
        case "in", "\"" -> Optional.of(number * 0.0254);
        default -> Optional.empty();
      };
      case CELSIUS -> switch (written) {
        case "", "c", "°c" -> Optional.of(number);
        case "f", "°f" -> Optional.of(Temperature.toCelsius(number));
        default -> Optional.empty();
      };
      case SUN_HOURS -> written.matches("|h|hours") ? Optional.of(number) : Optional.empty();
      case DAYS -> written.matches("|d|days") ? Optional.of(number) : Optional.empty();
      default -> written.isEmpty() ? Optional.of(number) : Optional.empty();
    };
  }
}
