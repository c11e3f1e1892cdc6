package guildwood.importing;

import guildwood.species.Statement;
import java.util.List;
import java.util.Locale;

/**
 * What becomes of a value.
 *
 * @param existing what the library says about the same topic, where that matters; empty otherwise
 */
public record ValueOutcome(ReadValue value, Fate fate, List<Statement> existing) {
  /** What becomes of a value. */
  public enum Fate {
    /** Nothing is stated about it yet, or its trait adds up. */
    ADDED,
    /** It is stated already, by whatever source, or by an earlier row. */
    SAME,
    /** Something else is stated; both are kept. */
    CONFLICT;

    /** Stable name in message keys. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public ValueOutcome {
    existing = List.copyOf(existing);
  }
}
