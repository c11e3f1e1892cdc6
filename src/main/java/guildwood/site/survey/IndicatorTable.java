package guildwood.site.survey;

import guildwood.kernel.Range;
import guildwood.site.survey.IndicatorValue.Point;
import guildwood.site.survey.IndicatorValue.Tolerated;
import guildwood.species.names.NameIndex;
import guildwood.species.names.NameMatch;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All values of one source on one axis, with what they say together: the scale, the response of every
 * species, and how the flora as a whole is spread along the scale.
 */
public final class IndicatorTable {
  /** Below this many species a table says nothing of the flora as a whole. */
  private static final int FEWEST_FOR_BACKGROUND = 8;

  private final SurveyAxis axis;
  private final String system;
  private final Map<String, IndicatorValue> values;
  private final Map<String, Response> responses = new LinkedHashMap<>();
  private final Widths widths;
  private final Range scale;
  private final NameIndex names = new NameIndex();

  public IndicatorTable(SurveyAxis axis, String system, Map<String, IndicatorValue> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("no values of " + system + " on " + axis);
    }
    this.axis = axis;
    this.system = system;
    this.values = new LinkedHashMap<>(values);
    Optional<Range> known = axis.knownScale(system).filter(ends -> values.values().stream().allMatch(v -> lies(v, ends)));
    this.widths = Widths.of(List.copyOf(values.values()), known);
    values.forEach((species, value) -> responses.put(species, widths.response(value)));
    this.scale = known.orElseGet(this::scaleOfValues);
    values.keySet().forEach(names::add);
  }

  public SurveyAxis axis() {
    return axis;
  }

  public String system() {
    return system;
  }

  /** The ends of the scale: the published ones where the system is known, otherwise as far as its values reach. */
  public Range scale() {
    return scale;
  }

  /** Lets a species be found under another name. */
  public void addSynonym(String synonym, String species) {
    names.addSynonym(synonym, species);
  }

  /** The species it knows, as it writes them. */
  public Set<String> species() {
    return Collections.unmodifiableSet(values.keySet());
  }

  /** The species a written name is taken for; empty where for none. */
  public Optional<NameMatch> match(String written) {
    return names.match(written);
  }

  /** The value of a species by its name in the table; a bug where it has none. */
  public IndicatorValue value(String species) {
    IndicatorValue value = values.get(species);
    if (value == null) {
      throw new IllegalArgumentException(system + " has no " + axis + " of " + species);
    }
    return value;
  }

  /** The response curve of a species by its name in the table; a bug where it has none. */
  public Response response(String species) {
    value(species);
    return responses.get(species);
  }

  Widths widths() {
    return widths;
  }

  /**
   * How much of the flora has its place at x, up to a factor: normal with the spread of the species' centres
   * plus that of their occurrences, over an even floor. Even where the table is too small to tell.
   */
  double background(double x) {
    if (values.size() < FEWEST_FOR_BACKGROUND) {
      return 1;
    }
    double spread = Math.sqrt(widths.centreSpread() * widths.centreSpread() + widths.pooled() * widths.pooled());
    double z = (x - widths.centreMean()) / spread;
    double peak = scale.width() / (spread * Math.sqrt(2 * Math.PI));
    return 0.95 * peak * StrictMath.exp(-z * z / 2) + 0.05;
  }

  private Range scaleOfValues() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Map.Entry<String, IndicatorValue> entry : values.entrySet()) {
      if (responses.get(entry.getKey()) instanceof Response.Bell bell) {
        double beyond = widths.areRanks() && values.size() >= FEWEST_FOR_BACKGROUND ? 0.5 : 2 * bell.tolerance();
        low = Math.min(low, bell.optimum() - beyond);
        high = Math.max(high, bell.optimum() + beyond);
      } else if (responses.get(entry.getKey()) instanceof Response.Plateau plateau) {
        low = Math.min(low, plateau.from());
        high = Math.max(high, plateau.to());
      }
    }
    return new Range(low, high);
  }

  private static boolean lies(IndicatorValue value, Range ends) {
    return value instanceof Tolerated tolerated
        ? ends.overlaps(tolerated.range())
        : value instanceof Point point && ends.contains(point.value());
  }
}
