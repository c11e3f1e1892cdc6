package guildwood.importing.exchange;

import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import java.io.IOException;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;

/** Reads the cells of one sheet (ECMA-376 part 1, 18.3.1). */
final class XlsxSheet {
  private static final int LETTERS = 26;
  private static final int MOST_LETTERS = 3;

  private final XmlPart xml;
  private final SharedStrings texts;
  private final List<CellFormat> formats;
  private final boolean from1904;
  private final RowGate gate;
  private long row;
  private int column;

  XlsxSheet(XmlPart xml, SharedStrings texts, List<CellFormat> formats, boolean from1904, RowGate gate) {
    this.xml = xml;
    this.texts = texts;
    this.formats = formats;
    this.from1904 = from1904;
    this.gate = gate;
  }

  void read() throws IOException {
    boolean more = true;
    while (more) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_DOCUMENT) {
        return;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.element()) {
          case "row" -> {
            row = number(xml.attribute("r"), row + 1);
            column = -1;
          }
          case "c" -> cell();
          default -> { }
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.element().equals("row")) {
          more = gate.end(row, 1);
        } else if (xml.element().equals("sheetData")) {
          xml.finish();
          return;
        }
      }
    }
  }

  private static long number(String text, long otherwise) {
    return text.matches("\\d{1,9}") ? Long.parseLong(text) : otherwise;
  }

  private void cell() throws IOException {
    column = column(xml.attribute("r"));
    String type = xml.attribute("t");
    int style = (int) number(xml.attribute("s"), -1);
    StringBuilder value = new StringBuilder();
    StringBuilder formula = new StringBuilder();
    String inline = "";
    boolean calculated = false;
    boolean emptyText = false;
    StringBuilder into = null;
    for (boolean open = true; open; ) {
      int event = xml.next();
      switch (event) {
        case XMLStreamConstants.START_ELEMENT -> {
          calculated |= xml.element().equals("f");
          emptyText |= xml.element().equals("v") && type.equals("str");
          switch (xml.element()) {
            case "v" -> into = value;
            case "f" -> into = formula;
            case "is" -> inline = RichText.read(xml);
            default -> xml.skip();
          }
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
          if (into != null) {
            xml.addText(into);
          }
        }
        case XMLStreamConstants.END_ELEMENT -> {
          open = !xml.element().equals("c");
          into = null;
        }
        case XMLStreamConstants.END_DOCUMENT -> throw new RefusedRead("damaged");
        default -> { }
      }
    }
    gate.put(row, column, cell(type, style, value.toString(), calculated && !emptyText ? "=" + formula : "", inline));
  }

  /** Letters before the number: A is 0, AA is 26. */
  private int column(String reference) {
    int letters = 0;
    int number = 0;
    while (letters < reference.length() && reference.charAt(letters) >= 'A' && reference.charAt(letters) <= 'Z') {
      number = number * LETTERS + reference.charAt(letters) - 'A' + 1;
      letters++;
      if (letters > MOST_LETTERS) {
        return column + 1;
      }
    }
    return letters == 0 ? column + 1 : number - 1;
  }

  /** @param formula whose value is not in the file; empty where there is none */
  private TableCell cell(String type, int style, String value, String formula, String inline) throws IOException {
    if (value.isEmpty() && inline.isEmpty()) {
      // A program wrote the formula and left the reckoning to others; where it is filled down, only the first cell may have it.
      return formula.isEmpty() ? TableCell.EMPTY : new TableCell(formula, Kind.ERROR);
    }
    return switch (type) {
      case "s" -> TableCell.text(texts.at((int) number(value.strip(), -1)));
      case "inlineStr" -> TableCell.text(inline.isEmpty() ? value : inline);
      case "str" -> TableCell.text(RichText.unescaped(value));
      case "b" -> new TableCell(value.strip().matches("1|true") ? "TRUE" : "FALSE", Kind.YES_NO);
      case "e" -> new TableCell(value, Kind.ERROR);
      case "d" -> new TableCell(value.replaceFirst("T00:00(:00(\\.0+)?)?Z?$", "").replace('T', ' '), Kind.DATE);
      default -> value.isEmpty() ? TableCell.text(inline)
          : (style >= 0 && style < formats.size() ? formats.get(style) : CellFormat.NUMBER).cell(value, from1904);
    };
  }
}
