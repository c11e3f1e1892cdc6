package guildwood;

import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.species.exchange.CsvTable;
import guildwood.species.exchange.CsvTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tables of the demonstration in {@code seed-data/demo}. A table that cannot be read is a bug. */
final class DemoRows {
  private DemoRows() {}

  static List<Row> of(String file, String... columns) {
    List<Finding> findings = new ArrayList<>();
    String path = "seed-data/demo/" + file + ".csv";
    List<Row> rows = CsvTable.read(path, () -> DemoRows.class.getResourceAsStream("/" + path), List.of(columns), findings);
    if (!findings.isEmpty()) {
      throw new IllegalStateException("the demonstration's data cannot be read: " + findings);
    }
    return rows;
  }

  static double number(Row row, String column) {
    return Double.parseDouble(row.cell(column));
  }

  /** Points written {@code east north;east north}. */
  static List<GroundPoint> points(Row row, String column) {
    return Stream.of(row.cell(column).split(";")).map(point -> point.split(" "))
        .map(pair -> new GroundPoint(Double.parseDouble(pair[0]), Double.parseDouble(pair[1]))).toList();
  }
}
