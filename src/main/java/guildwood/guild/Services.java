package guildwood.guild;

import guildwood.kernel.Months;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import java.time.Month;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a plant gives its guild and its people.
 *
 * @param functions the jobs it is said to do, with how well that is supported
 * @param bloom months of bloom; none where not known
 * @param harvest harvested parts with their months; months are empty where only the part is known
 */
public record Services(Map<GuildFunction, Evidence> functions, Months bloom, Map<String, Months> harvest) {
  public static final Services NONE = new Services(Map.of(), Months.NONE, Map.of());

  /** What a claim counts that trials or observation support; see {@link #units}. */
  public static final int WHOLE = 2;

  /** What a claim counts that is only handed down: half. */
  public static final int HALF = 1;

  public Services {
    functions = functions.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(functions));
    harvest = Collections.unmodifiableMap(new TreeMap<>(harvest));
  }

  /** Every month in which something can be harvested. */
  public Months harvestMonths() {
    return harvest.values().stream().reduce(Months.NONE, Months::union);
  }

  /**
   * How much it counts towards a wish, in halves of a provider: {@link #WHOLE}, {@link #HALF} for a job
   * that only folk wisdom claims, 0 where it does not provide it or nobody knows.
   */
  int units(Wish wish) {
    return switch (wish.kind()) {
      case FUNCTION -> {
        Evidence evidence = functions.get(GuildFunction.ofKey(wish.item()));
        yield evidence == null ? 0 : evidence == Evidence.FOLK ? HALF : WHOLE;
      }
      case BLOOM_MONTH -> bloom.contains(month(wish)) ? WHOLE : 0;
      case HARVEST_PART -> harvest.containsKey(wish.item()) ? WHOLE : 0;
      case HARVEST_MONTH -> harvestMonths().contains(month(wish)) ? WHOLE : 0;
      case LAYER, GROUND -> 0;
    };
  }

  private static Month month(Wish wish) {
    return Month.of(Integer.parseInt(wish.item()));
  }
}
