package guildwood.importing;

import java.util.Locale;

/** What becomes of a row. */
public enum RowFate {
  /** Its species is new to the library. */
  NEW,
  /** New to the library, and an earlier row of the table names it already. */
  NEW_AGAIN,
  /** Its species is in the library: the same name, or one of its synonyms. */
  KNOWN,
  /** New to the library unless somebody says it is one of those with nearly the same name. */
  NEAR,
  /** It names no species that can be kept, or one that lies in the bin. */
  REFUSED,
  /** Somebody said to leave it out. */
  LEFT_OUT;

  public boolean isBrought() {
    return this != REFUSED && this != LEFT_OUT;
  }

  /** Stable name in message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
