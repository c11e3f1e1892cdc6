package guildwood.importing.exchange;

import guildwood.importing.Table;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;

/**
 * A workbook as Office Open XML has it (ECMA-376 part 1, 18; strict and transitional alike). Read by ourselves on a
 * streaming XML parser, because the reader we tried loses values that workbooks hold (DEVELOPERS.md, Decisions).
 */
final class XlsxFile {
  private static final String WORKBOOK = "xl/workbook.xml";

  private final Path file;
  private final String workbook;
  private final Map<String, Relation> relations;
  private final List<CellFormat> formats;
  private boolean from1904;

  private XlsxFile(Path file, ZipParts parts) throws IOException {
    this.file = file;
    workbook = relations(parts, "").values().stream().filter(r -> r.type().endsWith("/officeDocument")).map(Relation::target)
        .filter(parts::has).findFirst().orElse(WORKBOOK);
    if (!parts.has(workbook)) {
      throw new RefusedRead("no-sheets");
    }
    relations = relations(parts, workbook);
    String styles = target(parts, "styles", "xl/styles.xml");
    formats = parts.has(styles) ? XlsxStyles.read(parts, styles) : List.of();
  }

  static List<Table> open(Path file, ZipParts parts) throws IOException {
    return new XlsxFile(file, parts).sheets(parts);
  }

  /** Where a part of a kind is, as the workbook says; damaged where it then is not there. */
  private String target(ZipParts parts, String kind, String usual) throws RefusedRead {
    Optional<String> named = relations.values().stream().filter(r -> r.type().endsWith("/" + kind)).map(Relation::target).findFirst();
    if (named.isPresent() && !parts.has(named.get())) {
      throw new RefusedRead("damaged");
    }
    return named.orElse(usual);
  }

  private List<Table> sheets(ZipParts parts) throws IOException {
    List<Table> shown = new ArrayList<>();
    List<Table> hidden = new ArrayList<>();
    try (XmlPart xml = new XmlPart(parts.open(workbook))) {
      for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
        if (event != XMLStreamConstants.START_ELEMENT) {
          continue;
        }
        if (xml.element().equals("workbookPr")) {
          from1904 = xml.attribute("date1904").matches("1|true");
        } else if (xml.element().equals("sheet")) {
          Relation relation = relations.get(xml.attribute("id"));
          // Sheets of charts and macros have no cells.
          if (relation != null && relation.type().endsWith("/worksheet")) {
            boolean isHidden = xml.attribute("state").toLowerCase(Locale.ROOT).contains("hidden");
            (isHidden ? hidden : shown).add(sheet(xml.attribute("name"), relation.target()));
          }
        }
      }
    }
    shown.addAll(hidden);
    return shown;
  }

  private Table sheet(String name, String part) {
    return new ReadTable(name, gate -> {
      try (ZipParts parts = new ZipParts(file);
          SharedStrings texts = new SharedStrings(parts, target(parts, "sharedStrings", "xl/sharedStrings.xml"));
          XmlPart xml = new XmlPart(parts.open(part))) {
        new XlsxSheet(xml, texts, formats, from1904, gate).read();
      }
    });
  }

  /** The relations of a part, by id; of the whole package where the part is empty. */
  private static Map<String, Relation> relations(ZipParts parts, String part) throws IOException {
    String folder = part.substring(0, part.lastIndexOf('/') + 1);
    String name = folder + "_rels/" + part.substring(folder.length()) + ".rels";
    Map<String, Relation> relations = new HashMap<>();
    if (parts.has(name)) {
      try (XmlPart xml = new XmlPart(parts.open(name))) {
        for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
          if (event == XMLStreamConstants.START_ELEMENT && xml.element().equals("Relationship")) {
            relations.put(xml.attribute("Id"), new Relation(xml.attribute("Type"), absolute(folder, xml.attribute("Target"))));
          }
        }
      }
    }
    return relations;
  }

  /** A name of a part, which is only looked up in the package. */
  private static String absolute(String folder, String target) {
    if (target.startsWith("/")) {
      return target.substring(1);
    }
    String at = folder;
    String rest = target;
    while (rest.startsWith("../") && !at.isEmpty()) {
      at = at.substring(0, at.lastIndexOf('/', at.length() - 2) + 1);
      rest = rest.substring(3);
    }
    return at + (rest.startsWith("./") ? rest.substring(2) : rest);
  }

  private record Relation(String type, String target) {}
}
