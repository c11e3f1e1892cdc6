package guildwood.species.names;

import guildwood.species.names.ScientificName.Reserve;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The small words of scientific names: ranks, reservations, author particles, hybrid signs. */
final class NameWords {
  /** Ranks below the species (ICN Art. 4, 5 and, with noth-, H.1), as written, to their usual abbreviation. */
  private static final Map<String, String> RANKS = Map.ofEntries(
      Map.entry("subsp", "subsp."), Map.entry("ssp", "subsp."), Map.entry("subspecies", "subsp."),
      Map.entry("var", "var."), Map.entry("varietas", "var."), Map.entry("variety", "var."),
      Map.entry("subvar", "subvar."), Map.entry("f", "f."), Map.entry("fo", "f."), Map.entry("forma", "f."),
      Map.entry("form", "f."), Map.entry("subf", "subf."), Map.entry("convar", "convar."),
      Map.entry("nothosubsp", "nothosubsp."), Map.entry("nothossp", "nothosubsp."),
      Map.entry("nothovar", "nothovar."), Map.entry("nothof", "nothof."));

  private static final Set<String> RANKS_OF_GENUS = Set.of("subg", "subgen", "subgenus", "sect", "section", "subsect", "ser");

  /** Words of author citations that look like epithets (ICN Art. 46, Rec. 46C to 46F). */
  private static final Set<String> PARTICLES = Set.of(
      "ex", "et", "and", "in", "apud", "de", "del", "della", "der", "den", "des", "di", "do", "dos", "du", "da", "la",
      "le", "van", "von", "vom", "zu", "zur", "ten", "ter", "af", "al", "auct", "auctt", "non", "nec", "not", "hort",
      "nom", "nomen", "cons", "rej", "sensu", "sec", "emend", "pro", "parte", "comb", "ined", "fil", "filius", "bis",
      "as", "syn", "and.", "x");

  private static final Pattern EPITHET = Pattern.compile("\\p{Ll}[\\p{Ll}]*(-[\\p{Ll}]+)*");

  private NameWords() {}

  /** A breadth word and how many words it takes. */
  record Found(Reserve reserve, int words) {}

  static boolean isHybridSign(String word) {
    return word.equals("×") || word.equals("x") || word.equals("X");
  }

  static Optional<String> rank(String word) {
    return Optional.ofNullable(RANKS.get(bare(word)));
  }

  static boolean isRankOfGenus(String word) {
    return RANKS_OF_GENUS.contains(bare(word)) && word.endsWith(".");
  }

  static boolean isOpenSpecies(String word) {
    return Set.of("sp", "spp", "species", "spec").contains(bare(word));
  }

  static boolean isDoubt(String word) {
    return Set.of("cf", "aff", "nr", "confer").contains(bare(word)) || word.equals("?");
  }

  static boolean isEpithet(String word) {
    return word.length() > 1 && EPITHET.matcher(word).matches() && !PARTICLES.contains(word)
        && !(RANKS.containsKey(word) && word.length() < 7) && !isOpenSpecies(word);
  }

  /** Words such as agg., s.l., sensu lato, s.str. at a place. */
  static Optional<Found> breadth(List<String> words, int at) {
    String one = bare(words.get(at)).replace(".", "");
    String two = at + 1 < words.size() ? one + bare(words.get(at + 1)).replace(".", "") : one;
    if (Set.of("agg", "aggr", "aggregate", "coll", "group").contains(one)) {
      return Optional.of(new Found(Reserve.WIDE, 1));
    }
    if (Set.of("sl", "slat").contains(one)) {
      return Optional.of(new Found(Reserve.WIDE, 1));
    }
    if (Set.of("sstr", "sstricto", "ss").contains(one)) {
      return Optional.of(new Found(Reserve.NARROW, 1));
    }
    if (Set.of("sensulato", "sl", "slat").contains(two)) {
      return Optional.of(new Found(Reserve.WIDE, 2));
    }
    return Set.of("sensustricto", "sstr", "ss").contains(two)
        ? Optional.of(new Found(Reserve.NARROW, 2))
        : Optional.empty();
  }

  private static String bare(String word) {
    String low = word.toLowerCase(Locale.ROOT);
    return low.endsWith(".") ? low.substring(0, low.length() - 1) : low;
  }
}
