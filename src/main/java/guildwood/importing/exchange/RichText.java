package guildwood.importing.exchange;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;

/** Text in runs of different looks, without the phonetic hints beside it. */
final class RichText {
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private RichText() {}

  /** Reads the element that has just begun to its end. */
  static String read(XmlPart xml) throws IOException {
    StringBuilder text = new StringBuilder();
    boolean inText = false;
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      switch (event) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (xml.element().equals("rPh")) {
            xml.skip();
          } else {
            depth++;
            inText = xml.element().equals("t");
          }
        }
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          inText = false;
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> {
          if (inText) {
            xml.addText(text);
          }
        }
        case XMLStreamConstants.END_DOCUMENT -> throw new RefusedRead("damaged");
        default -> { }
      }
    }
    return unescaped(text.toString());
  }

  /** Characters that XML cannot hold are written as _x000D_ (ECMA-376 part 1, 22.4.2.4); control characters stay as written. */
  static String unescaped(String text) {
    if (!text.contains("_x")) {
      return text;
    }
    return ESCAPED.matcher(text).replaceAll(match -> {
      char sign = (char) Integer.parseInt(match.group(1), 16);
      boolean readable = sign >= ' ' && !Character.isSurrogate(sign) || sign == '\n' || sign == '\t' || sign == '\r';
      return Matcher.quoteReplacement(readable ? String.valueOf(sign) : match.group());
    });
  }
}
