package guildwood.exporting.exchange;

import guildwood.kernel.Range;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryExtract;
import guildwood.species.Species;
import guildwood.species.SpeciesNote;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.Unit;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.PlainNumber;
import guildwood.species.exchange.SpeciesColumn;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.species.exchange.SpeciesTableWriter.Added;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;

/**
 * Writes species as a workbook: the table of the values that rule, every value with its source, the sources, what the
 * owner has, and what the columns mean. Numbers are numbers, everything else is text, whatever it begins with.
 */
final class LibraryWorkbook {
  private static final int LONGEST_CELL = 30_000;

  private final LibraryExtract extract;
  private final List<Species> species;
  private final List<Added> added;
  private final Messages messages;

  /**
   * @param species those of the extract, in the order in which they are to stand
   * @param added columns between the names and the traits
   */
  LibraryWorkbook(LibraryExtract extract, List<Species> species, List<Added> added, Messages messages) {
    this.extract = extract;
    this.species = List.copyOf(species);
    this.added = List.copyOf(added);
    this.messages = messages;
  }

  void write(OutputStream out) throws IOException {
    SteadyWorkbook.write(this::make, out);
  }

  private void make(OutputStream out) throws IOException {
    try (Workbook workbook = new Workbook(out, "Guildwood", "1.0")) {
      species(workbook);
      values(workbook);
      sources(workbook);
      notes(workbook);
      holdings(workbook);
      columns(workbook);
    }
  }

  private SheetWriter sheet(Workbook workbook, String key, List<String> columns, int frozenColumns) {
    return new SheetWriter(workbook, messages.say("export.sheet." + key), columns, frozenColumns);
  }

  private void species(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "species", SpeciesTableWriter.header(added), 2);
    int names = SpeciesColumn.NAMES.size();
    for (Species each : species) {
      List<String> cells = SpeciesTableWriter.cells(each, added);
      List<Object> typed = new ArrayList<>(cells);
      for (int i = names; i < cells.size(); i++) {
        int trait = i - names - added.size();
        boolean number = trait < 0 ? added.get(i - names).isNumber() : SpeciesColumn.TRAITS.get(trait).trait().shape() == Trait.Shape.SPAN;
        typed.set(i, number ? number(cells.get(i)) : cells.get(i));
      }
      sheet.row(typed);
    }
    sheet.finish();
  }

  /** A number as one; a range stays text, or a spreadsheet would take its first end for the whole. */
  private static Object number(String cell) {
    return cell.matches("-?\\d+(\\.\\d+)?") ? new BigDecimal(cell) : cell;
  }

  private void values(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "values", List.of("species", "scientific_name", "trait", "item", "value", "low", "high", "unit",
        "source", "evidence", "counts", "note"), 2);
    for (Species each : species) {
      for (Statement s : each.statements()) {
        WrittenStatement written = WrittenStatement.of(each.id(), s);
        List<Object> cells = new ArrayList<>(List.of(each.id(), each.scientificName(), written.trait(), s.item(), s.entered()));
        cells.addAll(reckoned(s));
        cells.addAll(List.of(written.sourceId(), written.evidence(), each.rules(s) ? "yes" : "", s.note()));
        sheet.row(cells);
      }
    }
    sheet.finish();
  }

  private List<Object> reckoned(Statement s) {
    if (!(s.value() instanceof TraitValue.Span span)) {
      return List.of("", "", "");
    }
    Range range = span.range();
    return List.of(new BigDecimal(PlainNumber.of(range.min())), new BigDecimal(PlainNumber.of(range.max())), unit(s.trait()));
  }

  private void sources(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "sources", List.of("id", "kind", "author", "title", "year", "locator"), 1);
    for (Source source : extract.sources()) {
      sheet.row(List.of(source.id(), source.kind().key(), source.author(), source.title(),
          source.year().isPresent() ? BigDecimal.valueOf(source.year().getAsInt()) : "", source.locator()));
    }
    sheet.finish();
  }

  /** One line of a note a row; a cell holds 32,767 characters at most (Microsoft, Excel specifications and limits). */
  private void notes(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "notes", List.of("note", "species", "source", "text"), 1);
    int number = 0;
    for (SpeciesNote note : extract.notes()) {
      number++;
      for (String line : note.text().split("\n", -1)) {
        for (int from = 0; from == 0 || from < line.length(); from += LONGEST_CELL) {
          sheet.row(List.of(BigDecimal.valueOf(number), note.speciesId(), note.sourceId(),
              line.substring(from, Math.min(line.length(), from + LONGEST_CELL))));
        }
      }
    }
    sheet.finish();
  }

  private void holdings(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "holdings",
        List.of("species", "scientific_name", "plants_on_hand", "plants_to_propagate", "price"), 2);
    Map<String, String> names = new HashMap<>();
    species.forEach(s -> names.put(s.id(), s.scientificName()));
    for (Holding holding : extract.holdings()) {
      sheet.row(List.of(holding.speciesId(), names.get(holding.speciesId()), BigDecimal.valueOf(holding.plantsOnHand()),
          BigDecimal.valueOf(holding.plantsToPropagate()),
          holding.priceCents().isPresent() ? BigDecimal.valueOf(holding.priceCents().getAsInt(), 2) : ""));
    }
    sheet.finish();
  }

  private void columns(Workbook workbook) throws IOException {
    SheetWriter sheet = sheet(workbook, "columns",
        Stream.of("column", "meaning", "unit", "form", "words").map(c -> messages.say("export.columns." + c)).toList(), 1);
    for (String name : SpeciesColumn.NAMES) {
      sheet.row(List.of(name, messages.say("package.species." + name), "", "", ""));
    }
    for (Added column : added) {
      sheet.row(List.of(column.name(), messages.say("export.added." + column.name()), "", "", ""));
    }
    for (SpeciesColumn column : SpeciesColumn.TRAITS) {
      sheet.row(meaning(column));
    }
    sheet.finish();
  }

  private List<String> meaning(SpeciesColumn column) {
    Trait trait = column.trait();
    String title = messages.say("trait." + trait.key());
    String about = column.item().isEmpty() ? title : messages.say("topic", title, messages.say("item." + trait.key() + "." + column.item()));
    return switch (column.content()) {
      case EVIDENCE -> List.of(column.name(), messages.say("export.evidence", about), "", messages.say("export.form.word"),
          Stream.of(guildwood.species.Evidence.values()).map(guildwood.species.Evidence::key).collect(Collectors.joining("; ")));
      case CAUTIONS -> List.of(column.name(), about, "", messages.say("export.form.cautions"), "");
      case VALUE -> List.of(column.name(), about, unit(trait), messages.say("export.form." + trait.shape().name().toLowerCase(Locale.ROOT)),
          String.join("; ", trait.words()));
    };
  }

  private String unit(Trait trait) {
    return trait.unit() == Unit.NONE ? "" : messages.say("export.unit." + trait.unit().name().toLowerCase(Locale.ROOT));
  }
}
