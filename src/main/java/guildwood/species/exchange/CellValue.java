package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Range;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import guildwood.species.Unit;
import java.time.Month;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values in the cells of the species table: numbers in the unit of the trait, ranges as {@code 4 to 8} (a
 * spreadsheet takes 4-8 for a date), months as numbers, lists joined by semicolons.
 */
final class CellValue {
  static final String BETWEEN = "; ";

  private static final String NUMBER = "(-?\\d{1,6}(?:\\.\\d{1,25})?)";
  private static final Pattern RANGE = Pattern.compile(NUMBER + "(?:\\s+to\\s+" + NUMBER + ")?");

  /** Units that people must write; a bare number in a cell of the table is in them already. */
  private static final Set<Unit> WRITTEN = Set.of(Unit.METRES, Unit.CELSIUS);

  private CellValue() {}

  static String write(TraitValue value) {
    if (value instanceof TraitValue.Span span) {
      return write(span.range());
    }
    if (value instanceof TraitValue.InMonths in) {
      return list(in.months().list().stream().map(Month::getValue).map(String::valueOf).toList());
    }
    if (value instanceof TraitValue.InSeasons in) {
      return list(in.seasons());
    }
    if (value instanceof TraitValue.Words several) {
      return String.join(BETWEEN, several.words());
    }
    if (value instanceof TraitValue.Word one) {
      return one.word();
    }
    if (value instanceof TraitValue.YesNo answer) {
      return answer.yes() ? "yes" : "no";
    }
    return ((TraitValue.Text) value).text();
  }

  private static String write(Range range) {
    String low = PlainNumber.of(range.min());
    return range.width() == 0 ? low : low + " to " + PlainNumber.of(range.max());
  }

  /** Where it is only known that it happens, the list is empty and a yes stands for it. */
  private static String list(List<String> parts) {
    return parts.isEmpty() ? "yes" : String.join(BETWEEN, parts);
  }

  /** Reads a cell; whatever is not written as the table writes it is read as people write it. */
  static Checked<TraitValue> read(Trait trait, String cell, String field) {
    Matcher matcher = RANGE.matcher(cell);
    boolean number = trait.shape() == Trait.Shape.SPAN && matcher.matches();
    if (!number || (matcher.group(2) == null && !WRITTEN.contains(trait.unit()))) {
      return TraitReader.read(trait, cell, field);
    }
    double low = Double.parseDouble(matcher.group(1));
    double high = matcher.group(2) == null ? low : Double.parseDouble(matcher.group(2));
    return TraitReader.span(low, high, trait.unit(), field).map(TraitValue.Span::new);
  }
}
