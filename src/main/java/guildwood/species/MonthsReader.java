package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Months;
import java.time.Month;
import java.util.Optional;

/** Reads sets of months: numbers or English names, single or as ranges, joined by semicolons or commas. */
final class MonthsReader {
  private MonthsReader() {}

  static Checked<Months> read(String text, String field) {
    Months months = Months.NONE;
    for (String part : TraitReader.split(text)) {
      String[] ends = part.split("\\s*(?:\\.\\.|-|–|\\bto\\b)\\s*", -1);
      Optional<Month> first = month(ends[0]);
      Optional<Month> last = month(ends[ends.length - 1]);
      if (ends.length > 2 || first.isEmpty() || last.isEmpty()) {
        return Checked.refused(Finding.of("month.unreadable", field, part));
      }
      months = months.union(Months.through(first.get(), last.get()));
    }
    return months.isEmpty() ? Checked.refused(Finding.of("month.unreadable", field, text)) : Checked.of(months);
  }

  private static Optional<Month> month(String text) {
    if (text.matches("\\d{1,2}")) {
      int number = Integer.parseInt(text);
      return number >= 1 && number <= 12 ? Optional.of(Month.of(number)) : Optional.empty();
    }
    for (Month month : Month.values()) {
      if (text.length() >= 3 && month.name().toLowerCase(java.util.Locale.ROOT).startsWith(text)) {
        return Optional.of(month);
      }
    }
    return Optional.empty();
  }
}
