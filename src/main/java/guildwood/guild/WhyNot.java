package guildwood.guild;

import java.util.List;
import java.util.Optional;

/**
 * Why a species is not in a guild.
 *
 * @param exclusions rules that keep it out whatever else is in the guild; empty where none does
 * @param obstacles what it would break however the rest makes room; empty where it can come in
 * @param guild the best guild found with it; absent where it cannot come in
 * @param changeMilli what that guild scores more (or less, where negative) than the one asked about, thousandths
 *     of a point; 0 where absent
 */
public record WhyNot(
    String speciesId, Outcome outcome, List<RuleBreach> exclusions, List<RuleBreach> obstacles,
    Optional<Guild> guild, int changeMilli) {

  /** The answer in a word. */
  public enum Outcome {
    ALREADY_IN,
    EXCLUDED,
    NO_ROOM,
    WOULD_COST,
    NO_DIFFERENCE,
    WOULD_GAIN
  }

  public WhyNot {
    exclusions = List.copyOf(exclusions);
    obstacles = List.copyOf(obstacles);
  }
}
