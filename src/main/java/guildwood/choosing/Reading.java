package guildwood.choosing;

import guildwood.fit.Tolerance;
import guildwood.fit.Tolerances;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.WetlandRegion;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads what one species says to every facet, from the statements that rule.
 *
 * <p>Layers, uses, months and single words answer all their options at once. Functions, nativity and
 * wetland ratings answer each for itself: nothing stated is not known. Harvested parts and ways of
 * propagation are lists: once something is stated, what is not listed counts as no, because nobody ever
 * writes down that an apple yields no sap, and everything would stay not known for ever.
 */
final class Reading {
  private final Species species;
  private final Tolerances tolerances;
  private final Map<String, Months> harvest;

  Reading(Species species) {
    this.species = species;
    this.tolerances = Tolerances.of(species);
    this.harvest = species.harvest();
  }

  /** The marks of a facet in one of its variants; {@link Facet#VERDICT} is not a matter of the species alone. */
  Marks marks(Facet facet, int variant) {
    return switch (facet) {
      case VERDICT -> throw new IllegalArgumentException("a verdict needs a bed");
      case LAYER -> Marks.listed(facet, species.words(Trait.LAYER));
      case FUNCTION -> functions(Evidence.values()[Evidence.values().length - 1 - variant]);
      case BLOOM -> species.bloom().map(months -> inMonths(facet, months)).orElse(Marks.silent(facet));
      case HARVEST -> Marks.listed(facet, List.copyOf(harvest.keySet()));
      case HARVEST_MONTH -> variant == 0 ? anyHarvest() : harvestOf(Facet.HARVEST.options().get(variant - 1));
      case USE -> Marks.listed(facet, species.words(Trait.USE));
      case HEIGHT -> heights();
      case WINTER -> borne(facet, Axis.WINTER_COLD, (range, option) -> range.min() <= PlaceBands.winter(option).min() + 1e-9);
      case LIGHT -> borne(facet, Axis.LIGHT, (range, option) -> mostlyWithin(PlaceBands.light(option), range));
      case MOISTURE -> borne(facet, Axis.MOISTURE, (range, option) -> mostlyWithin(PlaceBands.moisture(option), range));
      case PH -> borne(facet, Axis.REACTION, (range, option) -> mostlyWithin(PlaceBands.reaction(option), range));
      case GROWTH_RATE -> word(facet, Trait.GROWTH_RATE);
      case DURATION -> word(facet, Trait.DURATION);
      case POLLINATION -> word(facet, Trait.POLLINATION);
      case NATIVE -> natives();
      case WETLAND -> wetland(WetlandRegion.values()[variant]);
      case PROPAGATION -> Marks.listed(facet, species.rulingItems(Trait.PROPAGATION).stream().map(Statement::item).toList());
      case ROOT_FORM -> word(facet, Trait.ROOT_FORM);
      case SPREAD -> Marks.listed(facet, species.words(Trait.SPREAD));
      case WITHOUT -> cautions();
    };
  }

  private Marks word(Facet facet, Trait trait) {
    return species.word(trait).map(word -> Marks.answered(facet, word::equals)).orElse(Marks.silent(facet));
  }

  /** A yes that is not supported as well as asked for is not known; a no stays a no. */
  private Marks functions(Evidence atLeast) {
    Map<String, Statement> stated =
        species.rulingItems(Trait.FUNCTION).stream().collect(Collectors.toMap(Statement::item, s -> s));
    return Marks.each(Facet.FUNCTION,
        function -> says(stated.get(function), true)
            && Query.supports(stated.get(function).evidence(), atLeast),
        function -> !says(stated.get(function), false));
  }

  private static boolean says(Statement statement, boolean yes) {
    return statement != null && ((TraitValue.YesNo) statement.value()).yes() == yes;
  }

  private static Marks inMonths(Facet facet, Months months) {
    // The options are the months in calendar order, as are the bits.
    return months.isEmpty() ? Marks.silent(facet) : new Marks(months.bits(), 0);
  }

  private Marks anyHarvest() {
    if (harvest.isEmpty()) {
      return Marks.silent(Facet.HARVEST_MONTH);
    }
    int dated = harvest.values().stream().mapToInt(Months::bits).reduce(0, (a, b) -> a | b);
    boolean someUndated = harvest.values().stream().anyMatch(Months::isEmpty);
    return new Marks(dated, someUndated ? Marks.silent(Facet.HARVEST_MONTH).notKnown() & ~dated : 0);
  }

  private Marks harvestOf(String part) {
    Months months = harvest.get(part);
    if (months == null) {
      return harvest.isEmpty() ? Marks.silent(Facet.HARVEST_MONTH) : new Marks(0, 0);
    }
    return inMonths(Facet.HARVEST_MONTH, months);
  }

  private Marks heights() {
    Optional<Range> height = species.range(Trait.HEIGHT);
    return height.map(h -> Marks.answered(Facet.HEIGHT, option -> {
      Range band = PlaceBands.height(option);
      return h.min() < band.max() && h.max() >= band.min();
    })).orElse(Marks.silent(Facet.HEIGHT));
  }

  private interface Bears {
    boolean test(Range tolerated, String option);
  }

  private Marks borne(Facet facet, Axis axis, Bears bears) {
    return tolerances.on(axis).map(Tolerance::tolerated)
        .map(range -> Marks.answered(facet, option -> bears.test(range, option)))
        .orElse(Marks.silent(facet));
  }

  private static boolean mostlyWithin(Range band, Range tolerated) {
    if (band.width() == 0) {
      return tolerated.contains(band.min());
    }
    double shared = Math.min(band.max(), tolerated.max()) - Math.max(band.min(), tolerated.min());
    return shared >= PlaceBands.BORNE_SHARE * band.width();
  }

  private Marks natives() {
    Map<String, String> stated = species.rulingItems(Trait.NATIVITY).stream()
        .collect(Collectors.toMap(Statement::item, s -> ((TraitValue.Word) s.value()).word()));
    return Marks.each(Facet.NATIVE, region -> "native".equals(stated.get(region)), region -> !stated.containsKey(region));
  }

  private Marks wetland(WetlandRegion region) {
    return species.ruling(Trait.WETLAND, region.key())
        .map(s -> ((TraitValue.Word) s.value()).word().toLowerCase(Locale.ROOT))
        .map(rating -> Marks.answered(Facet.WETLAND, rating::equals))
        .orElse(Marks.silent(Facet.WETLAND));
  }

  private Marks cautions() {
    Set<String> kinds = species.cautions().stream()
        .flatMap(s -> CautionKind.of(s.item()).stream()).map(CautionKind::key).collect(Collectors.toSet());
    return Marks.each(Facet.WITHOUT, kinds::contains, kind -> true);
  }
}
