package guildwood.site.survey;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was found growing on one plot.
 *
 * @param plot what the surveyor calls it
 * @param plotSizeM2 absent where the plot was not measured out
 */
public record Survey(String plot, Optional<LocalDate> date, OptionalDouble plotSizeM2, List<Occurrence> occurrences) {
  /** Cover of a species that is noted without one among others that have it: the mid-point of class +. */
  static final double TRACE_PERCENT = 0.1;

  public Survey {
    occurrences = List.copyOf(occurrences);
    if (plotSizeM2.isPresent() && !(plotSizeM2.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a plot of " + plotSizeM2.getAsDouble() + " m2");
    }
  }

  public static Survey of(String plot, List<Occurrence> occurrences) {
    return new Survey(plot, Optional.empty(), OptionalDouble.empty(), occurrences);
  }

  /** Those that may speak, in the order written. */
  public List<Occurrence> speaking() {
    return occurrences.stream().filter(Occurrence::speaks).toList();
  }

  /** A mere list of species: nobody noted a cover. */
  public boolean isList() {
    return speaking().stream().noneMatch(o -> o.coverPercent().isPresent());
  }

  /** Cover to reckon with: as noted; in a mere list 1 for each; a trace where one was forgotten. */
  double amount(Occurrence occurrence) {
    return isList() ? 1 : occurrence.coverPercent().orElse(TRACE_PERCENT);
  }
}
