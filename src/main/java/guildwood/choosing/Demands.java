package guildwood.choosing;

import guildwood.species.Evidence;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A query as clauses over the rows of an index, and as it would be after one more choice. */
final class Demands {
  private static final int[] PLAIN = {0};
  private static final int[] NOWHERE = {};

  private final FacetIndex index;
  private final Query query;
  private final Optional<BedFits> bed;
  private final Map<Facet, Clause> clauses = new EnumMap<>(Facet.class);

  Demands(FacetIndex index, Query query, Optional<BedFits> bed) {
    this.index = index;
    this.query = query;
    this.bed = bed;
    for (Facet facet : query.chosen().keySet()) {
      clause(facet, query, query.keeps(facet)).ifPresent(clause -> clauses.put(facet, clause));
    }
  }

  Query query() {
    return query;
  }

  /** The facets that narrow anything now, with what they demand. */
  Map<Facet, Clause> clauses() {
    return clauses;
  }

  /** Whether a facet has anything to count: a bed to judge, a region to look in. */
  boolean speaks(Facet facet) {
    return variants(facet, query).length > 0;
  }

  /** The facets whose demand changes when the choice in one facet does. */
  Set<Facet> changedBy(Facet facet) {
    return facet == Facet.HARVEST && clauses.containsKey(Facet.HARVEST_MONTH)
        ? Set.of(Facet.HARVEST, Facet.HARVEST_MONTH)
        : Set.of(facet);
  }

  /** What the changed facets would demand with one more option chosen. */
  Clause[] with(Facet facet, String option) {
    Query more = query.with(facet, option);
    return changedBy(facet).stream()
        .flatMap(changed -> clause(changed, more, query.keeps(changed)).stream())
        .toArray(Clause[]::new);
  }

  /** What one option of a facet demands by itself. */
  Clause alone(Facet facet, String option) {
    return clause(facet, query.with(facet, Set.of(option)), query.keeps(facet)).orElseThrow();
  }

  /** What the facet would demand if 'not known' stayed, or no longer did. */
  Clause keeping(Facet facet, boolean keep) {
    return clause(facet, query, keep).orElseThrow();
  }

  private Optional<Clause> clause(Facet facet, Query asked, boolean keep) {
    int[] variants = variants(facet, asked);
    Set<String> options = asked.chosen(facet);
    if (variants.length == 0 || options.isEmpty()) {
      return Optional.empty();
    }
    FacetRows rows = facet == Facet.VERDICT ? bed.orElseThrow().rows() : index.rows(facet);
    return Optional.of(rows.clause(variants, options, keep));
  }

  private int[] variants(Facet facet, Query asked) {
    return switch (facet) {
      case VERDICT -> bed.isPresent() ? PLAIN : NOWHERE;
      case FUNCTION -> new int[] {Evidence.FOLK.ordinal() - asked.evidence().ordinal()};
      case WETLAND -> asked.region().map(region -> new int[] {region.ordinal()}).orElse(NOWHERE);
      case HARVEST_MONTH -> asked.chosen(Facet.HARVEST).isEmpty()
          ? PLAIN
          : asked.chosen(Facet.HARVEST).stream().mapToInt(part -> 1 + Facet.HARVEST.options().indexOf(part)).toArray();
      default -> PLAIN;
    };
  }
}
