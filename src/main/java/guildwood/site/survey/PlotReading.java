package guildwood.site.survey;

import guildwood.kernel.Finding;
import guildwood.species.names.NameMatch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that the plants of a plot say.
 *
 * @param readings of each axis that has values; for an axis with several systems the one that knows most of the cover
 * @param otherSystems readings by the remaining systems
 * @param unheard axes with values none of which belongs to a plant of the plot
 * @param prevalenceIndex wetland prevalence index; absent without covers, ratings, or enough of them
 * @param dominance 50/20 rule; absent without covers or ratings
 * @param names how each written name was taken, in the order written, planted ones too
 * @param notes what holds for the whole plot
 */
public record PlotReading(
    String plot,
    Map<SurveyAxis, AxisReading> readings,
    List<AxisReading> otherSystems,
    List<SurveyAxis> unheard,
    OptionalDouble prevalenceIndex,
    Optional<WetlandRules.Dominance> dominance,
    List<TakenName> names,
    List<Finding> notes) {

  /** A written name and what it is taken for in the tables together. */
  public record TakenName(String written, NameMatch match) {}

  public PlotReading {
    otherSystems = List.copyOf(otherSystems);
    unheard = List.copyOf(unheard);
    names = List.copyOf(names);
    notes = List.copyOf(notes);
  }
}
