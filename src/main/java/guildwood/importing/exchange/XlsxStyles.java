package guildwood.importing.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;

/** The number formats of a workbook, in the order in which its cells name them. */
final class XlsxStyles {
  private XlsxStyles() {}

  static List<CellFormat> read(ZipParts parts, String part) throws IOException {
    Map<String, String> codes = new HashMap<>();
    List<CellFormat> formats = new ArrayList<>();
    boolean ofCells = false;
    try (XmlPart xml = new XmlPart(parts.open(part))) {
      for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
        if (event == XMLStreamConstants.END_ELEMENT && xml.element().equals("cellXfs")) {
          ofCells = false;
        } else if (event == XMLStreamConstants.START_ELEMENT) {
          switch (xml.element()) {
            case "numFmt" -> codes.put(xml.attribute("numFmtId"), xml.attribute("formatCode"));
            case "cellXfs" -> ofCells = true;
            case "xf" -> {
              if (ofCells) {
                formats.add(format(xml.attribute("numFmtId"), codes));
              }
            }
            default -> { }
          }
        }
      }
    }
    return formats;
  }

  private static CellFormat format(String id, Map<String, String> codes) {
    if (codes.containsKey(id)) {
      return CellFormat.ofCode(codes.get(id));
    }
    return id.matches("\\d{1,3}") ? CellFormat.builtIn(Integer.parseInt(id)) : CellFormat.NUMBER;
  }
}
