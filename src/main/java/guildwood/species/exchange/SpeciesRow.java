package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.CautionCell;
import guildwood.species.Evidence;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The traits in one row of a species table, read as statements; what cannot be read goes to the findings. */
final class SpeciesRow {
  private final UnaryOperator<String> cells;
  private final UnaryOperator<String> places;
  private final List<Finding> findings;
  private final List<Statement> statements = new ArrayList<>();

  /**
   * @param cells text by column
   * @param places where a column's cell stands, in words
   */
  SpeciesRow(UnaryOperator<String> cells, UnaryOperator<String> places, List<Finding> findings) {
    this.cells = cells;
    this.places = places;
    this.findings = findings;
  }

  List<Statement> read() {
    for (SpeciesColumn column : SpeciesColumn.TRAITS) {
      String cell = cells.apply(column.name());
      if (!cell.isEmpty()) {
        switch (column.content()) {
          case VALUE -> value(column, cell);
          case CAUTIONS -> cautions(column, cell);
          case EVIDENCE -> evidenceAlone(column);
        }
      }
    }
    return List.copyOf(statements);
  }

  private void value(SpeciesColumn column, String cell) {
    Checked<TraitValue> value = CellValue.read(column.trait(), cell, places.apply(column.name()));
    Optional<Evidence> evidence = column.trait().carriesEvidence() ? evidence(column.name() + ".evidence") : Optional.empty();
    findings.addAll(value.findings());
    value.value().ifPresent(v -> statements.add(statement(column.trait(), column.item(), cell, v, evidence)));
  }

  private Optional<Evidence> evidence(String column) {
    String key = cells.apply(column);
    Optional<Evidence> evidence = Evidence.ofKey(key);
    if (evidence.isEmpty() && !key.isEmpty()) {
      findings.add(Finding.of("evidence.unknown", places.apply(column), key));
    }
    return evidence;
  }

  /** Evidence for nothing is most likely a value that slipped into the wrong column. */
  private void evidenceAlone(SpeciesColumn column) {
    String claim = column.name().substring(0, column.name().length() - ".evidence".length());
    if (cells.apply(claim).isEmpty()) {
      findings.add(Finding.of("species-table.evidence-alone", places.apply(column.name()), claim));
    }
  }

  private void cautions(SpeciesColumn column, String cell) {
    String place = places.apply(column.name());
    for (CautionCell.Entry entry : CautionCell.read(column.item(), cell)) {
      Checked<String> item = TraitReader.readItem(Trait.CAUTION, entry.item(), place);
      Checked<TraitValue> text = TraitReader.read(Trait.CAUTION, entry.text(), place);
      if (item.isRefused()) {
        findings.add(Finding.of("species-table.caution-detail", place, entry.item().split(":", 2)[0]));
      }
      findings.addAll(text.findings());
      if (!item.isRefused() && !text.isRefused()) {
        statements.add(statement(Trait.CAUTION, entry.item(), entry.text(), text.orThrow(), Optional.empty()));
      }
    }
  }

  private static Statement statement(Trait trait, String item, String entered, TraitValue value, Optional<Evidence> evidence) {
    return new Statement(0, trait, item, entered, value, SpeciesTable.ORIGIN.id(), evidence, false, "");
  }
}
