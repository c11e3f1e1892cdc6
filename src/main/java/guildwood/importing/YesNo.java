package guildwood.importing;

import java.util.Optional;
import java.util.Set;

/** Yes, no, and that nothing is known, as people write them in cells. */
final class YesNo {
  private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1", "✓", "✔", "☑", "√", "•", "●", "■", "xx", "xxx", "ok",
      "ja", "oui", "si", "sí", "yep", "on", "*", "+", "++", "+++", "wahr", "vrai", "1.0");
  private static final Set<String> NO = Set.of("no", "false", "0", "✗", "✘", "☐", "nope", "nein", "non", "off", "falsch", "faux", "0.0");
  private static final Set<String> NOTHING = Set.of("-", "–", "—", "−", "--", "---", "n/a", "na", "\\n", "<null>", "(null)", "n.a.", "n.a", "#n/a", "none", "null", "nil",
      "?", "??", "???", "unknown", "tbd", "tba", ".", "..", "...", "…", "not known", "no data", "nd", "n.d.", "k.a.", "k. a.", "(blank)",
      "blank", "not applicable", "not available", "unk", "dk", "don't know", "dont know", "nan");

  private YesNo() {}

  /** Yes or no; 'n' is a no here. */
  static Optional<Boolean> read(String cell) {
    String text = cell.strip().toLowerCase(java.util.Locale.ROOT);
    if (YES.contains(text)) {
      return Optional.of(true);
    }
    return NO.contains(text) || text.equals("n") ? Optional.of(false) : Optional.empty();
  }

  /** Whether the cell says that nothing is known, or that there is nothing. */
  static boolean saysNothing(String cell) {
    return NOTHING.contains(cell.strip().toLowerCase(java.util.Locale.ROOT));
  }
}
