package guildwood.guild;

import guildwood.species.Axis;
import java.util.List;

/**
 * A wish that a guild leaves unmet, why, and what would close it.
 *
 * @param closers the single smallest changes, re-solved, the one that brings most points first; may be empty
 */
public record Gap(Wish wish, Reason reason, List<Closer> closers) {
  public Gap {
    closers = List.copyOf(closers);
  }

  /** Why the guild does not meet the wish. The first that holds, in the order given here. */
  public sealed interface Reason {

    /** Nobody in the library provides it. */
    record NobodyInLibrary() implements Reason {}

    /**
     * Those who provide it fail on the site.
     *
     * @param misses the nearest first: by number of failing axes, then by fit
     * @param species how many there are in all
     */
    record FailsOnSite(List<SiteMiss> misses, int species) implements Reason {
      public FailsOnSite {
        misses = List.copyOf(misses);
      }
    }

    /**
     * Some suit the site, but the owner's own rules exclude each of them.
     *
     * @param rules what excludes those nearest to coming in, fewest rules first
     * @param species how many there are in all
     */
    record ExcludedByRules(List<RuleBreach> rules, int species) implements Reason {
      public ExcludedByRules {
        rules = List.copyOf(rules);
      }
    }

    /**
     * They may come in, but beside what must stay there is no room, light, money or peace for any.
     *
     * @param obstacles what the easiest of them would break
     */
    record NoRoom(String speciesId, List<RuleBreach> obstacles) implements Reason {
      public NoRoom {
        obstacles = List.copyOf(obstacles);
      }
    }

    /**
     * Some could come in. In a composed guild what would have to leave for them is worth more; a guild made
     * by hand may simply have left them out.
     *
     * @param speciesId the one that would do best
     * @param changeMilli what the score would change by with it in and at most two others out, thousandths of a point
     */
    record CouldComeIn(String speciesId, int changeMilli) implements Reason {}

    /**
     * Less of the ground is covered than was wished.
     *
     * @param coveredPermille of the bed, thousandths
     * @param speciesId the one that is easiest to have more of, or to begin with
     * @param obstacles what that would break beside the guild as it is; nothing where there is simply no more of it in
     */
    record GroundShort(int coveredPermille, String speciesId, List<RuleBreach> obstacles) implements Reason {
      public GroundShort {
        obstacles = List.copyOf(obstacles);
      }
    }
  }

  /**
   * How a species misses a site.
   *
   * @param axis the axis it misses most
   * @param fitPermille its fit there, thousandths
   * @param shortfall how far the bed would have to move, in the unit of the axis
   * @param failingAxes how many axes it fails on
   */
  public record SiteMiss(String speciesId, Axis axis, int fitPermille, double shortfall, int failingAxes) {}
}
