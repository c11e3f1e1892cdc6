package guildwood.drawing;

import guildwood.fit.Verdict;
import guildwood.kernel.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The light in a bed in one year, by the sun model.
 *
 * @param groundHours mean on the bed's ground, hours of direct sun a day in the mean of the season
 * @param openHours the same with the guild's plants gone
 * @param topHours by species the hours that reach the tops of its plants, darkest and brightest
 */
public record YearLight(double groundHours, double openHours, Map<String, Range> topHours) {
  public YearLight {
    topHours = Map.copyOf(topHours);
  }

  /** Those plants of the guild that get too little light in this year: their fit on light falls below borderline. */
  public List<Shaded> shaded(Arrangement arrangement) {
    return arrangement.kinds().stream().flatMap(kind -> shaded(kind).stream()).toList();
  }

  private Optional<Shaded> shaded(PlantKind kind) {
    Range hours = topHours.get(kind.speciesId());
    if (hours == null || kind.light().isEmpty()) {
      return Optional.empty();
    }
    double least = kind.light().get().tolerated().min();
    boolean tooDark = hours.min() < kind.light().get().preferred().min()
        && kind.light().get().mean(Range.of(hours.min())) < Verdict.BORDERLINE_FROM;
    return tooDark ? Optional.of(new Shaded(kind.speciesId(), hours, least)) : Optional.empty();
  }

  /**
   * A species with a plant that gets too little light.
   *
   * @param hours at its plants' tops, darkest and brightest
   * @param needsHours the least it bears
   */
  public record Shaded(String speciesId, Range hours, double needsHours) {}
}
