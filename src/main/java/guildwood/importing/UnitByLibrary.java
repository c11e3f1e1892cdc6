package guildwood.importing;

import guildwood.kernel.Range;
import guildwood.kernel.Temperature;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells a unit by the plants that the table and the library both know: read in the right unit, the numbers of the table lie
 * near those of the library, and in every other they do not.
 */
final class UnitByLibrary {
  /** Plants that must be known on both sides. Ours: with fewer, two odd sources could mislead. */
  private static final int FEWEST = 6;

  /** The median plant may differ so much; feet and metres are 3.3 apart. */
  private static final double MOST_RATIO = 1.5;
  private static final double MOST_DEGREES = 6;

  private final SpeciesLibrary library;
  private final List<TableRow> rows;
  private final List<Suggestion> columns;

  UnitByLibrary(SpeciesLibrary library, List<TableRow> rows, List<Suggestion> columns) {
    this.library = library;
    this.rows = rows;
    this.columns = columns;
  }

  /** A number of the table beside the library's. */
  private record Pair(double written, Range known) {}

  Optional<ColumnUnit> find(ColumnMapping column) {
    Trait trait = column.meaning().trait().orElseThrow();
    if (trait.unit() != Unit.METRES && trait.unit() != Unit.CELSIUS || library.species().size() > Review.SMALL_LIBRARY) {
      return Optional.empty();
    }
    List<Pair> pairs = pairs(column, trait);
    List<ColumnUnit> fitting = new ArrayList<>();
    for (ColumnUnit unit : ColumnUnit.choices(trait)) {
      if (!unit.written().isEmpty() && fits(pairs, unit)) {
        fitting.add(unit);
      }
    }
    return pairs.size() >= FEWEST && fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  private List<Pair> pairs(ColumnMapping column, Trait trait) {
    NameFinder finder = new NameFinder(library);
    Mapping mapping = new Mapping(new Heading(0, 0, List.of(), List.of()), columns.stream().map(Suggestion::column).toList());
    List<Pair> pairs = new ArrayList<>();
    for (TableRow row : rows) {
      Optional<SpanText> span = SpanText.read(row.cell(column.column()).text()).filter(s -> !s.hasUnit());
      Optional<Species> species = span.isEmpty() ? Optional.empty() : finder.same(RowName.of(mapping, row).written());
      species.flatMap(s -> s.range(trait)).ifPresent(known -> pairs.add(new Pair(span.get().middle(), known)));
    }
    return pairs;
  }

  private static boolean fits(List<Pair> pairs, ColumnUnit unit) {
    List<Double> off = pairs.stream().map(pair -> off(pair, unit)).sorted().toList();
    boolean degrees = unit == ColumnUnit.CELSIUS || unit == ColumnUnit.FAHRENHEIT;
    return !off.isEmpty() && off.get(off.size() / 2) <= (degrees ? MOST_DEGREES : Math.log(MOST_RATIO));
  }

  /** Degrees, or the logarithm of the ratio of lengths; 0 within the library's range. */
  private static double off(Pair pair, ColumnUnit unit) {
    double value = switch (unit) {
      case CENTIMETRES -> pair.written() / 100;
      case MILLIMETRES -> pair.written() / 1000;
      case FEET -> pair.written() * 0.3048;
      case INCHES -> pair.written() * 0.0254;
      case FAHRENHEIT -> Temperature.toCelsius(pair.written());
      default -> pair.written();
    };
    if (pair.known().contains(value)) {
      return 0;
    }
    double nearest = value < pair.known().min() ? pair.known().min() : pair.known().max();
    boolean degrees = unit == ColumnUnit.CELSIUS || unit == ColumnUnit.FAHRENHEIT;
    return degrees ? Math.abs(value - nearest) : value <= 0 ? 99 : Math.abs(Math.log(value / nearest));
  }
}
