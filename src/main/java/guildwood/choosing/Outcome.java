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
  /** Those of them that would remain even if 'not known' stayed nowhere. */
  private final long[] certain;
  private final int count;

  Outcome(FacetIndex index, Demands demands, long[] named, Optional<BedFits> bed) {
    this.index = index;
    this.demands = demands;
    this.named = named;
    this.bed = bed;
    this.remaining = named.clone();
    demands.clauses().values().forEach(clause -> clause.narrow(remaining));
    this.count = BitRow.count(remaining);
    this.certain = remaining.clone();
    for (Facet facet : demands.clauses().keySet()) {
      if (demands.query().keeps(facet)) {
        demands.keeping(facet, false).narrow(certain);
      }
    }
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
   * Some of what remains. Species whose answers are known come first, in the order asked for; then, in
   * the same order, those that only stay because 'not known' does.
   *
   * @param first position of the first one to give, from 0
   */
  public List<Remaining> list(Order order, int first, int most) {
    int[] positions = order == Order.FIT
        ? bed.map(BedFits::bestFirst).orElseGet(() -> index.orders().by(Order.NAME))
        : index.orders().by(order);
    List<Remaining> listed = new ArrayList<>();
    int seen = add(listed, positions, certain, 0, first, most);
    if (listed.size() < most && seen < count) {
      long[] uncertain = remaining.clone();
      for (int w = 0; w < uncertain.length; w++) {
        uncertain[w] &= ~certain[w];
      }
      add(listed, positions, uncertain, seen, first, most);
    }
    return listed;
  }

  /** Adds the species of a row from the {@code first} on, having seen some already; returns how many it has seen then. */
  private int add(List<Remaining> listed, int[] positions, long[] row, int seenBefore, int first, int most) {
    int seen = seenBefore;
    for (int p = 0; p < positions.length && listed.size() < most; p++) {
      if (BitRow.has(row, positions[p]) && seen++ >= first) {
        listed.add(new Remaining(index.species().get(positions[p]), notKnownIn(positions[p])));
      }
    }
    return seen;
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
