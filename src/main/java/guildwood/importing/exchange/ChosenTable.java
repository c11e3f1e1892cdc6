package guildwood.importing.exchange;

import guildwood.importing.HeaderFinder;
import guildwood.importing.Heading;
import guildwood.importing.Mapping;
import guildwood.importing.MappingSuggester;
import guildwood.importing.MappingSuggestion;
import guildwood.importing.Table;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesLibrary;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The sheet of a file to bring in and what its columns mean, settled without a person: the sheet that is named, otherwise
 * the first that has a heading; the mapping that is handed in, otherwise what the table itself suggests.
 *
 * @param otherSheets names of those that are not brought
 */
public record ChosenTable(Table table, List<String> otherSheets, Mapping mapping) {
  public ChosenTable {
    otherSheets = List.copyOf(otherSheets);
  }

  public static Checked<ChosenTable> of(Path file, Optional<String> sheet, Optional<Mapping> saved, SpeciesLibrary library) {
    Checked<List<Table>> sheets = TableFiles.open(file, file.getFileName().toString());
    return sheets.value().map(all -> of(all, sheet, saved, library)).orElseGet(() -> Checked.refused(sheets.findings()));
  }

  private static Checked<ChosenTable> of(List<Table> sheets, Optional<String> wanted, Optional<Mapping> saved, SpeciesLibrary library) {
    List<Table> candidates = sheets.stream().filter(s -> wanted.isEmpty() || s.name().equalsIgnoreCase(wanted.get().strip())).toList();
    if (candidates.isEmpty()) {
      return Checked.refused(Finding.of("import.no-such-sheet", "", wanted.orElse(""), String.join(", ", names(sheets))));
    }
    List<Finding> findings = List.of();
    for (Table table : candidates) {
      Checked<Heading> heading = HeaderFinder.find(table);
      if (heading.value().isPresent()) {
        List<String> others = names(sheets.stream().filter(s -> s != table).toList());
        Checked<ChosenTable> chosen = mapped(table, heading.value().get(), saved, library).map(mapping -> new ChosenTable(table, others, mapping));
        // A sheet of explanations in front is no reason to refuse the workbook.
        boolean serves = chosen.value().map(c -> c.mapping().findings().isEmpty()).orElse(false);
        if (serves || table == candidates.get(candidates.size() - 1) && findings.isEmpty()) {
          return chosen;
        }
        findings = findings.isEmpty() ? chosen.value().map(c -> c.mapping().findings()).orElse(chosen.findings()) : findings;
      }
      findings = findings.isEmpty() ? heading.findings() : findings;
    }
    return Checked.refused(findings);
  }

  private static List<String> names(List<Table> sheets) {
    return sheets.stream().map(Table::name).toList();
  }

  private static Checked<Mapping> mapped(Table table, Heading heading, Optional<Mapping> saved, SpeciesLibrary library) {
    Checked<MappingSuggestion> suggestion = new MappingSuggester(library).suggest(table, heading);
    if (suggestion.isRefused()) {
      return Checked.refused(suggestion.findings());
    }
    boolean nothingAlike = saved.isPresent() && saved.get().columns().stream().noneMatch(column ->
        !column.header().isBlank() && heading.headers().stream().anyMatch(header -> header.equalsIgnoreCase(column.header().strip())));
    return nothingAlike ? Checked.refused(Finding.of("import.mapping-other-table", ""))
        : Checked.of(MappingSuggester.start(suggestion.orThrow(), saved));
  }
}
