package guildwood.guild;

import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Ready-made sets of wishes to start from; all of them can be changed. The words are at {@code wishes.<key>}. */
public enum StartingWishes {
  /** A young fruit tree wants nitrogen, mulch, pollinators and covered ground. */
  FEED_A_FRUIT_TREE,
  /** Ground first: nitrogen, mulch, deep roots, cover. */
  BUILD_SOIL_FIRST,
  /** Something in bloom in every month from March to October. */
  POLLINATORS_THAW_TO_FROST,
  /** Food in many parts and months. */
  FOOD_ALL_SEASON,
  /** Hold a wet corner and make it useful. */
  WET_CORNER,
  /** Covered ground and little else to do. */
  LEAST_WORK;

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public List<Wish> wishes() {
    return switch (this) {
      case FEED_A_FRUIT_TREE -> List.of(
          Wish.function(GuildFunction.NITROGEN_FIXER, 8), Wish.function(GuildFunction.MULCH_MAKER, 6),
          Wish.function(GuildFunction.POLLINATOR_FORAGE, 6), Wish.function(GuildFunction.GROUND_COVER, 6),
          Wish.function(GuildFunction.BENEFICIAL_INSECTS, 4), Wish.bloom(Month.MAY, 3));
      case BUILD_SOIL_FIRST -> List.of(
          Wish.function(GuildFunction.NITROGEN_FIXER, 9), Wish.function(GuildFunction.MULCH_MAKER, 8),
          Wish.function(GuildFunction.DEEP_ROOTED, 5), Wish.ground(60, 7), Wish.function(GuildFunction.SOIL_HOLDING, 4));
      case POLLINATORS_THAW_TO_FROST -> blooms();
      case FOOD_ALL_SEASON -> List.of(
          Wish.harvest("fruit", 7), Wish.harvest("nut", 4), Wish.harvest("leaf", 4), Wish.harvest("root", 3),
          Wish.harvestIn(Month.MAY, 2), Wish.harvestIn(Month.JULY, 3), Wish.harvestIn(Month.SEPTEMBER, 3),
          Wish.function(GuildFunction.POLLINATOR_FORAGE, 3));
      case WET_CORNER -> List.of(
          Wish.function(GuildFunction.SOIL_HOLDING, 7), Wish.layer(Layer.SHRUB, 4), Wish.layer(Layer.HERB, 4),
          Wish.function(GuildFunction.POLLINATOR_FORAGE, 4), Wish.function(GuildFunction.BIRD_FOOD, 3));
      case LEAST_WORK -> List.of(
          Wish.ground(80, 9), Wish.function(GuildFunction.NITROGEN_FIXER, 5),
          Wish.function(GuildFunction.MULCH_MAKER, 3), Wish.layer(Layer.SHRUB, 3));
    };
  }

  private static List<Wish> blooms() {
    List<Wish> wishes = new ArrayList<>();
    wishes.add(Wish.function(GuildFunction.POLLINATOR_FORAGE, 8));
    for (Month month = Month.MARCH; month.compareTo(Month.OCTOBER) <= 0; month = month.plus(1)) {
      wishes.add(Wish.bloom(month, 4));
    }
    return List.copyOf(wishes);
  }
}
