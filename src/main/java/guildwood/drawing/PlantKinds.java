package guildwood.drawing;

import guildwood.guild.Candidate;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Stature;
import guildwood.species.Axis;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the species of a guild as they are drawn. What has no layer or is in no library cannot be drawn. */
public final class PlantKinds {
  private PlantKinds() {}

  /** The kinds of a guild, in the order of an arrangement. */
  public static List<PlantKind> of(Guild guild, GuildProblem problem, SpeciesLibrary library) {
    List<PlantKind> kinds = new ArrayList<>();
    guild.counts().forEach((id, count) -> problem.find(id).filter(c -> c.stature().isPresent()).ifPresent(candidate ->
        kinds.add(of(candidate, count, Math.min(count, problem.standing(id)), library.find(id)))));
    kinds.sort(Arrangement.IN_ORDER);
    return kinds;
  }

  static PlantKind of(Candidate candidate, int count, int standing, Optional<Species> species) {
    Stature stature = candidate.stature().orElseThrow();
    Optional<GrowthRate> rate = species.flatMap(s -> s.word(Trait.GROWTH_RATE)).map(GrowthRate::ofKey);
    boolean harvested = !candidate.services().harvest().isEmpty() || species.map(Species::offersFood).orElse(false);
    boolean needsPartner = candidate.manners().partner().isNeeded() && !candidate.manners().partnerNear();
    return new PlantKind(candidate.speciesId(), candidate.name(), count, standing, stature.layer(),
        2 * Math.sqrt(stature.crownDm2() / 100.0 / Math.PI), stature.heightM().orElse(usualHeightM(stature.layer())),
        stature.heightM().isEmpty(), rate.orElse(GrowthRate.MEDIUM), rate.isEmpty(), harvested, candidate.manners().needsSun(),
        needsPartner, candidate.kinship(), candidate.tolerances().on(Axis.LIGHT), stature.shadePercent());
  }

  /** Height where nobody states one, metres. Common practice, no source; the pages say so. */
  private static double usualHeightM(Layer layer) {
    return switch (layer) {
      case TALL_TREE -> 15;
      case SMALL_TREE -> 6;
      case SHRUB -> 1.8;
      case CLIMBER -> 2.5;
      case HERB -> 0.6;
      case GROUND_COVER -> 0.2;
      case ROOT -> 0.4;
    };
  }
}
