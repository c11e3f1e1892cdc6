package guildwood.workplan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Ways to raise a plant, the surest first. How many take, how long they need and how much work one start is
 * are common practice without a source; the owner can change the share that takes.
 */
public enum Raising {
  DIVISION(90, 6, 0, 0, InSeason.SPRING, InSeason.AUTUMN),
  SUCKER(80, 10, 0, 0, InSeason.SPRING, InSeason.AUTUMN),
  TUBER(90, 2, 0, 0, InSeason.SPRING, InSeason.AUTUMN),
  BULB(90, 2, 0, 0, InSeason.AUTUMN),
  HARDWOOD_CUTTING(60, 2, 12, 12, InSeason.WINTER),
  LAYERING(80, 10, 12, 12, InSeason.SPRING),
  ROOT_CUTTING(60, 4, 12, 12, InSeason.WINTER),
  SOFTWOOD_CUTTING(50, 4, 10, 10, InSeason.SUMMER),
  SEED(40, 1, 18, 5, InSeason.AUTUMN, InSeason.SPRING),
  GRAFTING(60, 25, 15, 15, InSeason.SPRING);

  private final int takePercent;
  private final int minutes;
  private final int monthsWoody;
  private final int monthsHerb;
  private final List<InSeason> seasons;

  Raising(int takePercent, int minutes, int monthsWoody, int monthsHerb, InSeason... seasons) {
    this.takePercent = takePercent;
    this.minutes = minutes;
    this.monthsWoody = monthsWoody;
    this.monthsHerb = monthsHerb;
    this.seasons = List.of(seasons);
  }

  /** The item of the propagation trait. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Raising> ofKey(String key) {
    return Arrays.stream(values()).filter(way -> way.key().equals(key)).findFirst();
  }

  /** How many of a hundred starts become plants, where the owner says nothing else. */
  public int usualTakePercent() {
    return takePercent;
  }

  /** Work for one start. */
  public int minutes() {
    return minutes;
  }

  /** From the start to a plant that can go in. */
  public int months(boolean woody) {
    return woody ? monthsWoody : monthsHerb;
  }

  /** When to begin where the library names no season. */
  public List<InSeason> usualSeasons() {
    return seasons;
  }
}
