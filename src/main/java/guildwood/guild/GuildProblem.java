package guildwood.guild;

import guildwood.bed.Bed;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All a guild is composed from and judged by.
 *
 * @param areaM2 of the bed
 * @param conditions of the bed; axes nobody speaks about are absent
 * @param candidates every species of the library, those that do not fit included: gaps are explained from
 *     them. Kept in the order of their ids. Standing and pinned species must be among them.
 * @param wishes at most one for each thing asked
 * @param standing plants that stand already, by species id
 */
public record GuildProblem(
    double areaM2,
    Map<Axis, Range> conditions,
    List<Candidate> candidates,
    List<Wish> wishes,
    Rules rules,
    SortedMap<String, Integer> standing) {
  public GuildProblem {
    if (!(areaM2 >= Bed.SMALLEST_AREA_M2 && areaM2 <= Bed.LARGEST_AREA_M2)) {
      throw new IllegalArgumentException("a bed of " + areaM2 + " m2");
    }
    conditions = Map.copyOf(conditions);
    List<Candidate> sorted = new ArrayList<>(candidates);
    sorted.sort(Comparator.comparing(Candidate::speciesId));
    candidates = List.copyOf(sorted);
    wishes = List.copyOf(wishes);
    standing = Collections.unmodifiableSortedMap(new TreeMap<>(standing));
    checkSpecies(candidates, standing, rules);
    checkWishes(wishes);
  }

  /** A problem with the standing plants of a bed; several entries of one species add up. */
  public static GuildProblem of(
      Bed bed, Map<Axis, Range> conditions, List<Candidate> candidates, List<Wish> wishes, Rules rules) {
    SortedMap<String, Integer> standing = new TreeMap<>();
    bed.standing().forEach(s -> standing.merge(s.speciesId(), s.count(), Integer::sum));
    return new GuildProblem(bed.areaM2(), conditions, candidates, wishes, rules, standing);
  }

  public Optional<Candidate> find(String speciesId) {
    int low = 0;
    int high = candidates.size() - 1;
    while (low <= high) {
      int middle = (low + high) / 2;
      int order = candidates.get(middle).speciesId().compareTo(speciesId);
      if (order == 0) {
        return Optional.of(candidates.get(middle));
      }
      if (order < 0) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return Optional.empty();
  }

  /** The bed's ground, square decimetres, rounded down. */
  public int areaDm2() {
    return (int) Math.floor(areaM2 * 100 + 1e-6);
  }

  /**
   * Ground that the crowns of a layer may cover, square decimetres: the whole bed, but for climbers,
   * which need something to climb on, a sixth of it, or 2 square metres in small beds. Our own choice, no
   * publication.
   */
  public int roomDm2(Layer layer) {
    return layer == Layer.CLIMBER ? Math.max(areaDm2() / 6, Math.min(areaDm2(), 200)) : areaDm2();
  }

  public int standing(String speciesId) {
    return standing.getOrDefault(speciesId, 0);
  }

  /** The guild of nothing but what stands there. */
  public Guild standingGuild() {
    return Guild.of(standing);
  }

  /** The guild of what is in whatever else comes: standing and pinned plants. */
  public Guild baseGuild() {
    SortedMap<String, Integer> fixed = new TreeMap<>(standing);
    fixed.putAll(rules.pinned());
    return new Guild(fixed);
  }

  public GuildProblem withRules(Rules other) {
    return new GuildProblem(areaM2, conditions, candidates, wishes, other, standing);
  }

  public GuildProblem withWishes(List<Wish> others) {
    return new GuildProblem(areaM2, conditions, candidates, others, rules, standing);
  }

  public GuildProblem withArea(double m2) {
    return new GuildProblem(m2, conditions, candidates, wishes, rules, standing);
  }

  public GuildProblem withCandidates(List<Candidate> others) {
    return new GuildProblem(areaM2, conditions, others, wishes, rules, standing);
  }

  /** With another condition on one axis; every candidate's fit follows. */
  public GuildProblem withCondition(Axis axis, Range range) {
    Map<Axis, Range> changed = new TreeMap<>(conditions);
    changed.put(axis, range);
    List<Candidate> refitted = candidates.stream().map(c -> c.under(changed)).toList();
    return new GuildProblem(areaM2, changed, refitted, wishes, rules, standing);
  }

  private static void checkSpecies(List<Candidate> candidates, Map<String, Integer> standing, Rules rules) {
    Set<String> ids = new HashSet<>();
    for (Candidate candidate : candidates) {
      if (!ids.add(candidate.speciesId())) {
        throw new IllegalArgumentException("twice among the candidates: " + candidate.speciesId());
      }
    }
    standing.forEach((id, count) -> {
      if (count < 1 || !ids.contains(id)) {
        throw new IllegalArgumentException(count + " plants of " + id + " stand there. Maybe it is no candidate.");
      }
    });
    rules.pinned().forEach((id, count) -> {
      if (!ids.contains(id) || count < standing.getOrDefault(id, 0)) {
        throw new IllegalArgumentException(count + " plants of " + id
            + " pinned. Maybe it is no candidate, or more of it stand there.");
      }
    });
  }

  private static void checkWishes(List<Wish> wishes) {
    for (int i = 0; i < wishes.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (wishes.get(i).asksSameAs(wishes.get(j))) {
          throw new IllegalArgumentException("wished twice: " + wishes.get(i).key());
        }
      }
    }
  }
}
