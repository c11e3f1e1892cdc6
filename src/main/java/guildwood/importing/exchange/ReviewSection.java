package guildwood.importing.exchange;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The parts of a review. */
public enum ReviewSection {
  /** Names that are nearly one of the library. */
  NEAR(ReviewedName.class),
  /** Cells, and whole rows, that cannot be read. */
  UNREAD(ReviewedCell.class),
  /** Values of which the library says otherwise. */
  CONFLICTS(ReviewedConflict.class),
  /** Rows whose species is new to the library, with their values. */
  NEW(ReviewedRow.class),
  /** Rows whose species is in the library. */
  KNOWN(ReviewedRow.class),
  /** Cells that are kept as notes. */
  NOTES(ReviewedCell.class);

  private final Class<?> type;

  ReviewSection(Class<?> type) {
    this.type = type;
  }

  Class<?> type() {
    return type;
  }

  /** Stable name in addresses, files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<ReviewSection> ofKey(String key) {
    return Arrays.stream(values()).filter(s -> s.key().equals(key)).findFirst();
  }
}
