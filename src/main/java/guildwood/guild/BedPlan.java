package guildwood.guild;

import guildwood.bed.Bed;
import guildwood.bed.Near;
import guildwood.fit.Fit;
import guildwood.kernel.Range;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A bed with all that its guild is planned from.
 *
 * @param site the bed's site
 * @param near what grows near the bed, outside it
 */
public record BedPlan(Bed bed, Site site, SpeciesLibrary library, List<Wish> wishes, Rules rules, List<Near> near) {
  public BedPlan {
    wishes = List.copyOf(wishes);
    near = List.copyOf(near);
    if (bed.siteId() != site.id()) {
      throw new IllegalArgumentException("bed " + bed.id() + " is not on site " + site.id());
    }
  }

  /** A bed near which nothing is recorded. */
  public BedPlan(Bed bed, Site site, SpeciesLibrary library, List<Wish> wishes, Rules rules) {
    this(bed, site, library, wishes, rules, List.of());
  }

  /** The conditions that hold in the bed. */
  public Map<Axis, Condition> conditions() {
    return bed.conditionsIn(site);
  }

  /**
   * The problem the composer solves: every species in use is a candidate, and so is whatever stands or is
   * pinned, even from the bin. Where more of a pinned species has come to stand than was pinned, all of it stays.
   * Whoever has a compatible partner near the bed knows of it.
   *
   * @param supply what is on hand and what a plant costs, by species id
   */
  public GuildProblem problem(Function<String, Supply> supply) {
    Map<Axis, Range> ranges = Fit.ranges(conditions());
    Candidacy candidacy = new Candidacy(ranges, site.place());
    List<Candidate> candidates = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Species species : library.species()) {
      ids.add(species.id());
      candidates.add(candidacy.of(species, supply.apply(species.id())));
    }
    Set<String> needed = new HashSet<>(rules.pinned().keySet());
    bed.standing().forEach(s -> needed.add(s.speciesId()));
    for (Species species : library.binned()) {
      if (needed.contains(species.id()) && ids.add(species.id())) {
        candidates.add(candidacy.of(species, supply.apply(species.id())));
      }
    }
    PollinationReach reach = PollinationReach.of(near, id -> library.find(id).map(s -> candidacy.of(s, Supply.UNKNOWN)));
    candidates.replaceAll(reach::seenBy);
    return GuildProblem.of(bed, ranges, candidates, wishes, rules.withPinned(pinnedOrStanding()));
  }

  private Map<String, Integer> pinnedOrStanding() {
    Map<String, Integer> pinned = new TreeMap<>(rules.pinned());
    pinned.replaceAll((id, count) -> Math.max(count, bed.standingOf(id)));
    // More than anybody can pin: they stay without it.
    pinned.values().removeIf(count -> count > Rules.MOST_PLANTS);
    return pinned;
  }
}
