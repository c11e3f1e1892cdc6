package guildwood.workplan;

import java.time.LocalDate;

/**
 * Work that was done.
 *
 * @param taskKey of the {@link WorkTask} at that time
 * @param words what it was, as the plan called it then
 * @param amount counted as the task was
 * @param speciesId empty where it was about no plant
 * @param bedId 0 where it belonged to no bed
 */
public record Done(long id, long siteId, String taskKey, WorkKind kind, String words, double amount, LocalDate on, String speciesId,
    long bedId) {
  public static final int LONGEST_WORDS = 300;

  public Done {
    if (!(amount > 0) || words.length() > LONGEST_WORDS) {
      throw new IllegalArgumentException(amount + " of " + taskKey);
    }
  }

  /** Plants that are on hand now and were not before; fewer where negative. */
  public int broughtToHand() {
    return switch (kind) {
      case BUY_PLANTS, TAKE_UP_PLANTS -> (int) amount;
      case PLANT_FIRST, PLANT, PLANT_TENDER, PLANT_COVER -> -(int) amount;
      default -> 0;
    };
  }

  /** Plants the owner could propagate and now has, or not. */
  public int noLongerToPropagate() {
    return kind == WorkKind.TAKE_UP_PLANTS ? (int) amount : 0;
  }

  /** Plants that stand in the bed from now on. */
  public int standing() {
    return kind.isPlanting() ? (int) amount : 0;
  }
}
