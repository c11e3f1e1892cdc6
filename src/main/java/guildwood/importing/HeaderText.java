package guildwood.importing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A header taken apart: its words, and the unit that stands in it.
 *
 * @param words folded, without the unit
 * @param unit of the bare numbers below; absent where the header names none
 */
record HeaderText(List<String> words, Optional<ColumnUnit> unit) {
  private static final Map<String, ColumnUnit> UNITS = Map.ofEntries(
      Map.entry("m", ColumnUnit.METRES), Map.entry("metre", ColumnUnit.METRES), Map.entry("metres", ColumnUnit.METRES),
      Map.entry("meter", ColumnUnit.METRES), Map.entry("meters", ColumnUnit.METRES), Map.entry("mtr", ColumnUnit.METRES),
      Map.entry("cm", ColumnUnit.CENTIMETRES), Map.entry("cms", ColumnUnit.CENTIMETRES),
      Map.entry("centimetres", ColumnUnit.CENTIMETRES), Map.entry("centimeters", ColumnUnit.CENTIMETRES),
      Map.entry("mm", ColumnUnit.MILLIMETRES), Map.entry("millimetres", ColumnUnit.MILLIMETRES),
      Map.entry("millimeters", ColumnUnit.MILLIMETRES), Map.entry("ft", ColumnUnit.FEET), Map.entry("feet", ColumnUnit.FEET),
      Map.entry("foot", ColumnUnit.FEET), Map.entry("in", ColumnUnit.INCHES), Map.entry("inch", ColumnUnit.INCHES),
      Map.entry("inches", ColumnUnit.INCHES), Map.entry("f", ColumnUnit.FAHRENHEIT), Map.entry("degf", ColumnUnit.FAHRENHEIT),
      Map.entry("fahrenheit", ColumnUnit.FAHRENHEIT), Map.entry("c", ColumnUnit.CELSIUS), Map.entry("degc", ColumnUnit.CELSIUS),
      Map.entry("celsius", ColumnUnit.CELSIUS), Map.entry("h", ColumnUnit.HOURS), Map.entry("hrs", ColumnUnit.HOURS),
      Map.entry("hr", ColumnUnit.HOURS), Map.entry("hours", ColumnUnit.HOURS), Map.entry("days", ColumnUnit.DAYS),
      Map.entry("d", ColumnUnit.DAYS));

  /** Units that are words or letters of their own right: they are units only where they stand apart. */
  private static final Set<String> ONLY_APART = Set.of("in", "m", "c", "f", "h", "d", "days", "hours", "hr", "hrs", "foot");

  private static final Pattern APART = Pattern.compile("[(\\[{]([^)\\]}]*)[)\\]}]|[,;:/]\\s*([^,;:/()\\[\\]]+)$");
  private static final Pattern CAMEL = Pattern.compile("(?<=\\p{Ll}{2})(?=\\p{Lu})");
  private static final Set<String> FILLERS = Set.of("mature", "maturity", "at", "plant", "plants", "average", "avg", "typical", "usual", "the",
      "of", "expected", "adult", "ultimate", "range", "approx", "approximate", "required", "mean", "final", "when", "grown", "species",
      "your", "our", "my", "s", "a", "day", "per", "yes", "no", "y", "n", "x", "degrees", "deg", "and", "or", "est", "estimated", "total",
      "product", "is", "good", "class", "category", "rating", "code", "list", "comma", "separated", "optional", "months", "month");

  HeaderText {
    words = List.copyOf(words);
  }

  static HeaderText read(String header) {
    return read(header, "");
  }

  /** @param unitsCell what stands below the header in a row of units; may be empty */
  static HeaderText read(String header, String unitsCell) {
    String plain = header.replace('_', ' ').replace("″", "\"").replace("′", "'").replace("pH", " ph ");
    String text = CAMEL.matcher(plain).replaceAll(" ");
    Optional<ColumnUnit> unit = unitOf(unitsCell);
    Matcher apart = APART.matcher(text);
    StringBuilder rest = new StringBuilder();
    int from = 0;
    while (apart.find()) {
      String inside = apart.group(1) == null ? apart.group(2) : apart.group(1);
      Optional<ColumnUnit> here = unitOf(inside);
      if (here.isPresent()) {
        unit = unit.isPresent() ? unit : here;
        rest.append(text, from, apart.start()).append(' ');
        from = apart.end();
      }
    }
    rest.append(text.substring(from));
    List<String> words = new ArrayList<>(Arrays.asList(Words.folded(rest.toString()).split(" ")));
    words.removeIf(String::isEmpty);
    return withUnitOfWords(words, unit);
  }

  /** 'height ft', 'temperature minimum f', 'height cm': the last word is the unit. */
  private static HeaderText withUnitOfWords(List<String> words, Optional<ColumnUnit> found) {
    Optional<ColumnUnit> unit = found;
    for (int i = words.size() - 1; i > 0 && unit.isEmpty(); i--) {
      boolean last = i == words.size() - 1;
      ColumnUnit named = UNITS.get(words.get(i));
      if (named != null && (last || !ONLY_APART.contains(words.get(i))) && !(words.get(i).equals("days") && words.get(i - 1).equals("free"))) {
        unit = Optional.of(named);
        words.remove(i);
        if (words.get(i - 1).equals("in") && i > 1) {
          words.remove(i - 1);
        }
      }
    }
    return new HeaderText(words, unit);
  }

  /** The unit a text names, and nothing else; empty where it names none or two. */
  static Optional<ColumnUnit> unitOf(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (plain.equals("'") || plain.equals("\"")) {
      return Optional.of(plain.equals("'") ? ColumnUnit.FEET : ColumnUnit.INCHES);
    }
    String folded = Words.folded(plain).replaceAll("^(in|deg|degrees|degree|°) (?=.)", "");
    if (folded.matches("(usda )?zones?|usda|hardiness zones?")) {
      return Optional.of(ColumnUnit.ZONE);
    }
    return Optional.ofNullable(UNITS.get(folded));
  }

  /** The phrase as it stands, then without the words that add nothing. */
  List<String> phrases() {
    String whole = String.join(" ", words);
    List<String> kept = words.stream().filter(word -> !FILLERS.contains(word)).toList();
    String bare = String.join(" ", kept);
    return bare.isEmpty() || bare.equals(whole) ? List.of(whole) : List.of(whole, bare);
  }

  /** The same without its words for the one or the other end of a range; empty where it has none. */
  Optional<HeaderText> withoutEnd(Set<String> ends) {
    List<String> kept = words.stream().filter(word -> !ends.contains(word)).toList();
    return kept.isEmpty() || kept.size() == words.size() ? Optional.empty() : Optional.of(new HeaderText(kept, unit));
  }
}
