package guildwood.choosing;

import guildwood.species.Species;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What remains of a library under a query, in any order, and the counts beside every option. */
public final class Outcome {
  private final FacetIndex index;
  private final Demands demands;
  private final Optional<BedFits> bed;
  private final long[] named;
  private final long[] remaining;
  private final int count;

  Outcome(FacetIndex index, Demands demands, long[] named, Optional<BedFits> bed) {
    this.index = index;
    this.demands = demands;
    this.named = named;
    this.bed = bed;
    this.remaining = named.clone();
    demands.clauses().values().forEach(clause -> clause.narrow(remaining));
    this.count = BitRow.count(remaining);
  }

  /** How many species remain. */
  public int count() {
    return count;
  }

  /** How many species the library has. */
  public int total() {
    return index.species().size();
  }

  /** A species that remains, with the facets in which it only stays because 'not known' does. */
  public record Remaining(Species species, List<Facet> notKnownIn) {}

  /**
   * Some of what remains.
   *
   * @param first position of the first one to give, from 0
   */
  public List<Remaining> list(Order order, int first, int most) {
    int[] positions = order == Order.FIT
        ? bed.map(BedFits::bestFirst).orElseGet(() -> index.orders().by(Order.NAME))
        : index.orders().by(order);
    List<Remaining> listed = new ArrayList<>();
    int seen = 0;
    for (int p = 0; p < positions.length && listed.size() < most; p++) {
      if (BitRow.has(remaining, positions[p]) && seen++ >= first) {
        listed.add(new Remaining(index.species().get(positions[p]), notKnownIn(positions[p])));
      }
    }
    return listed;
  }

  private List<Facet> notKnownIn(int position) {
    List<Facet> unknown = new ArrayList<>();
    for (Facet facet : demands.clauses().keySet()) {
      if (demands.query().keeps(facet) && !demands.keeping(facet, false).passes(position)) {
        unknown.add(facet);
      }
    }
    return unknown;
  }

  /** The counts of every facet that has something to say, in the order of {@link Facet}. */
  public Map<Facet, FacetCount> counts() {
    Map<Facet, FacetCount> counts = new EnumMap<>(Facet.class);
    for (Facet facet : Facet.values()) {
      if (demands.speaks(facet)) {
        counts.put(facet, count(facet));
      }
    }
    return counts;
  }

  private FacetCount count(Facet facet) {
    long[] others = others(facet);
    int[] live = BitRow.liveWords(others);
    int[] liveNow = BitRow.liveWords(remaining);
    List<OptionCount> options = new ArrayList<>();
    for (String option : facet.options()) {
      boolean chosen = demands.query().has(facet, option);
      options.add(new OptionCount(option, chosen, chosen
          ? passing(remaining, liveNow, demands.alone(facet, option))
          : passing(others, live, demands.with(facet, option))));
    }
    return new FacetCount(facet, count, options, notKnown(facet));
  }

  private int notKnown(Facet facet) {
    if (!demands.clauses().containsKey(facet)) {
      return 0;
    }
    long[] others = named.clone();
    demands.clauses().forEach((other, clause) -> {
      if (other != facet) {
        clause.narrow(others);
      }
    });
    int[] live = BitRow.liveWords(others);
    return passing(others, live, demands.keeping(facet, true)) - passing(others, live, demands.keeping(facet, false));
  }

  /** What would remain without the facets whose demand the facet's choice changes. */
  private long[] others(Facet facet) {
    if (demands.changedBy(facet).stream().noneMatch(demands.clauses()::containsKey)) {
      return remaining;
    }
    long[] others = named.clone();
    demands.clauses().forEach((other, clause) -> {
      if (!demands.changedBy(facet).contains(other)) {
        clause.narrow(others);
      }
    });
    return others;
  }

  private static int passing(long[] row, int[] live, Clause... clauses) {
    int passing = 0;
    for (int w : live) {
      long word = row[w];
      for (Clause clause : clauses) {
        word &= clause.word(w);
      }
      passing += Long.bitCount(word);
    }
    return passing;
  }
}
