package guildwood.fit;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.ClassWords;
import guildwood.species.Species;
import guildwood.species.Trait;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a species bears, axis by axis, read from the statements that rule. An axis on which nothing is
 * stated is absent: not known, neither good nor bad.
 */
public record Tolerances(Map<Axis, Tolerance> byAxis) {
  public Tolerances {
    byAxis = byAxis.isEmpty() ? Map.of() : java.util.Collections.unmodifiableMap(new EnumMap<>(byAxis));
  }

  public static Tolerances of(Species species) {
    Map<Axis, Tolerance> all = new EnumMap<>(Axis.class);
    put(all, Axis.LIGHT, range(species, Axis.LIGHT, Trait.LIGHT, Trait.LIGHT_PREFERRED));
    put(all, Axis.MOISTURE, range(species, Axis.MOISTURE, Trait.MOISTURE, Trait.MOISTURE_PREFERRED));
    put(all, Axis.REACTION, range(species, Axis.REACTION, Trait.PH, Trait.PH_PREFERRED));
    put(all, Axis.FERTILITY, range(species, Axis.FERTILITY, Trait.FERTILITY, Trait.FERTILITY_PREFERRED));
    put(all, Axis.TEXTURE, textures(species));
    put(all, Axis.WINTER_COLD, species.range(Trait.COLDEST_WINTER).map(r -> atLeast(r, Axis.WINTER_COLD)));
    put(all, Axis.SEASON, species.range(Trait.FROST_FREE_DAYS).map(r -> atLeast(r, Axis.SEASON)));
    return new Tolerances(all);
  }

  public Optional<Tolerance> on(Axis axis) {
    return Optional.ofNullable(byAxis.get(axis));
  }

  private static void put(Map<Axis, Tolerance> all, Axis axis, Optional<? extends Tolerance> tolerance) {
    tolerance.ifPresent(t -> all.put(axis, t));
  }

  /**
   * A missing preferred range is taken as the tolerated one. Where only the preferred one is stated, what is
   * borne reaches further by a step of the axis: what a plant likes best is not the limit of what it bears.
   */
  private static Optional<Tolerance> range(Species species, Axis axis, Trait tolerated, Trait preferred) {
    Optional<Range> borne = species.range(tolerated);
    Optional<Range> liked = species.range(preferred);
    if (borne.isEmpty() && liked.isEmpty()) {
      return Optional.empty();
    }
    Range bears = borne.orElseGet(() -> liked.orElseThrow().widened(beyondPreferred(axis)));
    return Optional.of(Trapezoid.reconciled(bears, liked.orElse(bears)));
  }

  /** How far beyond what it prefers a plant is taken to bear, in the unit of the axis. Our own choice, no publication. */
  private static double beyondPreferred(Axis axis) {
    return axis == Axis.LIGHT ? 2 : 1;
  }

  private static Optional<Tolerance> textures(Species species) {
    List<Integer> classes = species.words(Trait.TEXTURE).stream()
        .map(word -> (int) ClassWords.texture(word).orElseThrow().min()).toList();
    return classes.isEmpty() ? Optional.empty() : Optional.of(TextureSet.of(classes));
  }

  /** Borne from a threshold up: winters no colder, seasons no shorter. Of a stated range the safe end counts. */
  private static Tolerance atLeast(Range stated, Axis axis) {
    // Coldest survived '-34 to -29' and days needed '120 to 140': the milder, longer end is the cautious reading.
    Range borne = new Range(stated.max(), Math.max(stated.max(), axis.highest()));
    return new Trapezoid(borne, borne);
  }
}
