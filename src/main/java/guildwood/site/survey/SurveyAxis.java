package guildwood.site.survey;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What plants are asked about. */
public enum SurveyAxis {
  LIGHT(Axis.LIGHT),
  MOISTURE(Axis.MOISTURE),
  REACTION(Axis.REACTION),
  /** Productivity of the ground, not nitrogen in the soil: Schaffers & Sykora 2000, J. Veg. Sci. 11:225. */
  FERTILITY(Axis.FERTILITY),
  /** Regional wetland rating as a number, 1 (OBL) to 5 (UPL). */
  WETNESS(null);

  /** The system name of wetland ratings. */
  public static final String WETLAND_RATING = "wetland-rating";

  /** The system name of values on the axes of the beds themselves. */
  public static final String OWN_AXES = "axis";

  private final Axis axis;

  SurveyAxis(Axis axis) {
    this.axis = axis;
  }

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The axis of beds it speaks about; wetness has none of its own. */
  public Optional<Axis> axis() {
    return Optional.ofNullable(axis);
  }

  /**
   * The ends of a scale that is known by name; empty for others, whose ends are read off their values.
   *
   * <p>Ellenberg: L, R, N 1 to 9, F 1 to 12 (Thesaurus of Plant Characteristics TOP779; Ecopedia). EIVE 1.0: 0 to
   * 10 (Dengler et al. 2023). Own axes: light in hours of direct sun, at most 16; pH 3.5 to 9.0, the ends of
   * the NRCS classes that soils under plants fall into.
   */
  public Optional<Range> knownScale(String system) {
    String name = system.toLowerCase(Locale.ROOT).strip();
    if (name.equals(WETLAND_RATING) && this == WETNESS) {
      return Optional.of(new Range(1, 5));
    }
    if (name.startsWith("ellenberg") && this != WETNESS) {
      return Optional.of(new Range(1, this == MOISTURE ? 12 : 9));
    }
    if (name.startsWith("eive") && this != WETNESS) {
      return Optional.of(new Range(0, 10));
    }
    return name.equals(OWN_AXES) ? Optional.ofNullable(ownScale()) : Optional.empty();
  }

  private Range ownScale() {
    return switch (this) {
      case LIGHT -> new Range(0, 16);
      case MOISTURE -> new Range(Axis.MOISTURE.lowest(), Axis.MOISTURE.highest());
      case REACTION -> new Range(3.5, 9);
      case FERTILITY -> new Range(Axis.FERTILITY.lowest(), Axis.FERTILITY.highest());
      case WETNESS -> null;
    };
  }

  public static Optional<SurveyAxis> ofKey(String key) {
    return Arrays.stream(values()).filter(a -> a.key().equals(key)).findFirst();
  }

  public static List<String> keys() {
    return Arrays.stream(values()).map(SurveyAxis::key).toList();
  }
}
