package guildwood.importing.exchange;

import guildwood.importing.Table;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Tells what a zipped file is from the parts it has. */
final class PackedFiles {
  private static final int LONGEST_TYPE = 200;

  private PackedFiles() {}

  static List<Table> open(Path file) throws IOException {
    try (ZipParts parts = new ZipParts(file)) {
      if (parts.has("[Content_Types].xml") || parts.has("_rels/.rels")) {
        refuseOtherOffice(parts);
        return notEmpty(XlsxFile.open(file, parts));
      }
      if (parts.has("content.xml")) {
        String type = type(parts);
        if (!type.isEmpty() && !type.contains("spreadsheet")) {
          throw new RefusedRead("document");
        }
        return notEmpty(OdsFile.open(file, parts));
      }
      throw new RefusedRead(parts.hasBelow("Index/") || parts.hasBelow("Index.zip") || parts.has("index.apxl") ? "numbers" : "packed");
    }
  }

  private static List<Table> notEmpty(List<Table> sheets) throws RefusedRead {
    if (sheets.isEmpty()) {
      throw new RefusedRead("no-sheets");
    }
    return sheets;
  }

  private static void refuseOtherOffice(ZipParts parts) throws RefusedRead {
    if (parts.has("xl/workbook.bin")) {
      throw new RefusedRead("xlsb");
    }
    if (parts.hasBelow("word/") || parts.hasBelow("ppt/")) {
      throw new RefusedRead("document");
    }
  }

  private static String type(ZipParts parts) throws IOException {
    if (!parts.has("mimetype")) {
      return "";
    }
    try (InputStream in = parts.open("mimetype")) {
      return new String(in.readNBytes(LONGEST_TYPE), StandardCharsets.US_ASCII);
    }
  }
}
