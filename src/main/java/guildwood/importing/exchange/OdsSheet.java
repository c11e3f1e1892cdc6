package guildwood.importing.exchange;

import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import java.io.IOException;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;

/**
 * Reads the rows of one table element (OpenDocument 1.3 part 3, 9.1). Rows and cells may stand for millions like
 * themselves; empty ones are counted, not made.
 */
final class OdsSheet {
  /** Not part of what a cell says: comments, drawings, forms, tables in cells. */
  private static final Set<String> BESIDE =
      Set.of("annotation", "shapes", "forms", "frame", "custom-shape", "g", "table", "named-expressions", "ruby-text", "detective");

  private static final Pattern SHOWN_NUMBER = Pattern.compile("(?s)(.*?)[-+\u2212]?(\\d(?:.*\\d)?)(.*?)");
  /** Half of the last digit on show, and the noise of reckoning. */
  private static final double ROUNDING = 0.501;

  private static final Pattern TIME = Pattern.compile("PT(\\d{1,6})H(\\d{1,2})M(\\d{1,2})([.,]\\d+)?S");

  private final XmlPart xml;
  private final RowGate gate;
  private long row = 1;
  private long column;

  OdsSheet(XmlPart xml, RowGate gate) {
    this.xml = xml;
    this.gate = gate;
  }

  /** From behind the table's start tag to its end, or until there is enough. */
  void read() throws IOException {
    long times = 1;
    while (true) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        String element = xml.element();
        if (element.equals("table-row")) {
          times = repeated(xml.attribute("number-rows-repeated"));
          column = 0;
        } else if (element.equals("table-cell") || element.equals("covered-table-cell")) {
          cell();
        } else if (BESIDE.contains(element)) {
          xml.skip();
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.element().equals("table")) {
          xml.finish();
          return;
        }
        if (xml.element().equals("table-row")) {
          if (!gate.end(row, times)) {
            return;
          }
          row += times;
        }
      } else if (event == XMLStreamConstants.END_DOCUMENT) {
        throw new RefusedRead("damaged");
      }
    }
  }

  private static long repeated(String text) {
    return text.matches("[1-9]\\d{0,8}") ? Long.parseLong(text) : 1;
  }

  private void cell() throws IOException {
    long times = 1;
    Value value = new Value();
    for (int i = xml.attributes() - 1; i >= 0; i--) {
      if (xml.attributeName(i).equals("number-columns-repeated")) {
        times = repeated(xml.attributeValue(i));
      } else {
        value.take(xml.attributeName(i), xml.attributeValue(i));
      }
    }
    TableCell cell = value.cell(text());
    for (long i = 0; i < times && !cell.isBlank(); i++) {
      gate.put(row, column + i, cell);
    }
    column += times;
  }

  /** The paragraphs of the cell, to its end. */
  private String text() throws IOException {
    StringBuilder text = new StringBuilder();
    int paragraphs = 0;
    int inParagraph = 0;
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      switch (event) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (BESIDE.contains(xml.element())) {
            xml.skip();
            break;
          }
          depth++;
          if (xml.element().equals("p") || xml.element().equals("h")) {
            inParagraph = depth;
            text.append(paragraphs++ == 0 ? "" : "\n");
          }
          space(text);
        }
        case XMLStreamConstants.END_ELEMENT -> {
          inParagraph = depth == inParagraph ? 0 : inParagraph;
          depth--;
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> {
          if (inParagraph > 0) {
            xml.addText(text);
          }
        }
        case XMLStreamConstants.END_DOCUMENT -> throw new RefusedRead("damaged");
        default -> { }
      }
    }
    return text.toString();
  }

  /** White space that is written as elements. */
  private void space(StringBuilder text) throws RefusedRead {
    switch (xml.element()) {
      case "s" -> {
        String count = xml.attribute("c");
        text.append(" ".repeat(count.matches("\\d{1,4}") ? Integer.parseInt(count) : 1));
      }
      case "tab" -> text.append('\t');
      case "line-break" -> text.append('\n');
      default -> { }
    }
  }

  /** What the attributes of a cell say of it. */
  private static final class Value {
    private String type = "";
    private String number = "";
    private String date = "";
    private String time = "";
    private String truth = "";
    private String string = "";
    private String formula = "";
    private boolean error;

    void take(String name, String value) {
      switch (name) {
        case "value-type" -> {
          // LibreOffice writes a second one, in a namespace of its own.
          error |= value.equals("error");
          type = value.equals("error") ? type : value;
        }
        case "value" -> number = value;
        case "date-value" -> date = value;
        case "time-value" -> time = value;
        case "boolean-value" -> truth = value;
        case "string-value" -> string = value;
        case "formula" -> formula = value;
        default -> { }
      }
    }

    TableCell cell(String shown) {
      if (error) {
        return new TableCell(shown.isEmpty() ? formula : shown, Kind.ERROR);
      }
      return switch (type) {
        case "float", "currency" -> number(shown);
        case "percentage" -> isNumber() ? CellFormat.percent(Double.parseDouble(number)) : TableCell.text(shown);
        case "date" -> new TableCell(date.replaceFirst("T00:00:00(\\.0+)?$", "").replace('T', ' '), Kind.DATE);
        case "time" -> new TableCell(clock(), Kind.DATE);
        case "boolean" -> new TableCell(truth.equals("true") ? "TRUE" : "FALSE", Kind.YES_NO);
        default -> text(shown);
      };
    }

    private TableCell text(String shown) {
      if (shown.isEmpty() && string.isEmpty()) {
        return formula.isEmpty() || type.equals("string") ? TableCell.EMPTY : new TableCell(formula, Kind.ERROR);
      }
      return TableCell.text(shown.isEmpty() ? string : shown);
    }

    private boolean isNumber() {
      return number.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?") && Double.isFinite(Double.parseDouble(number));
    }

    /** The number as typed, with the unit that the sheet shows beside it. */
    private TableCell number(String shown) {
      if (!isNumber()) {
        return TableCell.text(shown.isEmpty() ? number : shown);
      }
      double typed = Double.parseDouble(number);
      Matcher parts = SHOWN_NUMBER.matcher(shown);
      boolean unit = type.equals("float") && parts.matches() && isShownAs(parts.group(2), typed);
      return CellFormat.withUnit(unit ? parts.group(1) : "", CellFormat.shortest(typed), unit ? parts.group(3) : "");
    }

    /**
     * Whether the digits on show are those of the number, rounded; otherwise the words beside them are not its unit, as
     * in 12k for 12000 or in feet with inches.
     */
    private static boolean isShownAs(String digits, double typed) {
      int point = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
      int decimals = point < 0 ? 0 : digits.length() - point - 1;
      String bare = digits.replaceAll("[.,'\u2019\\s\u00A0\u202F]", "");
      if (!bare.matches("\\d{1,18}")) {
        return false;
      }
      double whole = Double.parseDouble(bare);
      double broken = whole / Math.pow(10, decimals);
      return Math.abs(whole - Math.abs(typed)) <= ROUNDING || Math.abs(broken - Math.abs(typed)) <= ROUNDING / Math.pow(10, decimals);
    }

    private String clock() {
      Matcher parts = TIME.matcher(time);
      if (!parts.matches()) {
        return time;
      }
      String seconds = parts.group(3).equals("00") ? "" : ":" + parts.group(3);
      return parts.group(1) + ":" + parts.group(2) + seconds;
    }
  }
}
