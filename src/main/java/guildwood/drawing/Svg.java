package guildwood.drawing;

import java.util.Locale;

/** SVG text in the making; numbers to the hundredth of a millimetre. No style or script, for pages with a strict content policy. */
final class Svg {
  private static final double NARROW = 0.3;
  private static final double WIDE = 0.9;

  private final StringBuilder text = new StringBuilder();

  void add(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  /** A line of text that takes exactly the width reckoned for it, whatever letters the reader's machine has. */
  void line(double x, double y, double sizeMm, String words, String more) {
    add("<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" textLength=\"%.2f\" lengthAdjust=\"spacingAndGlyphs\"%s>%s</text>",
        x, y, sizeMm, widthMm(words, sizeMm), more.isEmpty() ? "" : " " + more, escaped(words));
  }

  /** How wide a line is set: near what common sans-serif letters take. */
  static double widthMm(String words, double sizeMm) {
    return sizeMm * words.codePoints().mapToDouble(Svg::em).sum();
  }

  private static double em(int letter) {
    if ("ijlI.,:;'|!ftr()[] -’".indexOf(letter) >= 0) {
      return NARROW;
    }
    if ("mwMW@%—".indexOf(letter) >= 0 || letter > 0x2E80) {
      return letter > 0x2E80 ? 1 : WIDE;
    }
    return Character.isUpperCase(letter) ? 0.68 : 0.55;
  }

  static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
