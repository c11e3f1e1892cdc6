package guildwood.guild;

import guildwood.fit.Stated;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.Trait;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A few invented plants, stated as an owner would, and a bed for them. */
final class Plants {
  /** Sunny, moist, slightly acid. */
  static final Map<Axis, Range> BED = Map.of(
      Axis.LIGHT, Range.of(7), Axis.MOISTURE, Range.of(3), Axis.REACTION, Range.of(6.2));

  private Plants() {}

  static Stated plant(String name, String layer, String crown) {
    return Stated.species(name).with(Trait.LIGHT, "4..16").with(Trait.MOISTURE, "dry..wet").with(Trait.PH, "5.5..7.5")
        .with(Trait.LAYER, layer).with(Trait.CROWN, crown);
  }

  static Stated doing(Stated plant, String function, Evidence evidence) {
    return plant.with(Trait.FUNCTION, function, "yes", Optional.of(evidence));
  }

  static Candidate candidate(Stated plant) {
    return candidate(plant.make());
  }

  static Candidate candidate(Species species) {
    return new Candidacy(BED, "US-WI").of(species, Supply.UNKNOWN);
  }

  static GuildProblem bed(double areaM2, List<Wish> wishes, Candidate... candidates) {
    return new GuildProblem(areaM2, BED, List.of(candidates), wishes, Rules.forArea(areaM2),
        new java.util.TreeMap<>());
  }
}
