package guildwood.site.survey;

import java.util.OptionalDouble;

/**
 * One species as found in a survey.
 *
 * @param species as the surveyor wrote it
 * @param coverPercent absolute cover; absent in a mere list of what grows there
 * @param stratum for example tree, shrub, herb; empty where strata are not told apart
 */
public record Occurrence(
    String species, OptionalDouble coverPercent, Origin origin, Stage stage, String stratum) {
  /** How it came there. A planted plant says nothing about the ground. */
  public enum Origin {
    WILD,
    PLANTED
  }

  /** How old it is. Seedlings prove little: many die before they show that the ground suits them. */
  public enum Stage {
    SEEDLING,
    MATURE,
    NOT_SAID
  }

  public Occurrence {
    if (species.isBlank()) {
      throw new IllegalArgumentException("an occurrence needs a species");
    }
    if (coverPercent.isPresent() && !(coverPercent.getAsDouble() >= 0 && Double.isFinite(coverPercent.getAsDouble()))) {
      throw new IllegalArgumentException(species + " cannot cover " + coverPercent.getAsDouble() + " %");
    }
  }

  public static Occurrence wild(String species, double coverPercent) {
    return new Occurrence(species, OptionalDouble.of(coverPercent), Origin.WILD, Stage.NOT_SAID, "");
  }

  public static Occurrence seen(String species) {
    return new Occurrence(species, OptionalDouble.empty(), Origin.WILD, Stage.NOT_SAID, "");
  }

  /** Whether it may speak for the ground: wild, and not noted as absent (cover 0). */
  public boolean speaks() {
    return origin == Origin.WILD && coverPercent.orElse(1) > 0;
  }
}
