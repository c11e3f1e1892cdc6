package guildwood.choosing;

import guildwood.species.Evidence;
import guildwood.species.WetlandRegion;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the visitor asks of the library. Immutable; every change gives another query.
 *
 * @param text words that must begin words of a species' names; may be empty
 * @param chosen options by facet, in the facet's own order; facets without a choice are absent
 * @param keepsNotKnown facets in which a species stays whose answer is not known
 * @param evidence how well a function must be supported to count as yes; FOLK takes every claim
 * @param region where wetland ratings are read
 */
public record Query(
    String text,
    Map<Facet, Set<String>> chosen,
    Set<Facet> keepsNotKnown,
    Evidence evidence,
    Optional<WetlandRegion> region) {
  /** Asks nothing: the whole library. */
  public static final Query NOTHING = new Query("", Map.of(), Set.of(), Evidence.FOLK, Optional.empty());

  public Query {
    Map<Facet, Set<String>> ordered = new EnumMap<>(Facet.class);
    chosen.forEach((facet, options) -> {
      if (!facet.options().containsAll(options)) {
        throw new IllegalArgumentException(facet + " has no options " + options);
      }
      if (!options.isEmpty()) {
        Set<String> inOrder = new LinkedHashSet<>(facet.options());
        inOrder.retainAll(options);
        ordered.put(facet, Collections.unmodifiableSet(inOrder));
      }
    });
    chosen = Collections.unmodifiableMap(ordered);
    EnumSet<Facet> keeps = EnumSet.noneOf(Facet.class);
    keeps.addAll(keepsNotKnown);
    keepsNotKnown = Collections.unmodifiableSet(keeps);
  }

  /** Whether a claim's evidence reaches a level; a claim without a grade is worth as much as folk. */
  public static boolean supports(Optional<Evidence> evidence, Evidence atLeast) {
    return evidence.orElse(Evidence.FOLK).ordinal() <= atLeast.ordinal();
  }

  public Set<String> chosen(Facet facet) {
    return chosen.getOrDefault(facet, Set.of());
  }

  public boolean has(Facet facet, String option) {
    return chosen(facet).contains(option);
  }

  public boolean keeps(Facet facet) {
    return keepsNotKnown.contains(facet);
  }

  public Query with(Facet facet, String option) {
    Set<String> options = new LinkedHashSet<>(chosen(facet));
    options.add(option);
    return with(facet, options);
  }

  public Query without(Facet facet, String option) {
    Set<String> options = new LinkedHashSet<>(chosen(facet));
    options.remove(option);
    return with(facet, options);
  }

  public Query with(Facet facet, Set<String> options) {
    Map<Facet, Set<String>> changed = new EnumMap<>(Facet.class);
    changed.putAll(chosen);
    changed.put(facet, options);
    return new Query(text, changed, keepsNotKnown, evidence, region);
  }

  public Query withText(String words) {
    return new Query(words, chosen, keepsNotKnown, evidence, region);
  }

  public Query keeping(Set<Facet> facets) {
    return new Query(text, chosen, facets, evidence, region);
  }

  public Query withEvidence(Evidence atLeast) {
    return new Query(text, chosen, keepsNotKnown, atLeast, region);
  }

  public Query inRegion(Optional<WetlandRegion> where) {
    return new Query(text, chosen, keepsNotKnown, evidence, where);
  }
}
