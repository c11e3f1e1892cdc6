package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads a value as people and sources write it - class words, zones, feet, degrees F, month names - into
 * the units the program reckons in. What cannot be read is a finding, never a guess.
 */
public final class TraitReader {
  /** The longest value accepted, characters. */
  public static final int LONGEST = 300;

  private TraitReader() {}

  /**
   * Reads one value.
   *
   * @param field the form field or column the findings belong to
   */
  public static Checked<TraitValue> read(Trait trait, String entered, String field) {
    String text = entered.strip();
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    if (text.length() > LONGEST) {
      return Checked.refused(Finding.of("text.too-long", field, LONGEST));
    }
    if (text.chars().anyMatch(Character::isISOControl)) {
      return Checked.refused(Finding.of("text.control-characters", field));
    }
    String folded = text.toLowerCase(Locale.ROOT);
    return switch (trait.shape()) {
      case SPAN -> MeasureReader.read(trait.unit(), folded, field).map(TraitValue.Span::new);
      case WORD -> oneWord(trait, text, field);
      case WORDS -> severalWords(trait, folded, field);
      case MONTHS -> months(trait, folded, field);
      case SEASONS -> seasons(trait, folded, field);
      case YES_NO -> yesNo(folded, field);
      case TEXT -> Checked.of(new TraitValue.Text(text));
    };
  }

  /** Whether the item is one the trait knows; cautions take a kind with an optional part or place. */
  public static Checked<String> readItem(Trait trait, String entered, String field) {
    String item = entered.strip();
    boolean known = trait == Trait.CAUTION
        ? CautionKind.isItem(item)
        : trait.hasItems() ? trait.items().contains(item) : item.isEmpty();
    return known ? Checked.of(item) : Checked.refused(Finding.of("item.unknown", field, item));
  }

  private static Checked<TraitValue> oneWord(Trait trait, String text, String field) {
    for (String word : trait.words()) {
      if (word.equalsIgnoreCase(text)) {
        return Checked.of(new TraitValue.Word(word));
      }
    }
    return Checked.refused(unknownWord(trait, text, field));
  }

  private static Checked<TraitValue> severalWords(Trait trait, String text, String field) {
    return knownWords(trait, text, field).map(TraitValue.Words::new);
  }

  /** 'Yes' says that there is a harvest in months not known; of a bloom it would say nothing. */
  private static Checked<TraitValue> months(Trait trait, String text, String field) {
    if (text.equals("yes") && trait == Trait.HARVEST) {
      return Checked.of(new TraitValue.InMonths(Months.NONE));
    }
    return MonthsReader.read(text, field).map(TraitValue.InMonths::new);
  }

  private static Checked<TraitValue> seasons(Trait trait, String text, String field) {
    if (text.equals("yes")) {
      return Checked.of(new TraitValue.InSeasons(List.of()));
    }
    return knownWords(trait, text, field)
        .map(words -> new TraitValue.InSeasons(trait.words().stream().filter(words::contains).toList()));
  }

  private static Checked<List<String>> knownWords(Trait trait, String text, String field) {
    List<String> words = split(text);
    if (words.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    return words.stream().filter(word -> !trait.words().contains(word)).findFirst()
        .map(word -> Checked.<List<String>>refused(unknownWord(trait, word, field)))
        .orElseGet(() -> Checked.of(words));
  }

  private static Checked<TraitValue> yesNo(String text, String field) {
    return switch (text) {
      case "yes", "y", "true" -> Checked.of(new TraitValue.YesNo(true));
      case "no", "n", "false" -> Checked.of(new TraitValue.YesNo(false));
      default -> Checked.refused(Finding.of("value.yes-or-no", field, text));
    };
  }

  private static Finding unknownWord(Trait trait, String word, String field) {
    return Finding.of("value.unknown-word", field, word, String.join(", ", trait.words()));
  }

  static List<String> split(String text) {
    return new ArrayList<>(Arrays.stream(text.split("[;,]")).map(String::strip).filter(s -> !s.isEmpty()).toList());
  }

  /** A range from two ends already on the scale; a finding where it runs backwards or leaves the scale. */
  public static Checked<Range> span(double low, double high, Unit unit, String field) {
    if (low > high) {
      return Checked.refused(Finding.of("range.backwards", field, plain(low), plain(high)));
    }
    // A hair of slack: converted values such as 13 ft or -76 F may land a rounding error off the edge.
    if (low < unit.lowest() - 1e-9 || high > unit.highest() + 1e-9) {
      return Checked.refused(Finding.of("number.out-of-scale", field, plain(unit.lowest()), plain(unit.highest())));
    }
    return Checked.of(new Range(low, high));
  }

  private static String plain(double number) {
    return new java.math.BigDecimal(number).setScale(2, java.math.RoundingMode.HALF_UP).stripTrailingZeros()
        .toPlainString();
  }
}
