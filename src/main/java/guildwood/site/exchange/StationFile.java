package guildwood.site.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Temperature;
import guildwood.site.climate.DayTemperatures;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * {@code date,min,max}: one row a day, dates as year-month-day. The unit stands in a row of its own below the header
 * (F or C under min and max) or is handed in. A row with an empty min or max is a day that was not measured.
 */
final class StationFile {
  /** Wider than anything measured on Earth; outside are the -9999 and the like that stand for a missing value. */
  private static final double LOWEST_F = -150;
  private static final double HIGHEST_F = 150;

  private static final int FIRST_YEAR = 1700;
  private static final int LAST_YEAR = 2200;

  private final InputTable table;
  private final List<DayTemperatures> days = new ArrayList<>();
  private final Map<LocalDate, Long> rowOfDay = new HashMap<>();
  private boolean celsius;

  private StationFile(InputTable table) {
    this.table = table;
  }

  static Checked<List<DayTemperatures>> read(Path path, Optional<DegreeUnit> unit) {
    return days(InputTable.read(path, List.of("date", "min", "max")), String.valueOf(path.getFileName()), unit);
  }

  static Checked<List<DayTemperatures>> days(InputTable table, String file, Optional<DegreeUnit> unit) {
    if (!table.findings().isEmpty()) {
      return Checked.refused(table.findings());
    }
    StationFile station = new StationFile(table);
    List<InputTable.Row> rows = station.rowsBelowUnit(file, unit);
    rows.forEach(station::take);
    if (table.findings().isEmpty() && station.days.isEmpty()) {
      return Checked.refused(Finding.of("table.no-rows", file));
    }
    return table.findings().isEmpty() ? Checked.of(List.copyOf(station.days)) : Checked.refused(table.findings());
  }

  /** Settles the unit and gives the rows of days. */
  private List<InputTable.Row> rowsBelowUnit(String file, Optional<DegreeUnit> given) {
    List<InputTable.Row> rows = table.rows();
    if (rows.isEmpty()) {
      return rows;
    }
    InputTable.Row first = rows.get(0);
    Optional<DegreeUnit> min = DegreeUnit.read(first.text("min"));
    Optional<DegreeUnit> max = DegreeUnit.read(first.text("max"));
    boolean isUnitRow = min.isPresent() || max.isPresent();
    if (isUnitRow && !min.equals(max)) {
      first.refuse("max", "climate.two-units");
    } else if (isUnitRow && given.isPresent() && !given.equals(min)) {
      first.refuse("min", "climate.other-unit", first.text("min"), given.get());
    } else if (!isUnitRow && given.isEmpty()) {
      table.findings().add(Finding.of("climate.no-unit", file));
    }
    celsius = given.or(() -> min).filter(DegreeUnit.C::equals).isPresent();
    return isUnitRow ? rows.subList(1, rows.size()) : rows;
  }

  private void take(InputTable.Row row) {
    Optional<LocalDate> date = row.required("date").flatMap(text -> date(row, text));
    OptionalDouble min = degreesF(row, "min");
    OptionalDouble max = degreesF(row, "max");
    Long before = date.map(d -> rowOfDay.putIfAbsent(d, row.number())).orElse(null);
    if (before != null) {
      row.refuse("date", "climate.day-twice", date.get(), before);
      return;
    }
    if (min.isEmpty() || max.isEmpty()) {
      return;
    }
    if (min.getAsDouble() > max.getAsDouble()) {
      row.refuse("min", "climate.min-above-max", row.text("min"), row.text("max"));
    } else if (date.isPresent()) {
      days.add(new DayTemperatures(date.get(), min.getAsDouble(), max.getAsDouble()));
    }
  }

  private static Optional<LocalDate> date(InputTable.Row row, String text) {
    try {
      LocalDate date = text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}") ? LocalDate.parse(text) : LocalDate.MIN;
      if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
        return Optional.of(date);
      }
    } catch (DateTimeException e) {
      // Falls through to the same finding as any other text that is no date.
    }
    row.refuse("date", "climate.not-a-date", text);
    return Optional.empty();
  }

  private OptionalDouble degreesF(InputTable.Row row, String column) {
    OptionalDouble number = row.number(column);
    if (number.isEmpty()) {
      return number;
    }
    double fahrenheit = celsius ? Temperature.toFahrenheit(number.getAsDouble()) : number.getAsDouble();
    if (fahrenheit < LOWEST_F || fahrenheit > HIGHEST_F) {
      row.refuse(column, "climate.no-temperature", row.text(column));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(fahrenheit);
  }
}
