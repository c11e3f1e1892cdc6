package guildwood.workplan;

import java.util.Locale;

/** What an amount of work is counted in. */
public enum Count {
  /** Done or not. */
  ONCE,
  PLANTS,
  /** Cuttings, divisions, seeds. */
  STARTS,
  CUBIC_METRES,
  SHEETS;

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  boolean isWhole() {
    return this != CUBIC_METRES;
  }
}
