package guildwood.importing;

import guildwood.kernel.Finding;
import guildwood.species.SpeciesNames;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Common names, families and synonyms as cells hold them. */
final class NameCells {
  private static final String ANY_LATIN_NAME = "Aa";

  private NameCells() {}

  /** Names in a cell; commas part them too where no separator is named. */
  static List<String> list(String text, String separator) {
    String pattern = separator.isEmpty() ? text.contains(";") ? "[;\\n\\r|]" : "[,;|\\n\\r/]" : Pattern.quote(separator);
    return Arrays.stream(text.split(pattern)).map(t -> t.replaceAll("\\p{Cntrl}+|\\s+", " ").strip()).filter(t -> !t.isEmpty()).distinct().toList();
  }

  static String family(String text) {
    String name = text.strip().replaceAll("\\s*\\(.*\\)$", "");
    return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  /** Why the cell cannot be kept as such names; empty where it can. */
  static Optional<Finding> findings(Meaning.Kind kind, String text, String separator) {
    String joined = String.join("; ", list(text, separator));
    return SpeciesNames.read(ANY_LATIN_NAME, kind == Meaning.Kind.COMMON_NAMES ? joined : "", kind == Meaning.Kind.FAMILY ? family(text) : "",
        kind == Meaning.Kind.SYNONYMS ? joined : "").findings().stream().findFirst();
  }
}
