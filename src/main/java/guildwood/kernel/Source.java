package guildwood.kernel;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where a value comes from.
 *
 * @param id short key, lower case letters, digits and hyphens
 * @param kind how far it can be trusted as evidence
 * @param author person or agency; empty for common practice
 * @param title title of the publication or table
 * @param year year of publication, absent where none is given
 * @param locator page, table, section or DOI inside it; may be empty
 */
public record Source(String id, Kind kind, String author, String title, OptionalInt year, String locator) {
  public static final String OWN_EXPERIENCE = "own-experience";
  public static final String COMMON_PRACTICE = "common-practice";

  public static final int LONGEST_AUTHOR = 300;
  public static final int LONGEST_TITLE = 500;
  public static final int LONGEST_LOCATOR = 300;

  /** Kinds of source, from the strongest to the weakest. */
  public enum Kind {
    REGULATION,
    PUBLICATION,
    AGENCY_TABLE,
    OWN_EXPERIENCE,
    HEARSAY,
    COMMON_PRACTICE;

    /** Stable name in files and message keys. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Kind> ofKey(String key) {
      return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }
  }

  public Source {
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("not a source id: " + id);
    }
    if (title.isBlank()) {
      throw new IllegalArgumentException("source " + id + " has no title");
    }
  }
}
