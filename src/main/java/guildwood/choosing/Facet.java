package guildwood.choosing;

import guildwood.fit.Verdict;
import guildwood.species.CautionKind;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Trait;
import guildwood.species.WetlandRegion;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a library can be narrowed down by. Options inside a facet widen each other (or), facets narrow
 * each other (and).
 *
 * <p>The order is that of the page.
 */
public enum Facet {
  /** How a species suits the chosen bed; silent without a bed. */
  VERDICT("verdict", Arrays.stream(Verdict.values()).map(Verdict::key).toList()),
  /** Survives the whole of a hardiness zone. */
  WINTER("winter", PlaceBands.winters()),
  LIGHT("light", PlaceBands.lights()),
  MOISTURE("moisture", PlaceBands.moistures()),
  PH("ph", PlaceBands.reactions()),
  LAYER("layer", Arrays.stream(Layer.values()).map(Layer::key).toList()),
  /** Asked at a level of evidence, see {@link Query#evidence}. */
  FUNCTION("function", Arrays.stream(GuildFunction.values()).map(GuildFunction::key).toList(), 3),
  BLOOM("bloom", months()),
  HARVEST("harvest", Trait.HARVEST.items()),
  /** Months of any harvest, or of the harvested parts that are chosen. */
  HARVEST_MONTH("harvest-month", months(), 1 + Trait.HARVEST.items().size()),
  USE("use", Trait.USE.words()),
  /** Leaves out what carries a chosen caution. Nobody states that a plant has none, so not known stays. */
  WITHOUT("without", Arrays.stream(CautionKind.values()).map(CautionKind::key).toList()),
  HEIGHT("height", PlaceBands.heights()),
  GROWTH_RATE("growth", Trait.GROWTH_RATE.words()),
  DURATION("duration", Trait.DURATION.words()),
  ROOT_FORM("root-form", Trait.ROOT_FORM.words()),
  SPREAD("spread", Trait.SPREAD.words()),
  POLLINATION("pollination", Trait.POLLINATION.words()),
  PROPAGATION("propagation", Trait.PROPAGATION.items()),
  /** Native in a region. */
  NATIVE("native", Trait.NATIVITY.items()),
  /** Rated in one region, see {@link Query#region}; silent without one. */
  WETLAND("wetland", Trait.WETLAND.words().stream().map(word -> word.toLowerCase(Locale.ROOT)).toList(),
      WetlandRegion.values().length);

  private final String key;
  private final List<String> options;
  private final int variants;

  Facet(String key, List<String> options) {
    this(key, options, 1);
  }

  Facet(String key, List<String> options, int variants) {
    this.key = key;
    this.options = List.copyOf(options);
    this.variants = variants;
  }

  private static List<String> months() {
    return Arrays.stream(Month.values()).map(month -> month.name().toLowerCase(Locale.ROOT)).toList();
  }

  /** Stable name in addresses and message keys. */
  public String key() {
    return key;
  }

  /** The names of its options, in the order to show them. */
  public List<String> options() {
    return options;
  }

  /** Whether its options take away what has them, rather than keep it. */
  public boolean leavesOut() {
    return this == WITHOUT;
  }

  /** Readings of the same options: levels of evidence, regions, harvested parts. */
  int variants() {
    return variants;
  }

  public static Optional<Facet> ofKey(String key) {
    return Arrays.stream(values()).filter(facet -> facet.key.equals(key)).findFirst();
  }
}
