package guildwood.importing.exchange;

import guildwood.importing.exchange.TextFormat.CellStyle;
import guildwood.importing.exchange.TextFormat.Quotes;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/**
 * Which sign tells the cells of a text file apart, and what its quote marks mean: the pair under which the first
 * rows come out most alike. A comma inside numbers or sentences stands in some rows and not in others.
 */
final class SeparatorGuess {
  /** Where two signs do equally well, the earlier is taken: text holds commas more often than tabs. */
  private static final List<Character> USUAL = List.of('\t', ';', '|', ',');

  private static final List<Character> RARE = List.of('\u001F', '\u00A6', '^', '~', '#', '!', ':');
  private static final Pattern SPACE_BEFORE_QUOTE = Pattern.compile("[;,|\\t][ \\u00A0]+\"");
  private static final int MOST_RECORDS = 500;
  private static final double ENOUGH = 0.6;
  private static final double NEARLY_ALL = 0.97;

  private final String sample;
  private final boolean cut;

  private SeparatorGuess(String sample, boolean cut) {
    this.sample = sample;
    this.cut = cut;
  }

  /**
   * Decides.
   *
   * @param sample the beginning of the text
   * @param cut whether there is more of it
   */
  static CellStyle of(String sample, boolean cut) {
    return new SeparatorGuess(sample, cut).decide();
  }

  /** What a file's first line says of itself. */
  static Optional<Character> named(String sample) {
    boolean named = sample.length() > 5 && sample.regionMatches(true, 0, "sep=", 0, 4)
        && "\r\n".indexOf(sample.charAt(5)) >= 0 && "\r\n\"\\".indexOf(sample.charAt(4)) < 0;
    return named ? Optional.of(sample.charAt(4)) : Optional.empty();
  }

  /** Where the separator is known. */
  static CellStyle withSeparator(char separator, String sample, boolean cut) {
    SeparatorGuess guess = new SeparatorGuess(sample, cut);
    return guess.quotesToTry().stream().filter(quotes -> guess.suits(separator, quotes)).findFirst()
        .map(quotes -> new CellStyle(separator, quotes)).orElse(new CellStyle(separator, Quotes.DOUBLED));
  }

  private boolean suits(char separator, Quotes quotes) {
    Shape shape = shape(separator, quotes);
    return shape.whole() && (quotes != Quotes.PLAIN || separator == CellStyle.NONE || shape.unquoted() && shape.score() > NEARLY_ALL);
  }

  private CellStyle decide() {
    for (Quotes quotes : quotesToTry()) {
      Optional<CellStyle> usual = best(USUAL, quotes, quotes == Quotes.PLAIN ? NEARLY_ALL : ENOUGH);
      if (usual.isPresent() && suits(usual.get().separator(), quotes)) {
        return usual.get();
      }
    }
    // A table whose quote marks are in disorder: reading it will say in which row.
    return best(RARE, Quotes.DOUBLED, NEARLY_ALL)
        .or(() -> best(USUAL, Quotes.PLAIN, ENOUGH).map(style -> new CellStyle(style.separator(), Quotes.DOUBLED)))
        .orElseGet(() -> withSeparator(CellStyle.NONE, sample, cut));
  }

  private List<Quotes> quotesToTry() {
    if (sample.indexOf('"') < 0) {
      return List.of(Quotes.DOUBLED);
    }
    Quotes first = SPACE_BEFORE_QUOTE.matcher(sample).find() ? Quotes.SPACED : Quotes.DOUBLED;
    return List.of(first, Quotes.BACKSLASH, Quotes.PLAIN);
  }

  private Optional<CellStyle> best(List<Character> separators, Quotes quotes, double enough) {
    double bestScore = enough;
    Optional<CellStyle> best = Optional.empty();
    for (char separator : separators) {
      if (sample.indexOf(separator) < 0) {
        continue;
      }
      Shape shape = shape(separator, quotes);
      if (shape.whole() && shape.score() > bestScore) {
        bestScore = shape.score();
        best = Optional.of(new CellStyle(separator, quotes));
      }
    }
    return best;
  }

  private Shape shape(char separator, Quotes quotes) {
    Map<Integer, Integer> widths = new HashMap<>();
    int rows = 0;
    int several = 0;
    int first = 0;
    boolean whole = true;
    boolean unquoted = true;
    long end = 0;
    Sample text = new Sample(sample);
    try (TextRecords records = new TextRecords(text, new CellStyle(separator, quotes))) {
      for (CSVRecord record = records.next(); record != null && rows < MOST_RECORDS; record = records.next()) {
        end = record.getCharacterPosition();
        if (record.size() == 1 && record.get(0).isBlank()) {
          continue;
        }
        first = rows == 0 ? record.size() : first;
        rows++;
        several += record.size() > 1 ? 1 : 0;
        // Marks on both sides of a cell are quoting, and such a file is not to be taken for one without.
        unquoted &= quotes != Quotes.PLAIN || record.stream().noneMatch(cell -> cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\""));
        widths.merge(record.size(), 1, Integer::sum);
      }
    } catch (IOException e) {
      // Where the sample was cut, so may be its last record; but not half of all there is.
      whole = cut && text.readToEnd && end > sample.length() / 2;
    }
    int mode = widths.entrySet().stream().filter(e -> e.getKey() > 1).mapToInt(Map.Entry::getValue).max().orElse(0);
    return new Shape(whole, unquoted, rows, several, mode, widths.getOrDefault(first, 0), first);
  }

  /**
   * How a sample comes out under one sign.
   *
   * @param whole whether it could be read
   * @param unquoted whether quote marks, where they are to be text, do not look like quoting
   * @param several rows of more than one cell
   * @param alike rows of the commonest width
   * @param likeFirst rows as wide as the first, which mostly is the header
   */
  private record Shape(boolean whole, boolean unquoted, int rows, int several, int alike, int likeFirst, int first) {
    double score() {
      if (rows == 0 || alike == 0) {
        return 0;
      }
      double header = first > 1 ? (double) likeFirst / rows : 0;
      return (0.4 * several + 0.5 * alike) / rows + 0.1 * header;
    }
  }

  /** Knows whether it was read to its end. */
  private static final class Sample extends StringReader {
    private boolean readToEnd;

    Sample(String text) {
      super(text);
    }

    @Override
    public int read(char[] buffer, int from, int length) throws IOException {
      int read = super.read(buffer, from, length);
      readToEnd |= read < length;
      return read;
    }
  }
}
