package guildwood.site.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.survey.IndicatorTable;
import guildwood.site.survey.IndicatorValue;
import guildwood.site.survey.IndicatorValue.Point;
import guildwood.site.survey.IndicatorValue.Tolerated;
import guildwood.site.survey.SurveyAxis;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * {@code species,system,axis,value[,width]} or {@code species,system,axis,min,max[,preferred_min,preferred_max]}; both
 * forms may stand in one file. A row without any number says that the species has no value. Wetland ratings may be
 * written as numbers 1 to 5 or as OBL, FACW, FAC, FACU, UPL.
 */
final class ValuesFile {
  private static final List<String> RATINGS = List.of("OBL", "FACW", "FAC", "FACU", "UPL");

  private final InputTable table;
  private final Map<String, Map<String, IndicatorValue>> systems = new LinkedHashMap<>();
  private final Map<String, Long> firstRows = new LinkedHashMap<>();

  private ValuesFile(InputTable table) {
    this.table = table;
  }

  static Checked<List<IndicatorTable>> read(Path path) {
    return tables(InputTable.read(path, List.of("species", "system", "axis")));
  }

  static Checked<List<IndicatorTable>> tables(InputTable table) {
    ValuesFile file = new ValuesFile(table);
    table.rows().forEach(file::take);
    if (!table.findings().isEmpty()) {
      return Checked.refused(table.findings());
    }
    if (file.systems.isEmpty()) {
      return Checked.refused(Finding.of("table.no-rows", "values"));
    }
    List<IndicatorTable> tables = new ArrayList<>();
    file.systems.forEach((key, values) -> {
      String[] parts = key.split("\n", 2);
      tables.add(new IndicatorTable(SurveyAxis.valueOf(parts[0]), parts[1], values));
    });
    return Checked.of(List.copyOf(tables));
  }

  private void take(InputTable.Row row) {
    Optional<String> species = row.required("species");
    Optional<String> system = row.required("system");
    Optional<String> word = row.required("axis");
    Optional<SurveyAxis> axis = word.flatMap(w -> SurveyAxis.ofKey(w.toLowerCase(Locale.ROOT)));
    if (word.isPresent() && axis.isEmpty()) {
      row.refuse("axis", "value.unknown-word", word.get(), String.join(", ", SurveyAxis.keys()));
    }
    if (species.isEmpty() || system.isEmpty() || axis.isEmpty()) {
      return;
    }
    Optional<IndicatorValue> value = value(row, axis.get(), system.get());
    value.ifPresent(v -> {
      String key = axis.get().name() + '\n' + system.get();
      IndicatorValue before = systems.computeIfAbsent(key, k -> new LinkedHashMap<>()).putIfAbsent(species.get(), v);
      Long first = firstRows.putIfAbsent(key + '\n' + species.get(), row.number());
      if (before != null && !before.equals(v)) {
        row.refuse("species", "values.twice", species.get(), axis.get().key(), first);
      }
    });
  }

  private static Optional<IndicatorValue> value(InputTable.Row row, SurveyAxis axis, String system) {
    boolean range = !row.text("min").isEmpty() || !row.text("max").isEmpty();
    if (range && !row.text("value").isEmpty()) {
      row.refuse("value", "values.point-and-range");
      return Optional.empty();
    }
    return range ? tolerated(row) : point(row, axis, system);
  }

  private static Optional<IndicatorValue> point(InputTable.Row row, SurveyAxis axis, String system) {
    int rating = axis == SurveyAxis.WETNESS ? RATINGS.indexOf(row.text("value").toUpperCase(Locale.ROOT)) : -1;
    OptionalDouble value = rating >= 0 ? OptionalDouble.of(rating + 1) : row.number("value");
    OptionalDouble width = row.number("width");
    boolean isRating = axis == SurveyAxis.WETNESS && system.equalsIgnoreCase(SurveyAxis.WETLAND_RATING);
    if (value.isPresent() && isRating && (value.getAsDouble() < 1 || value.getAsDouble() > 5)) {
      row.refuse("value", "number.out-of-scale", "1", "5");
    }
    if (width.isPresent() && width.getAsDouble() < 0) {
      row.refuse("width", "values.width-negative", row.text("width"));
      return Optional.empty();
    }
    // A width of 0 comes from a species met once: nothing is known of its width.
    OptionalDouble known = width.isPresent() && width.getAsDouble() > 0 ? width : OptionalDouble.empty();
    return value.isPresent() ? Optional.of(new Point(value.getAsDouble(), known)) : Optional.empty();
  }

  private static Optional<IndicatorValue> tolerated(InputTable.Row row) {
    Optional<Range> range = range(row, "min", "max", Optional.empty());
    if (range.isEmpty()) {
      return Optional.empty();
    }
    boolean preferred = !row.text("preferred_min").isEmpty() || !row.text("preferred_max").isEmpty();
    Optional<Range> inner = preferred ? range(row, "preferred_min", "preferred_max", range) : Optional.empty();
    if (inner.isPresent() && !range.get().contains(inner.get())) {
      row.refuse("preferred_min", "values.preferred-outside");
      return Optional.empty();
    }
    return preferred && inner.isEmpty() ? Optional.empty() : Optional.of(new Tolerated(range.get(), inner));
  }

  /** A range of two columns; a missing end is taken from the outer range where there is one. */
  private static Optional<Range> range(InputTable.Row row, String low, String high, Optional<Range> outer) {
    OptionalDouble min = end(row, low, outer.map(Range::min));
    OptionalDouble max = end(row, high, outer.map(Range::max));
    if (min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    if (min.getAsDouble() > max.getAsDouble()) {
      row.refuse(low, "range.backwards", row.text(low), row.text(high));
      return Optional.empty();
    }
    return Optional.of(new Range(min.getAsDouble(), max.getAsDouble()));
  }

  private static OptionalDouble end(InputTable.Row row, String column, Optional<Double> otherwise) {
    if (row.text(column).isEmpty()) {
      if (otherwise.isEmpty()) {
        row.refuse(column, "value.missing");
      }
      return otherwise.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
    return row.number(column);
  }
}
