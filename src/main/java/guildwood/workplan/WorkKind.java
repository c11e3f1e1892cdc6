package guildwood.workplan;

import java.util.Locale;

/** Kinds of work, in the order of what must come first. */
public enum WorkKind {
  /** Ask where lines lie underground, ahead of the first digging. */
  ASK_ABOUT_LINES,
  COVER_PATH,
  COVER_BED,
  /** Cuttings, divisions, seed. */
  START_PLANTS,
  /** Take up what was raised, ready to go in. */
  TAKE_UP_PLANTS,
  BUY_PLANTS,
  /** Trees, and whatever shelters the bed or builds its soil. */
  PLANT_FIRST,
  PLANT,
  /** What frost would kill in its first spring. */
  PLANT_TENDER,
  /** Ground covers close the gaps last. */
  PLANT_COVER,
  /** Every week until the first autumn frost. */
  WATER;

  /** Stable name in the database, in calendars and in message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public boolean isPlanting() {
    return this == PLANT_FIRST || this == PLANT || this == PLANT_TENDER || this == PLANT_COVER;
  }

  /** Whether it happens once a week instead of once; nobody ticks it off. */
  public boolean isRepeated() {
    return this == WATER;
  }
}
