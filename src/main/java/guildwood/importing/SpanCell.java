package guildwood.importing;

import guildwood.species.HardinessZone;
import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads cells that hold a number, a range, a hardiness zone or class words for one. */
final class SpanCell {
  private static final String ZONE = "(\\d{1,2}\\s*[ab]?)";
  private static final String ZONE_WORDS = "(?:(?:usda|zones?|hardiness|to|hardy|z|rated|plant|cold)\\b[\\s:.]*)";
  private static final Pattern ZONES = Pattern.compile("(" + ZONE_WORDS + "*|z)" + ZONE
      + "(?:\\s*(?:-|–|—|to|through|/|,|and)\\s*(?:zones?\\s*|z)?" + ZONE + ")?\\s*(?:\\+|and up|or warmer|and warmer|\\(usda\\)|usda)?");

  private static final Pattern DATE = Pattern.compile("\\d{1,2}[- /.](jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*([- /.]\\d{2,4})?"
      + "|(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[- /.]\\d{2,4}|\\d{4}-\\d{2}-\\d{2}.*|\\d{1,2}/\\d{1,2}/\\d{2,4}");

  /** In German tables 1.200 cm is twelve metres; nobody measures plants to a hundredth of a millimetre. */
  private static final Pattern POINT = Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2}\\.\\d{3}(?![\\d.,])");

  /** -10-15 may end at 15 or at -15 degrees. */
  private static final Pattern SIGN = Pattern.compile("[-−–]\\s?\\d[\\d.,]*\\s*(?:°?\\s*[cf])?\\s*[-–—]\\s*\\d.*");

  private SpanCell() {}

  private static boolean isSmall(ColumnUnit unit, SpanText span) {
    String written = span.hasUnit() ? span.highUnit().isEmpty() ? span.lowUnit() : span.highUnit() : unit.written();
    return written.equals("cm") || written.equals("mm") || written.equals("in");
  }

  static CellReading read(Trait trait, ColumnUnit unit, String separator, String text) {
    if (trait.unit() == Unit.CELSIUS) {
      Optional<String> zone = zone(text, unit == ColumnUnit.ZONE);
      if (zone.isPresent()) {
        return TextOrPlain.kept(trait, text, zone.get());
      }
    }
    Optional<SpanText> span = SpanText.read(text);
    if (span.isPresent() && trait.unit() == Unit.CELSIUS && SIGN.matcher(text.strip().toLowerCase(Locale.ROOT)).matches()) {
      return CellReading.refused("import.sign-unclear", text);
    }
    if (span.isPresent()) {
      return SpanText.isAmbiguous(text) || isSmall(unit, span.get()) && POINT.matcher(text).find() ? ambiguous(text) : number(trait, unit, text, span.get());
    }
    // A spreadsheet has made 8-Apr of 4-8.
    return DATE.matcher(text.toLowerCase(Locale.ROOT)).matches() ? CellReading.refused("import.date-cell") : words(trait, separator, text);
  }

  private static CellReading ambiguous(String text) {
    String number = text.strip();
    return CellReading.refused("area.comma", number.replaceAll("[.,](?=\\d{3})", ""), number.replace(',', '.'));
  }

  private static CellReading number(Trait trait, ColumnUnit unit, String text, SpanText span) {
    if (unit == ColumnUnit.NOT_KNOWN && !span.hasUnit()) {
      return CellReading.refused("import.unit-not-known");
    }
    boolean bare = !span.hasUnit() && (unit.written().isEmpty() && unit != ColumnUnit.OUR_CLASSES) && ColumnUnit.isNeeded(trait);
    if (bare) {
      return CellReading.refused("import.unit-missing");
    }
    if (span.high().isEmpty() && span.bound() != SpanText.Bound.GIVEN) {
      return oneEnd(trait, unit, span);
    }
    return TextOrPlain.kept(trait, text, span.entered(unit.written()));
  }

  /** 'Up to 3 m', '6+ hours': one end where the trait knows what the other is. */
  private static CellReading oneEnd(Trait trait, ColumnUnit unit, SpanText span) {
    boolean upTo = span.bound() == SpanText.Bound.UP_TO;
    String end = span.entered(unit.written());
    return switch (trait.unit()) {
      case METRES -> CellReader.kept(trait, "", end);
      case DAYS, CELSIUS -> upTo ? CellReading.refused("import.one-end") : CellReader.kept(trait, "", end);
      case SUN_HOURS -> CellReader.kept(trait, "", upTo ? "0 h to " + end : end + " to 16 h");
      default -> CellReading.refused("import.one-end");
    };
  }

  /** The zones a cell names, as the value reader takes them; bare numbers only where the column is of zones. */
  static Optional<String> zone(String text, boolean bareToo) {
    Matcher matcher = ZONES.matcher(text.toLowerCase(Locale.ROOT).strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String last = matcher.group(3);
    boolean said = !matcher.group(1).isBlank() || matcher.group(2).matches(".*[ab]") || last != null && last.matches(".*[ab]")
        || text.toLowerCase(Locale.ROOT).contains("usda");
    if (!said && !bareToo || HardinessZone.read(matcher.group(2)).isEmpty() || last != null && HardinessZone.read(last).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of("zone " + matcher.group(2).replace(" ", "") + (last == null ? "" : " to " + last.replace(" ", "")));
  }

  private static CellReading words(Trait trait, String separator, String text) {
    Predicate<String> known = token -> ClassTable.value(trait, token).isPresent();
    List<String> tokens = Tokens.of(text, separator, known);
    if (tokens.isEmpty() || !tokens.stream().allMatch(known)) {
      return trait.unit() == Unit.PH || trait.unit() == Unit.METRES || trait.unit() == Unit.CELSIUS || trait.unit() == Unit.DAYS
          ? CellReading.refused("number.unreadable", text)
          : CellReading.refused("import.class-unknown", text);
    }
    String entered = String.join("; ", tokens.stream().map(t -> ClassTable.value(trait, t).orElseThrow()).distinct().toList());
    return TextOrPlain.kept(trait, text, entered);
  }

  /** Keeps the cell's own text where the value reader takes it for the same. */
  private static final class TextOrPlain {
    static CellReading kept(Trait trait, String text, String plain) {
      CellReading asPlain = CellReader.kept(trait, "", plain);
      CellReading asText = CellReader.kept(trait, "", text);
      boolean same = asPlain instanceof CellReading.Values one && asText instanceof CellReading.Values other
          && one.values().get(0).value().equals(other.values().get(0).value());
      return same ? asText : asPlain;
    }
  }
}
