package guildwood.importing;

import guildwood.kernel.Finding;
import guildwood.species.HardinessZone;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Settles the unit of every column with bare numbers: by the header, by the units that other cells of the column carry, by
 * what the numbers can be at all. Where more than one unit is left, it stays unknown and the column waits.
 */
final class UnitGuess {
  private static final int FEWEST = 3;

  private final List<TableRow> rows;
  private final SpeciesLibrary library;

  UnitGuess(SpeciesLibrary library, List<TableRow> rows) {
    this.library = library;
    this.rows = rows;
  }

  List<Suggestion> settle(List<Suggestion> columns) {
    List<Suggestion> settled = new ArrayList<>();
    for (Suggestion suggestion : columns) {
      settled.add(needsOne(suggestion.column()) ? settled(suggestion, columns) : suggestion);
    }
    return settled;
  }

  private static boolean needsOne(ColumnMapping column) {
    boolean value = column.meaning().is(Meaning.Kind.VALUE) || EndPair.isEnd(column);
    return value && column.unit() == ColumnUnit.AS_WRITTEN && ColumnUnit.isNeeded(column.meaning().trait().orElseThrow());
  }

  private Suggestion settled(Suggestion suggestion, List<Suggestion> columns) {
    ColumnMapping column = suggestion.column();
    Trait trait = column.meaning().trait().orElseThrow();
    List<String> texts = rows.stream().map(r -> r.cell(column.column()).text().strip()).filter(t -> !t.isEmpty()).toList();
    boolean zones = trait.unit() == Unit.CELSIUS;
    List<SpanText> bare = texts.stream().filter(t -> !zones || SpanCell.zone(t, false).isEmpty())
        .map(SpanText::read).flatMap(Optional::stream).filter(s -> !s.hasUnit()).toList();
    if (bare.isEmpty()) {
      return suggestion;
    }
    if (trait.unit() == Unit.DAYS) {
      return with(suggestion, ColumnUnit.DAYS, "import.reason.unit-only");
    }
    return byHeaderWord(suggestion, trait, texts)
        .or(() -> byMarks(suggestion, trait, texts, bare.size()))
        .or(() -> byZones(suggestion, trait, texts))
        .or(() -> new UnitByLibrary(library, rows, columns).find(column).map(u -> with(suggestion, u, "import.reason.unit-library")))
        .orElseGet(() -> with(suggestion, ColumnUnit.NOT_KNOWN, "import.reason.unit-not-known"));
  }

  private static Optional<Suggestion> byHeaderWord(Suggestion suggestion, Trait trait, List<String> texts) {
    String header = Words.folded(suggestion.column().header());
    boolean zone = trait.unit() == Unit.CELSIUS && header.matches(".*\\b(zones?|usda)\\b.*")
        && texts.stream().map(SpanText::read).flatMap(Optional::stream).filter(s -> !s.hasUnit())
            .allMatch(s -> isZone(s.low()) && s.high().map(UnitGuess::isZone).orElse(true));
    return zone ? Optional.of(with(suggestion, ColumnUnit.ZONE, "import.reason.unit-header")) : Optional.empty();
  }

  /** Most cells carry one and the same unit; the few without mean it too. */
  private static Optional<Suggestion> byMarks(Suggestion suggestion, Trait trait, List<String> texts, int bare) {
    List<String> units = texts.stream().map(SpanText::read).flatMap(Optional::stream).filter(SpanText::hasUnit)
        .map(s -> s.highUnit().isEmpty() ? s.lowUnit() : s.highUnit()).toList();
    Optional<ColumnUnit> one = units.stream().distinct().count() == 1 ? HeaderText.unitOf(units.get(0)) : Optional.empty();
    return one.filter(u -> units.size() >= FEWEST && units.size() >= 2 * bare && ColumnUnit.choices(trait).contains(u))
        .map(u -> with(suggestion, u, "import.reason.unit-marks"));
  }

  /** Whole numbers from 1 to 13 that rise in ranges, or stand beside halves such as 5b, are hardiness zones. */
  private static Optional<Suggestion> byZones(Suggestion suggestion, Trait trait, List<String> texts) {
    if (trait.unit() != Unit.CELSIUS) {
      return Optional.empty();
    }
    List<SpanText> spans = texts.stream().filter(t -> SpanCell.zone(t, false).isEmpty()).map(SpanText::read).flatMap(Optional::stream).toList();
    boolean all = spans.stream().allMatch(s -> !s.hasUnit() && isZone(s.low()) && s.high().map(UnitGuess::isZone).orElse(true));
    long telling = spans.stream().filter(s -> s.high().isPresent()).count()
        + texts.stream().filter(t -> SpanCell.zone(t, false).isPresent()).count();
    return all && telling >= FEWEST ? Optional.of(with(suggestion, ColumnUnit.ZONE, "import.reason.unit-zones")) : Optional.empty();
  }

  private static boolean isZone(java.math.BigDecimal number) {
    return number.stripTrailingZeros().scale() <= 0 && HardinessZone.read(number.toBigInteger().toString()).isPresent();
  }

  private static Suggestion with(Suggestion suggestion, ColumnUnit unit, String reason) {
    List<Finding> reasons = new ArrayList<>(suggestion.reasons());
    reasons.add(Finding.of(reason, "", unit.key()));
    return new Suggestion(suggestion.column().with(unit), suggestion.certainty(), reasons);
  }
}
