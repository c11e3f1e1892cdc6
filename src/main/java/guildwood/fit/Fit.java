package guildwood.fit;

import guildwood.kernel.Range;
import guildwood.site.Condition;
import guildwood.species.Axis;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How well a species suits a place: the fit on every axis known on both sides, the lowest of which rules
 * (law of the minimum), and apart from them what is not known.
 *
 * @param axes known on both sides, in the order of {@link Axis}
 * @param speciesSilent axes on which nothing is stated about the species
 * @param placeSilent axes on which nothing is stated about the place; an axis may be in both lists
 * @param limiting the lowest of {@code axes}; of equals the first in the order of {@link Axis}; absent where no axis is known
 */
public record Fit(
    List<AxisFit> axes,
    List<Axis> speciesSilent,
    List<Axis> placeSilent,
    Optional<AxisFit> limiting,
    Verdict verdict) {

  /** One of these must be known on both sides before a species can be said to fit. */
  public static final Set<Axis> DECISIVE = java.util.Collections.unmodifiableSet(
      EnumSet.of(Axis.LIGHT, Axis.MOISTURE, Axis.REACTION, Axis.WINTER_COLD));

  /**
   * On these a species must not be silent where the place speaks: nobody would plant, on the strength of
   * the light alone, what may drown or freeze there.
   */
  public static final Set<Axis> VITAL = java.util.Collections.unmodifiableSet(
      EnumSet.of(Axis.LIGHT, Axis.MOISTURE, Axis.WINTER_COLD));

  public Fit {
    axes = List.copyOf(axes);
    speciesSilent = List.copyOf(speciesSilent);
    placeSilent = List.copyOf(placeSilent);
  }

  /** The fit of a species to a bed's conditions, as {@code bed.conditionsIn(site)} gives them. */
  public static Fit of(Tolerances species, Map<Axis, Condition> conditions) {
    return ofRanges(species, ranges(conditions));
  }

  /** The same with the bare ranges. */
  public static Fit ofRanges(Tolerances species, Map<Axis, Range> place) {
    List<AxisFit> axes = new ArrayList<>();
    List<Axis> speciesSilent = new ArrayList<>();
    List<Axis> placeSilent = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      Optional<Tolerance> tolerance = species.on(axis);
      Range offered = place.get(axis);
      if (tolerance.isEmpty()) {
        speciesSilent.add(axis);
      }
      if (offered == null) {
        placeSilent.add(axis);
      }
      if (tolerance.isPresent() && offered != null) {
        axes.add(AxisFit.of(axis, offered, tolerance.get()));
      }
    }
    Optional<AxisFit> limiting = lowest(axes);
    boolean vitalUnsaid = speciesSilent.stream().anyMatch(a -> VITAL.contains(a) && place.containsKey(a));
    return new Fit(axes, speciesSilent, placeSilent, limiting, verdict(axes, limiting, vitalUnsaid));
  }

  /** Conditions as bare ranges. */
  public static Map<Axis, Range> ranges(Map<Axis, Condition> conditions) {
    Map<Axis, Range> ranges = new EnumMap<>(Axis.class);
    conditions.forEach((axis, condition) -> ranges.put(axis, condition.range()));
    return ranges;
  }

  /** The lowest fit of the known axes, 0 to 1; absent where no axis is known on both sides. */
  public OptionalDouble overall() {
    return limiting.map(l -> OptionalDouble.of(l.value())).orElse(OptionalDouble.empty());
  }

  /** The axes on which the place speaks and the species is silent, in the order of {@link Axis}. */
  public List<Axis> unsaid() {
    return speciesSilent.stream().filter(a -> !placeSilent.contains(a)).toList();
  }

  public Optional<AxisFit> on(Axis axis) {
    return axes.stream().filter(a -> a.axis() == axis).findFirst();
  }

  /** The axes that fail by themselves, in the order of {@link Axis}. */
  public List<AxisFit> failing() {
    return axes.stream().filter(a -> a.verdict() == Verdict.DOES_NOT_FIT).toList();
  }

  private static Optional<AxisFit> lowest(List<AxisFit> axes) {
    AxisFit lowest = null;
    for (AxisFit axis : axes) {
      lowest = lowest == null || axis.value() < lowest.value() ? axis : lowest;
    }
    return Optional.ofNullable(lowest);
  }

  private static Verdict verdict(List<AxisFit> axes, Optional<AxisFit> limiting, boolean vitalUnsaid) {
    Verdict ofKnown = limiting.map(AxisFit::verdict).orElse(Verdict.NOT_KNOWN);
    boolean decided = axes.stream().anyMatch(a -> DECISIVE.contains(a.axis()));
    return (decided && !vitalUnsaid) || ofKnown == Verdict.DOES_NOT_FIT ? ofKnown : Verdict.NOT_KNOWN;
  }
}
