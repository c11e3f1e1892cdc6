package guildwood.species;

import java.util.List;
import java.util.Optional;

/**
 * The catalogue of what can be said about a species. One statement is one trait, for some traits about
 * one item (a function, a harvested part, a region), with one value from one source.
 */
public enum Trait {
  LIGHT("light", Shape.SPAN, Unit.SUN_HOURS),
  LIGHT_PREFERRED("light_preferred", Shape.SPAN, Unit.SUN_HOURS),
  MOISTURE("moisture", Shape.SPAN, Unit.MOISTURE_CLASS),
  MOISTURE_PREFERRED("moisture_preferred", Shape.SPAN, Unit.MOISTURE_CLASS),
  PH("ph", Shape.SPAN, Unit.PH),
  PH_PREFERRED("ph_preferred", Shape.SPAN, Unit.PH),
  FERTILITY("fertility", Shape.SPAN, Unit.FERTILITY_CLASS),
  FERTILITY_PREFERRED("fertility_preferred", Shape.SPAN, Unit.FERTILITY_CLASS),
  TEXTURE("texture", Shape.WORDS, List.of("coarse", "medium", "fine")),
  COLDEST_WINTER("coldest_winter", Shape.SPAN, Unit.CELSIUS),
  FROST_FREE_DAYS("frost_free_days", Shape.SPAN, Unit.DAYS),
  HEIGHT("height", Shape.SPAN, Unit.METRES),
  CROWN("crown", Shape.SPAN, Unit.METRES),
  GROWTH_RATE("growth_rate", Shape.WORD, List.of("slow", "medium", "fast")),
  DURATION("duration", Shape.WORD, List.of("annual", "biennial", "perennial")),
  LAYER("layer", Shape.WORDS, Layer.keys()),
  FUNCTION("function", Shape.YES_NO, List.of("yes", "no"), GuildFunction.keys()),
  BLOOM("bloom", Shape.MONTHS, List.of()),
  HARVEST("harvest", Shape.MONTHS, List.of(),
      List.of("fruit", "nut", "leaf", "shoot", "flower", "root", "seed", "sap", "bulb")),
  USE("use", Shape.WORDS, List.of("food", "raw-food", "cooked-food", "fuelwood", "poles", "timber", "basketry",
      "fibre", "dye", "hedge", "fodder", "medicinal-tradition")),
  PROPAGATION("propagation", Shape.SEASONS, List.of("spring", "summer", "autumn", "winter"),
      List.of("seed", "hardwood-cutting", "softwood-cutting", "root-cutting", "division", "layering", "grafting",
          "sucker", "tuber", "bulb", "bare-root")),
  POLLINATION("pollination", Shape.WORD,
      List.of("self-fertile", "partner-needed", "partner-helps", "separate-sexes")),
  NATIVITY("nativity", Shape.WORD, List.of("native", "introduced"),
      List.of("north-america", "eastern-north-america", "great-lakes", "maine", "north-east-coast", "michigan",
          "northern-wisconsin", "europe", "asia")),
  WETLAND("wetland", Shape.WORD, List.of("OBL", "FACW", "FAC", "FACU", "UPL"), WetlandRegion.keys()),
  ROOT_FORM("root_form", Shape.WORD, List.of("taproot", "fibrous", "spreading", "rhizome", "tuber", "bulb")),
  SPREAD("spread", Shape.WORDS, List.of("stays", "suckers", "runs", "self-sows")),
  CAUTION("caution", Shape.TEXT, List.of(), List.of()),
  CONFLICT("conflict", Shape.WORD, List.of("gives", "suffers", "tolerates", "disputed"),
      List.of("juglone", "cedar-apple-rust", "white-pine-blister-rust", "fire-blight", "verticillium"));

  /** The form a value of the trait takes. */
  public enum Shape {
    /** A range of numbers. */
    SPAN,
    /** One of the trait's words. */
    WORD,
    /** Several of the trait's words. */
    WORDS,
    /** A set of months, or just yes. */
    MONTHS,
    /** A set of seasons, or just yes. */
    SEASONS,
    /** Yes or no. */
    YES_NO,
    /** A short sentence. */
    TEXT
  }

  private final String key;
  private final Shape shape;
  private final Unit unit;
  private final List<String> words;
  private final List<String> items;

  Trait(String key, Shape shape, Unit unit) {
    this.key = key;
    this.shape = shape;
    this.unit = unit;
    this.words = List.of();
    this.items = List.of();
  }

  Trait(String key, Shape shape, List<String> words) {
    this(key, shape, words, List.of());
  }

  Trait(String key, Shape shape, List<String> words, List<String> items) {
    this.key = key;
    this.shape = shape;
    this.unit = Unit.NONE;
    this.words = List.copyOf(words);
    this.items = List.copyOf(items);
  }

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return key;
  }

  public Shape shape() {
    return shape;
  }

  public Unit unit() {
    return unit;
  }

  /** The words a value may use; empty for ranges, months and free text. */
  public List<String> words() {
    return words;
  }

  /** What a statement can be about; empty where the trait has no items (cautions take free items). */
  public List<String> items() {
    return items;
  }

  public boolean hasItems() {
    return !items.isEmpty() || this == CAUTION;
  }

  /**
   * Whether statements of several sources complete one another instead of competing: a source that does
   * not name a use does not deny it, and no caution takes back another.
   */
  public boolean addsUp() {
    return this == LAYER || this == USE || this == SPREAD || this == CAUTION;
  }

  /** Whether a statement of the trait says how well the claim is supported. */
  public boolean carriesEvidence() {
    return this == FUNCTION || this == CONFLICT;
  }

  public static Optional<Trait> ofKey(String key) {
    for (Trait trait : values()) {
      if (trait.key.equals(key)) {
        return Optional.of(trait);
      }
    }
    return Optional.empty();
  }
}
