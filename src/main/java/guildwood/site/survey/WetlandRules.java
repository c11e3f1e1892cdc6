package guildwood.site.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Two vegetation indices of the US Army Corps of Engineers' regional supplements (Midwest: ERDC/EL TR-10-16, 2010),
 * used here only to read wet, moist or dry. A wetland determination is the authority's business.
 */
public final class WetlandRules {
  /** At least this share of the cover must be identified and rated for the prevalence index. */
  public static final double LEAST_RATED_PERCENT = 80;

  /** Rating weights run from OBL 1 to UPL 5; FAC 3 and below count as wetland plants in the dominance test. */
  private static final double FAC = 3;

  private WetlandRules() {}

  /**
   * A species in a stratum.
   *
   * @param rating 1 (OBL) to 5 (UPL); absent where it has none in the region
   */
  public record Rated(String species, String stratum, double coverPercent, OptionalDouble rating) {}

  /**
   * Outcome of the dominance test.
   *
   * @param dominants those of each stratum in turn, by falling cover; a species dominant in two strata stands twice
   * @param wetlandPercent share of them rated OBL, FACW or FAC; absent where there are none
   */
  public record Dominance(List<Rated> dominants, OptionalDouble wetlandPercent) {
    public Dominance {
      dominants = List.copyOf(dominants);
    }

    /** More than half of all dominants are wetland plants. */
    public boolean isMostlyWetland() {
      return wetlandPercent.isPresent() && wetlandPercent.getAsDouble() > 50;
    }
  }

  /** Share of the total cover that has a rating, in percent; 0 where nothing covers anything. */
  public static double ratedPercent(List<Rated> plants) {
    double total = plants.stream().mapToDouble(Rated::coverPercent).sum();
    double rated = plants.stream().filter(p -> p.rating().isPresent()).mapToDouble(Rated::coverPercent).sum();
    return total > 0 ? 100 * rated / total : 0;
  }

  /** Mean rating weighed by cover over all strata, 1 to 5; absent where less than 80 % of the cover is rated. */
  public static OptionalDouble prevalenceIndex(List<Rated> plants) {
    // A ratio of two sums that should be 80 exactly may fall short by a rounding error.
    if (ratedPercent(plants) < LEAST_RATED_PERCENT - 1e-9) {
      return OptionalDouble.empty();
    }
    double cover = 0;
    double sum = 0;
    for (Rated plant : plants) {
      if (plant.rating().isPresent()) {
        cover += plant.coverPercent();
        sum += plant.coverPercent() * plant.rating().getAsDouble();
      }
    }
    return OptionalDouble.of(sum / cover);
  }

  /** The 50/20 rule in each stratum, then the share of wetland plants among all dominants. */
  public static Dominance dominance(List<Rated> plants) {
    Map<String, List<Rated>> strata = new LinkedHashMap<>();
    for (Rated plant : plants) {
      if (plant.coverPercent() > 0) {
        strata.computeIfAbsent(plant.stratum(), s -> new ArrayList<>()).add(plant);
      }
    }
    List<Rated> dominants = new ArrayList<>();
    strata.values().forEach(stratum -> dominants.addAll(dominantsOf(stratum)));
    long wet = dominants.stream().filter(d -> d.rating().isPresent() && d.rating().getAsDouble() <= FAC).count();
    return new Dominance(dominants,
        dominants.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(100.0 * wet / dominants.size()));
  }

  /**
   * By falling cover until the sum exceeds half of the total, with all that tie with the last one taken; then
   * everyone that alone reaches a fifth.
   */
  private static List<Rated> dominantsOf(List<Rated> stratum) {
    double total = stratum.stream().mapToDouble(Rated::coverPercent).sum();
    List<Rated> ranked = stratum.stream().sorted(Comparator.comparingDouble(Rated::coverPercent).reversed()).toList();
    List<Rated> dominants = new ArrayList<>();
    double sum = 0;
    double last = Double.NaN;
    for (Rated plant : ranked) {
      boolean halfExceeded = sum > total / 2 * (1 + 1e-12);
      boolean ties = plant.coverPercent() == last;
      if (!halfExceeded || ties || plant.coverPercent() >= total / 5) {
        dominants.add(plant);
        last = halfExceeded && !ties ? last : plant.coverPercent();
      }
      sum += plant.coverPercent();
    }
    return dominants;
  }
}
