package guildwood.importing;

import guildwood.species.CautionKind;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a column says.
 *
 * @param trait the trait it is about, where it is about one
 * @param item of that trait; empty where the trait has none or the cells name it
 * @param word for a {@link Kind#MARK} the word, month or season that a mark in the column stands for
 */
public record Meaning(Kind kind, Optional<Trait> trait, String item, String word) {

  /** The kinds of column; those from {@link #VALUE} to {@link #EVIDENCE} are about a trait. */
  public enum Kind {
    SCIENTIFIC_NAME,
    GENUS,
    EPITHET,
    LOWER_RANK,
    CULTIVAR,
    SPECIES_ID,
    COMMON_NAMES,
    FAMILY,
    SYNONYMS,
    /** A value of a trait, whole. */
    VALUE,
    /** The lower end of a range, or its first month; the other end stands in another column. */
    LOWEST,
    HIGHEST,
    /** A mark says that the column's word, month or season belongs to the value. */
    MARK,
    /** The cells name the items of a trait: jobs, harvested parts, ways of propagation. */
    ITEMS,
    /** Cautions of one kind, each with its part or place before a colon, joined by semicolons. */
    CAUTIONS,
    /** How well the claim in another column is supported. */
    EVIDENCE,
    /** Uses and jobs in any mixture. */
    USES_AND_JOBS,
    ON_HAND,
    PRICE,
    SOURCE_TITLE,
    SOURCE_AUTHOR,
    SOURCE_YEAR,
    SOURCE_PLACE,
    /** In long form, one value a row: which trait, which item, and the value. */
    TRAIT_NAME,
    ITEM_NAME,
    TRAIT_VALUE,
    VALUE_UNIT,
    VALUE_EVIDENCE,
    VALUE_NOTE,
    /** Kept with the species as it stands. */
    NOTE,
    IGNORED;

    /** Stable name in files and message keys. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    boolean aboutATrait() {
      return ordinal() >= VALUE.ordinal() && ordinal() <= EVIDENCE.ordinal();
    }

    /** Whether one column at most can say it. */
    public boolean onlyOnce() {
      return !aboutATrait() && this != NOTE && this != IGNORED && this != COMMON_NAMES && this != SYNONYMS && this != USES_AND_JOBS;
    }
  }

  public static final Meaning NAME = of(Kind.SCIENTIFIC_NAME);
  public static final Meaning NOTE = of(Kind.NOTE);
  public static final Meaning IGNORED = of(Kind.IGNORED);

  public Meaning {
    if (kind.aboutATrait() != trait.isPresent() || (kind == Kind.MARK) == word.isEmpty()) {
      throw new IllegalArgumentException("no meaning: " + kind + " " + trait + " '" + item + "' '" + word + "'");
    }
  }

  public static Meaning of(Kind kind) {
    return new Meaning(kind, Optional.empty(), "", "");
  }

  public static Meaning of(Kind kind, Trait trait, String item) {
    return new Meaning(kind, Optional.of(trait), item, "");
  }

  public static Meaning mark(Trait trait, String item, String word) {
    return new Meaning(Kind.MARK, Optional.of(trait), item, word);
  }

  public boolean is(Kind other) {
    return kind == other;
  }

  /** Stable name in files and forms, such as {@code lowest:ph}, {@code value:harvest.fruit}, {@code mark:bloom:4}. */
  public String key() {
    return kind.key() + trait.map(t -> ":" + t.key() + (item.isEmpty() ? "" : "." + item)).orElse("")
        + (word.isEmpty() ? "" : ":" + word);
  }

  /** The meaning of a key; empty where there is none such. */
  public static Optional<Meaning> ofKey(String key) {
    int colon = key.indexOf(':');
    String kindKey = colon < 0 ? key : key.substring(0, colon);
    for (Kind kind : Kind.values()) {
      if (kind.key().equals(kindKey)) {
        return kind.aboutATrait()
            ? colon < 0 ? Optional.empty() : aboutATrait(kind, key.substring(colon + 1))
            : colon < 0 ? Optional.of(of(kind)) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static Optional<Meaning> aboutATrait(Kind kind, String rest) {
    int last = rest.lastIndexOf(':');
    if (kind == Kind.MARK && last < 0) {
      return Optional.empty();
    }
    String topic = kind == Kind.MARK ? rest.substring(0, last) : rest;
    String word = kind == Kind.MARK ? rest.substring(last + 1) : "";
    int dot = topic.indexOf('.');
    Optional<Trait> trait = Trait.ofKey(dot < 0 ? topic : topic.substring(0, dot));
    String item = dot < 0 ? "" : topic.substring(dot + 1);
    return trait.filter(t -> fits(kind, t, item, word)).map(t -> new Meaning(kind, Optional.of(t), item, word));
  }

  private static boolean fits(Kind kind, Trait trait, String item, String word) {
    return switch (kind) {
      case ITEMS -> trait.hasItems() && trait != Trait.CAUTION && item.isEmpty();
      case CAUTIONS -> trait == Trait.CAUTION && CautionKind.keys().contains(item);
      case LOWEST, HIGHEST -> (trait.shape() == Trait.Shape.SPAN || trait == Trait.BLOOM) && item.isEmpty();
      case EVIDENCE -> trait.carriesEvidence() && trait.items().contains(item);
      case MARK -> !word.isBlank() && !TraitReader.readItem(trait, item, "").isRefused();
      default -> !TraitReader.readItem(trait, item, "").isRefused();
    };
  }

  /** Every meaning a person can choose for a column, in the order to offer them; marks only where they are usual. */
  public static List<Meaning> choices() {
    List<Meaning> choices = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      if (!kind.aboutATrait()) {
        choices.add(of(kind));
      }
    }
    for (Trait trait : Trait.values()) {
      addChoices(trait, choices);
    }
    return List.copyOf(choices);
  }

  private static void addChoices(Trait trait, List<Meaning> choices) {
    if (trait == Trait.CAUTION) {
      CautionKind.keys().forEach(kind -> choices.add(of(Kind.CAUTIONS, trait, kind)));
      return;
    }
    if (trait.hasItems()) {
      choices.add(of(Kind.ITEMS, trait, ""));
    }
    for (String item : trait.hasItems() ? trait.items() : List.of("")) {
      choices.add(of(Kind.VALUE, trait, item));
      if (trait.shape() == Trait.Shape.SPAN || trait == Trait.BLOOM) {
        choices.add(of(Kind.LOWEST, trait, item));
        choices.add(of(Kind.HIGHEST, trait, item));
      }
      marksOf(trait).forEach(word -> choices.add(mark(trait, item, word)));
      if (trait.carriesEvidence()) {
        choices.add(of(Kind.EVIDENCE, trait, item));
      }
    }
  }

  private static List<String> marksOf(Trait trait) {
    return switch (trait.shape()) {
      case WORDS, SEASONS -> trait.words();
      case WORD -> trait == Trait.CONFLICT || trait == Trait.DURATION || trait == Trait.GROWTH_RATE || trait == Trait.POLLINATION
          ? trait.words() : List.of();
      case MONTHS -> List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12");
      case SPAN -> switch (trait) {
        case LIGHT, LIGHT_PREFERRED -> List.of("full sun", "part shade", "full shade");
        case MOISTURE, MOISTURE_PREFERRED -> List.of("very dry", "dry", "moist", "wet", "waterlogged");
        case FERTILITY, FERTILITY_PREFERRED -> List.of("poor", "medium", "rich");
        default -> List.of();
      };
      case YES_NO, TEXT -> List.of();
    };
  }
}
