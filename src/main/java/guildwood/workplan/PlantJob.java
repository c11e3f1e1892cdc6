package guildwood.workplan;

import guildwood.bed.Bed;
import guildwood.guild.Provision;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.species.CautionKind;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plants of one species that a bed's guild asks for.
 *
 * @param layer the uppermost it fills
 * @param winterC coldest winter of the bed, degrees C; absent where not known
 * @param cautions that hold at the place
 */
public record PlantJob(Bed bed, Species species, Layer layer, Provision provision, Optional<Range> winterC, Set<CautionKind> cautions) {
  /** Half a hardiness zone, 5 degrees F: closer to its limit than this, a plant wants a summer to root before its first winter. */
  private static final double CLOSE_TO_LIMIT_C = 5 / 1.8;

  public PlantJob {
    cautions = Set.copyOf(cautions);
  }

  /** Which turn it goes in at. */
  WorkKind turn() {
    if (isTender()) {
      return WorkKind.PLANT_TENDER;
    }
    if (layer == Layer.GROUND_COVER) {
      return WorkKind.PLANT_COVER;
    }
    boolean first = layer.compareTo(Layer.SMALL_TREE) <= 0 || does(GuildFunction.WIND_SHELTER) || does(GuildFunction.NITROGEN_FIXER);
    return first ? WorkKind.PLANT_FIRST : WorkKind.PLANT;
  }

  private boolean isTender() {
    boolean annual = species.word(Trait.DURATION).filter("annual"::equals).isPresent();
    Optional<Range> survives = species.range(Trait.COLDEST_WINTER);
    boolean atItsLimit = survives.isPresent() && winterC.isPresent()
        && survives.get().min() > winterC.get().min() - CLOSE_TO_LIMIT_C;
    return annual || atItsLimit;
  }

  private boolean does(GuildFunction function) {
    return species.does(function).orElse(false);
  }

  boolean isWoody() {
    return layer.compareTo(Layer.CLIMBER) <= 0;
  }

  InSeason season() {
    return isTender() ? InSeason.TENDER : isWoody() ? InSeason.DORMANT : InSeason.HARDY;
  }

  /** What to take care of when it is handled. */
  List<Finding> care() {
    List<Finding> care = new ArrayList<>();
    if (cautions.contains(CautionKind.LISTED) || cautions.contains(CautionKind.PERMIT)) {
      care.add(Finding.of("work.law", ""));
    }
    if (cautions.contains(CautionKind.THORNS)) {
      care.add(Finding.of("work.thorns", ""));
    }
    if (cautions.contains(CautionKind.TOXIC) || cautions.contains(CautionKind.SKIN_IRRITANT)) {
      care.add(Finding.of("work.toxic", ""));
    }
    if (layer.compareTo(Layer.SMALL_TREE) <= 0) {
      care.add(Finding.of("work.overhead", ""));
    }
    return care;
  }
}
