package guildwood.species.exchange;

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
import guildwood.web.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The rows of a data package's tables as CSV (RFC 4180, UTF-8, header row); text is marked as {@link SafeCell} does. */
final class PackageRows {
  private final LibraryExtract extract;
  private final Messages messages;

  PackageRows(LibraryExtract extract, Messages messages) {
    this.extract = extract;
    this.messages = messages;
  }

  /** Writes one table; the same every time. The stream stays open. */
  void write(PackageTable table, OutputStream to) throws IOException {
    Writer text = new OutputStreamWriter(to, StandardCharsets.UTF_8);
    CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180);
    printer.printRecord(table.columns());
    switch (table) {
      case SPECIES -> species(printer);
      case SOURCES -> sources(printer);
      case TRAITS -> traits(printer);
      case VALUES -> values(printer);
      case UNREAD -> unread(printer);
      case NOTES -> notes(printer);
      case HOLDINGS -> holdings(printer);
    }
    printer.flush();
  }

  private static void row(CSVPrinter printer, String... cells) throws IOException {
    for (String cell : cells) {
      printer.print(SafeCell.mark(cell));
    }
    printer.println();
  }

  private void species(CSVPrinter printer) throws IOException {
    for (Species each : extract.species()) {
      row(printer, each.id(), each.scientificName(), String.join(CellValue.BETWEEN, each.commonNames()), each.family(),
          String.join(CellValue.BETWEEN, each.synonyms()));
    }
  }

  private void sources(CSVPrinter printer) throws IOException {
    for (Source source : extract.sources()) {
      row(printer, source.id(), source.kind().key(), source.author(), source.title(),
          source.year().isPresent() ? Integer.toString(source.year().getAsInt()) : "", source.locator());
    }
  }

  private void traits(CSVPrinter printer) throws IOException {
    for (Trait trait : Trait.values()) {
      boolean numbers = trait.unit() != Unit.NONE;
      row(printer, trait.key(), messages.say("trait." + trait.key()), messages.say("export.form." + trait.shape().name().toLowerCase(java.util.Locale.ROOT)),
          unit(trait), numbers ? PlainNumber.of(trait.unit().lowest()) : "", numbers ? PlainNumber.of(trait.unit().highest()) : "",
          String.join(CellValue.BETWEEN, trait.words()), String.join(CellValue.BETWEEN, trait.items()));
    }
  }

  private String unit(Trait trait) {
    return trait.unit() == Unit.NONE ? "" : messages.say("export.unit." + trait.unit().name().toLowerCase(java.util.Locale.ROOT));
  }

  private void values(CSVPrinter printer) throws IOException {
    for (Species each : extract.species()) {
      for (Statement s : each.statements()) {
        boolean numbers = s.value() instanceof TraitValue.Span;
        Range range = numbers ? ((TraitValue.Span) s.value()).range() : null;
        WrittenStatement written = WrittenStatement.of(each.id(), s);
        row(printer, each.id(), written.trait(), s.item(), s.entered(), numbers ? PlainNumber.of(range.min()) : "",
            numbers ? PlainNumber.of(range.max()) : "", unit(s.trait()), s.sourceId(), written.evidence(), rules(s.chosen()), s.note());
      }
    }
  }

  private void unread(CSVPrinter printer) throws IOException {
    for (WrittenStatement s : extract.unread()) {
      row(printer, s.speciesId(), s.trait(), s.item(), s.entered(), s.sourceId(), s.evidence(), rules(s.chosen()), s.note());
    }
  }

  private static String rules(boolean chosen) {
    return chosen ? "yes" : "";
  }

  private void notes(CSVPrinter printer) throws IOException {
    int number = 0;
    for (SpeciesNote note : extract.notes()) {
      number++;
      for (String line : NoteLine.split(note.text())) {
        row(printer, Integer.toString(number), note.speciesId(), note.sourceId(), line);
      }
    }
  }

  private void holdings(CSVPrinter printer) throws IOException {
    for (Holding holding : extract.holdings()) {
      row(printer, holding.speciesId(), Integer.toString(holding.plantsOnHand()), Integer.toString(holding.plantsToPropagate()),
          HoldingCells.price(holding.priceCents()));
    }
  }
}
