package guildwood.workplan;

import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a species is to be raised.
 *
 * @param seasons to begin in
 * @param fromLibrary whether the library names those seasons; otherwise they are the usual ones of the method
 */
public record RaisingPlan(Raising way, List<InSeason> seasons, boolean fromLibrary, int months) {
  public RaisingPlan {
    seasons = List.copyOf(seasons);
  }

  /** The surest way the library knows for a species; empty where it knows none. Seed does not keep a cultivar. */
  public static Optional<RaisingPlan> of(Species species, Layer layer) {
    boolean cultivar = species.scientificName().contains("'");
    boolean woody = layer.compareTo(Layer.CLIMBER) <= 0;
    return species.rulingItems(Trait.PROPAGATION).stream()
        .filter(statement -> Raising.ofKey(statement.item()).isPresent())
        .filter(statement -> !(cultivar && statement.item().equals(Raising.SEED.key())))
        .map(statement -> plan(statement, woody))
        .min(Comparator.comparing(RaisingPlan::way));
  }

  private static RaisingPlan plan(Statement statement, boolean woody) {
    Raising way = Raising.ofKey(statement.item()).orElseThrow();
    List<InSeason> told = ((TraitValue.InSeasons) statement.value()).seasons().stream()
        .flatMap(word -> InSeason.ofWord(word).stream()).toList();
    return new RaisingPlan(way, told.isEmpty() ? way.usualSeasons() : told, !told.isEmpty(), way.months(woody));
  }

  /** Starts to make so that enough of them become plants. */
  public static int starts(int plants, int takePercent) {
    return (int) Math.ceil(plants * 100.0 / takePercent - 1e-9);
  }
}
