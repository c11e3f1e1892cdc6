package guildwood.importing;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Whether cells look like scientific names or families. */
final class NameShape {
  private static final Pattern BINOMIAL = Pattern.compile("[×x]?\\s?\\p{Lu}[\\p{Ll}ë-]{2,}\\s+([×x]\\s?)?(\\p{Ll}{3,}[\\p{Ll}-]*|spp?\\.?).*");
  private static final Pattern LATIN_ENDING =
      Pattern.compile(".*\\b\\p{Ll}+(us|um|a|is|ii|i|ae|ens|ans|os|ides|oides|ensis|e|or|ix|ax|ex|on|er|as|es|spp?\\.?)\\b.*");
  private static final int FEWEST = 2;

  private NameShape() {}

  static double shareOfScientific(List<TableRow> rows, int column) {
    return share(rows, column, text -> isScientific(text));
  }

  static boolean isBinomial(String text) {
    return BINOMIAL.matcher(text).matches();
  }

  static double shareOfEpithets(List<TableRow> rows, int column) {
    return share(rows, column, text -> text.matches("([×xX]\\s?)?\\p{Ll}[\\p{Ll}-]{2,}"));
  }

  /** Genus with a capital, epithet without, and an ending as Latin has it: 'Red maple' has none. */
  static boolean isScientific(String written) {
    boolean shouted = written.contains(" ") && written.replaceFirst("^[x×]\\s?", "").equals(written.replaceFirst("^[x×]\\s?", "").toUpperCase(Locale.ROOT));
    String text = shouted && written.length() > 3
        ? written.replaceFirst("^([x×]\\s?)?(\\p{Lu})(?s).*", "$1$2") + written.replaceFirst("^([x×]\\s?)?\\p{Lu}", "").toLowerCase(Locale.ROOT) : written;
    String[] words = text.split("\\s+");
    int epithet = words.length > 2 && words[1].matches("[×x]") ? 2 : 1;
    return BINOMIAL.matcher(text).matches() && !NotAName.isEnglish(text) && words.length > epithet && LATIN_ENDING.matcher(words[epithet]).matches()
        && !words[epithet].matches("(tree|maple|apple|rose|pine|berry|purple|white|pole|cone|house|bee|vine|mane|lace|grape|lime|sage|olive|maize)");
  }

  private static double share(List<TableRow> rows, int column, java.util.function.Predicate<String> test) {
    List<String> texts = rows.stream().map(r -> r.cell(column).text().strip()).filter(t -> !t.isEmpty()).toList();
    return texts.size() < FEWEST ? 0 : (double) texts.stream().filter(test).count() / texts.size();
  }
}
