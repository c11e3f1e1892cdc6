package guildwood.importing;

import guildwood.kernel.Finding;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in a name column and is no scientific name, although it could be read as one: totals, titles of a
 * section, common names, an epithet without its genus, two names at once. Such rows are not brought and say why.
 */
final class NotAName {
  private static final Pattern TOTAL = Pattern.compile("(sub ?|grand ?)?totals?\\b.*|sum\\b.*|count\\b.*|average\\b.*|mean\\b.*|summe\\b.*|gesamt\\b.*");

  /** None of these words begins the name of a genus. */
  private static final Set<String> ENGLISH = Set.of("red", "white", "black", "yellow", "blue", "green", "purple", "pink", "orange", "golden", "silver",
      "scarlet", "wild", "common", "garden", "american", "european", "japanese", "chinese", "korean", "siberian", "russian", "english", "asian",
      "eastern", "western", "northern", "southern", "sweet", "sour", "bitter", "creeping", "climbing", "trailing", "dwarf", "giant", "false", "new",
      "old", "wood", "woodland", "swamp", "marsh", "river", "mountain", "prairie", "meadow", "beach", "sand", "highbush", "lowbush", "hardy", "perennial",
      "annual", "showy", "smooth", "hairy", "prickly", "sugar", "stinging", "rough", "tall", "low", "great", "little", "virginia", "canada", "some");

  private static final Set<String> OF_SECTIONS = Set.of("small", "medium", "large", "tall", "low", "native", "evergreen", "deciduous", "fruit", "nut", "shade",
      "other", "more", "edible", "woody", "herbaceous", "full", "sun", "spring", "summer", "flowering");

  private static final Pattern SECTION = Pattern.compile("(trees?|shrubs?|vines|climbers|herbs|perennials|annuals|biennials|bulbs|grasses|ferns|plants|"
      + "ground ?covers|vegetables|fruits|nuts|berries|bushes|hedges|wildflowers|flowers|conifers|evergreens|groundlayer|understory|canopy|notes?|end of)\\b.*");

  private static final Pattern ONE_SMALL_WORD = Pattern.compile("\\p{Ll}[\\p{Ll}-]+( (var|subsp|ssp|f|cv)\\.? .*| ['‘’\"].*)?");
  private static final Pattern TWO_NAMES = Pattern.compile(".*\\p{Ll}{3,}\\.?\\s*(/|\\bor\\b|\\band\\b|&)\\s*\\p{Lu}[\\p{Ll}.]+\\s+"
      + "(?!(ssp|subsp|var|forma|nom|non|auct|emend|sensu|hort|cv|ex)\\b)\\p{Ll}{3,}.*");

  /** Words that stand in sentences, never in names; authors have only and, ex, in and et. */
  private static final Pattern SENTENCE = Pattern.compile(".*\\b(the|of|for|is|are|was|to|with|from|see|has|grows|this|these|not|but)\\b.*");

  /** 'Comfrey (Symphytum officinale)'. */
  private static final Pattern ASIDE = Pattern.compile("([^()]+)\\(([^()]+)\\)");

  private NotAName() {}

  /** Why the text in a name column cannot be taken for a name; empty where it can be tried. */
  static Optional<Finding> reason(String written) {
    String folded = Words.folded(written);
    if (TOTAL.matcher(folded).matches()) {
      return Optional.of(Finding.of("import.total-row", ""));
    }
    if (isSection(folded)) {
      return Optional.of(Finding.of("import.section-row", "", written));
    }
    if (ONE_SMALL_WORD.matcher(written.strip()).matches()) {
      return Optional.of(Finding.of("import.name-one-word", "", written));
    }
    if (SENTENCE.matcher(withoutCultivar(written)).matches()) {
      return Optional.of(Finding.of("import.name-words", "", written));
    }
    Matcher aside = ASIDE.matcher(written.strip());
    boolean latinAside = aside.matches() && !NameShape.isBinomial(aside.group(1)) && NameShape.isScientific(aside.group(2));
    if (latinAside || isEnglish(written)) {
      return Optional.of(Finding.of("import.name-common", "", written));
    }
    return TWO_NAMES.matcher(written).matches() && !written.contains("×") && !written.matches(".*\\s[xX]\\s.*")
        ? Optional.of(Finding.of("import.two-names", "", written)) : Optional.empty();
  }

  /** Cultivars may be called anything. */
  private static String withoutCultivar(String written) {
    return Words.folded(written.replaceAll("['‘\"“].*['’\"”]|\\([^)]*\\)", " "));
  }

  /** 'Small trees', 'SHRUBS & VINES', 'Perennials (sun)'. */
  private static boolean isSection(String folded) {
    String rest = folded;
    for (int at = rest.indexOf(' '); at > 0 && OF_SECTIONS.contains(rest.substring(0, at)); at = rest.indexOf(' ')) {
      rest = rest.substring(at + 1);
    }
    return SECTION.matcher(rest).matches();
  }

  /** Whether a text begins as common names do: Red maple, Wild ginger. */
  static boolean isEnglish(String written) {
    List<String> words = List.of(Words.folded(written).split(" "));
    return words.size() > 1 && ENGLISH.contains(words.get(0));
  }
}
