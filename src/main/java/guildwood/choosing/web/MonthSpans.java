package guildwood.choosing.web;

import guildwood.kernel.Months;
import guildwood.web.Messages;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/** Months in few words: neighbours are drawn together, also over the new year. */
final class MonthSpans {
  private MonthSpans() {}

  /** For example {@code Apr–May, Sep}; empty for no months. */
  static String of(Months months, Messages messages) {
    if (months.list().size() == 12) {
      return messages.say("choosing.all-year");
    }
    List<String> spans = new ArrayList<>();
    for (Month first : Month.values()) {
      if (months.contains(first) && !months.contains(first.minus(1))) {
        Month last = first;
        while (months.contains(last.plus(1))) {
          last = last.plus(1);
        }
        spans.add(first == last ? shortName(first, messages)
            : messages.say("choosing.months", shortName(first, messages), shortName(last, messages)));
      }
    }
    return String.join(", ", spans);
  }

  private static String shortName(Month month, Messages messages) {
    return messages.say("term.month.short." + month.getValue());
  }
}
