package guildwood.importing.exchange;

import guildwood.importing.Decisions;
import guildwood.importing.HeaderFinder;
import guildwood.importing.Heading;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.MappingSuggester;
import guildwood.importing.Review;
import guildwood.importing.RowOutcome;
import guildwood.importing.Table;
import guildwood.kernel.Range;
import guildwood.kernel.Source;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.exchange.ShippedLibrary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Imports a table of plant characteristics into the shipped library as far as the dry run goes, by suggestion alone. */
final class CharacteristicsImport {
  final Mapping mapping;
  final List<RowOutcome> rows = new ArrayList<>();

  CharacteristicsImport(Path file) {
    Table table = TableFiles.open(file, "characteristics").orThrow().get(0);
    var library = ShippedLibrary.read("/seed-data").orThrow();
    Heading heading = HeaderFinder.find(table).orThrow();
    mapping = new MappingSuggester(library).suggest(table, heading).orThrow().mapping();
    ImportSource source = new ImportSource(Source.Kind.AGENCY_TABLE, "Characteristics", "", OptionalInt.empty());
    new Review(new ImportPlan(mapping, source, Decisions.NONE), library).run(table, rows::add, ImportProgress.NONE).orThrow();
  }

  /** Header to meaning, for the columns that are more than notes. */
  Map<String, String> meanings() {
    Map<String, String> meanings = new TreeMap<>();
    mapping.columns().stream().filter(c -> !c.meaning().key().matches("note|ignored"))
        .forEach(c -> meanings.put(c.header(), c.meaning().key() + (c.unit().key().equals("as-written") ? "" : " " + c.unit().key())));
    return meanings;
  }

  /** The numbers read for a trait of a row. */
  static Optional<Range> range(RowOutcome row, Trait trait) {
    return row.reading().values().stream().filter(value -> value.trait() == trait).map(value -> ((TraitValue.Span) value.value()).range()).findFirst();
  }
}
