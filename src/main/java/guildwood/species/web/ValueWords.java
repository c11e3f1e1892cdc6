package guildwood.species.web;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.CautionKind;
import guildwood.species.ClassWords;
import guildwood.species.HardinessZone;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.Unit;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Values of traits in words, numbers in the visitor's units. */
public final class ValueWords {
  private final Messages messages;
  private final Units units;

  public ValueWords(Messages messages, Units units) {
    this.messages = messages;
    this.units = units;
  }

  /** What a statement is about: the trait, and its item where it has items. */
  public String topic(Trait trait, String item) {
    if (trait == Trait.CAUTION) {
      return CautionKind.of(item).map(kind -> caution(kind, CautionKind.detail(item))).orElse(item);
    }
    if (trait == Trait.FUNCTION) {
      return messages.say("item.function." + item);
    }
    return trait.hasItems()
        ? messages.say("topic", messages.say("trait." + trait.key()), messages.say("item." + trait.key() + "." + item))
        : messages.say("trait." + trait.key());
  }

  private String caution(CautionKind kind, String detail) {
    String label = messages.say("item.caution." + kind.key());
    return detail.isEmpty() ? label : messages.say("topic", label, detail);
  }

  /** The value as the program reckons with it. */
  public String value(Statement statement) {
    Trait trait = statement.trait();
    TraitValue value = statement.value();
    if (value instanceof TraitValue.Span span) {
      return span(trait, span.range());
    } else if (value instanceof TraitValue.Word word) {
      return word(trait, word.word());
    } else if (value instanceof TraitValue.Words words) {
      return trait.words().stream().filter(words.words()::contains).map(w -> word(trait, w)).collect(Collectors.joining(", "));
    } else if (value instanceof TraitValue.InMonths months) {
      return months.months().isEmpty() ? messages.say("value.months-not-known") : months(months.months());
    } else if (value instanceof TraitValue.InSeasons seasons) {
      return seasons.seasons().isEmpty()
          ? messages.say("value.season-not-known")
          : seasons.seasons().stream().map(s -> word(trait, s)).collect(Collectors.joining(", "));
    } else if (value instanceof TraitValue.YesNo yesNo) {
      return word(trait, yesNo.yes() ? "yes" : "no");
    } else if (value instanceof TraitValue.Text text) {
      return text.text();
    }
    throw new IllegalStateException("no words for " + value);
  }

  private String word(Trait trait, String word) {
    return messages.say("word." + trait.key() + "." + word);
  }

  private String span(Trait trait, Range range) {
    Unit unit = trait.unit();
    Optional<String> words = ClassWords.inWords(unit, range);
    return switch (unit) {
      case METRES -> units.length(range);
      case CELSIUS -> cold(range);
      case DAYS -> messages.say("value.days", numbers(range, 0));
      case SUN_HOURS -> messages.say("value.light", numbers(range, 1), words.orElseThrow());
      case MOISTURE_CLASS -> classed(words, range, 5);
      case FERTILITY_CLASS -> classed(words, range, 3);
      default -> numbers(range, 1);
    };
  }

  /** The zone of the coldest end, and the degrees it stands for. */
  private String cold(Range range) {
    String degrees = range.width() == 0
        ? units.temperature(range.min())
        : messages.say("value.from-to", units.temperature(range.min()), units.temperature(range.max()));
    Optional<HardinessZone> zone = HardinessZone.ofCelsius(range.min());
    if (zone.isEmpty()) {
      return messages.say(range.min() < 0 ? "value.below-zone-1" : "value.above-zone-13", degrees);
    }
    return messages.say("value.zone", zone.get().toString(), degrees);
  }

  private String classed(Optional<String> words, Range range, int classes) {
    return words.map(w -> messages.say("value.class", w, numbers(range, 1), classes))
        .orElseGet(() -> messages.say("value.class-number", numbers(range, 1), classes));
  }

  private String numbers(Range range, int decimals) {
    return range.width() == 0
        ? Units.number(range.min(), decimals)
        : messages.say("value.from-to", Units.number(range.min(), decimals), Units.number(range.max(), decimals));
  }

  /** Months as names, runs of them from first to last, also over the new year. */
  public String months(Months months) {
    if (months.equals(Months.through(Month.JANUARY, Month.DECEMBER))) {
      return messages.say("value.all-year");
    }
    List<String> runs = new ArrayList<>();
    for (Month first : months.list()) {
      if (!months.contains(first.minus(1))) {
        runs.add(run(months, first));
      }
    }
    return String.join(", ", runs);
  }

  private String run(Months months, Month first) {
    Month last = first;
    while (months.contains(last.plus(1))) {
      last = last.plus(1);
    }
    return first == last ? name(first) : messages.say("value.from-to", name(first), name(last));
  }

  private static String name(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
