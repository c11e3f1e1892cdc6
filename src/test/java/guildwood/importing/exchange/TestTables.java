package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes small files and reads them back for the tests of the readers. */
final class TestTables {
  private TestTables() {}

  static Path file(Path folder, String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A zip of parts in their order. */
  static byte[] zip(Map<String, String> parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static List<TableRow> rows(Table table) {
    List<TableRow> rows = new ArrayList<>();
    Checked<Long> read = table.rows(rows::add);
    assertEquals(Checked.of((long) rows.size()), read);
    return rows;
  }

  /** The only sheet's cells as text, row by row. */
  static List<List<String>> texts(Path file) {
    List<Table> sheets = TableFiles.open(file, "plants").orThrow();
    assertEquals(1, sheets.size());
    return texts(sheets.get(0));
  }

  static List<List<String>> texts(Table table) {
    return rows(table).stream().map(row -> row.cells().stream().map(TableCell::text).toList()).toList();
  }

  /** Why a file is refused, when it is opened or when its rows are read; empty where it is not. */
  static String refusal(Path file) {
    Checked<List<Table>> sheets = TableFiles.open(file, "plants");
    List<Finding> findings = new ArrayList<>(sheets.findings());
    sheets.value().orElse(List.of()).forEach(sheet -> findings.addAll(sheet.rows(row -> true).findings()));
    return findings.isEmpty() ? "" : (findings.get(0).code().replace("table-file.", "") + " " + String.join(" ", findings.get(0).args())).strip();
  }
}
