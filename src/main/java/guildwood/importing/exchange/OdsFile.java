package guildwood.importing.exchange;

import guildwood.importing.Table;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;

/**
 * A spreadsheet as OpenDocument has it (OASIS OpenDocument 1.3 part 3, 9). Read by ourselves on a streaming XML parser:
 * the reader we tried holds the whole sheet, and 200,000 rows of 17 cells do not fit into 256 MB.
 */
final class OdsFile {
  private static final String CONTENT = "content.xml";

  /** Holds tables that are copies of other files. */
  private static final Set<String> NO_TABLES = Set.of("dde-links", "tracked-changes", "scripts", "font-face-decls");

  private OdsFile() {}

  static List<Table> open(Path file, ZipParts parts) throws IOException {
    refuseEncrypted(parts);
    List<Table> shown = new ArrayList<>();
    List<Table> hidden = new ArrayList<>();
    Set<String> hiddenStyles = new HashSet<>();
    String style = "";
    try (XmlPart xml = new XmlPart(parts.open(CONTENT))) {
      int number = 0;
      for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
        if (event != XMLStreamConstants.START_ELEMENT) {
          continue;
        }
        switch (xml.element()) {
          case "style" -> style = xml.attribute("name");
          case "table-properties" -> {
            if (xml.attribute("display").equals("false")) {
              hiddenStyles.add(style);
            }
          }
          case "table" -> {
            (hiddenStyles.contains(xml.attribute("style-name")) ? hidden : shown).add(sheet(file, xml.attribute("name"), number++));
            xml.skip();
          }
          default -> {
            if (NO_TABLES.contains(xml.element())) {
              xml.skip();
            }
          }
        }
      }
    }
    shown.addAll(hidden);
    return shown;
  }

  private static void refuseEncrypted(ZipParts parts) throws IOException {
    String manifest = "META-INF/manifest.xml";
    if (!parts.has(manifest)) {
      return;
    }
    try (XmlPart xml = new XmlPart(parts.open(manifest))) {
      for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
        if (event == XMLStreamConstants.START_ELEMENT && xml.element().equals("encryption-data")) {
          throw new RefusedRead("password");
        }
      }
    }
  }

  private static Table sheet(Path file, String name, int number) {
    return new ReadTable(name, gate -> {
      try (ZipParts parts = new ZipParts(file); XmlPart xml = new XmlPart(parts.open(CONTENT))) {
        int tables = 0;
        for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
          if (event != XMLStreamConstants.START_ELEMENT) {
            continue;
          }
          if (NO_TABLES.contains(xml.element())) {
            xml.skip();
          } else if (xml.element().equals("table")) {
            if (tables == number) {
              new OdsSheet(xml, gate).read();
              return;
            }
            tables++;
            xml.skip();
          }
        }
        throw new RefusedRead("damaged");
      }
    });
  }
}
