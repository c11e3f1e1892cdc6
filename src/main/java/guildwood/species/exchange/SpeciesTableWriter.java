package guildwood.species.exchange;

import guildwood.species.CautionCell;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes species as a table (RFC 4180, header row), one row a species: the values that rule, in the units
 * the program reckons in, so that {@link SpeciesTableReader} reads the same plants again.
 */
public final class SpeciesTableWriter {
  private SpeciesTableWriter() {}

  /** A column that somebody adds to the table, between the names and the traits. */
  public record Added(String name, boolean isNumber, Function<Species, String> cell) {}

  /** @param to where the text goes; the caller encodes it as UTF-8 */
  public static void write(List<Species> species, Appendable to) throws IOException {
    write(species, List.of(), to);
  }

  /** @param to where the text goes; the caller encodes it as UTF-8 */
  public static void write(List<Species> species, List<Added> added, Appendable to) throws IOException {
    CSVPrinter printer = new CSVPrinter(to, CSVFormat.RFC4180);
    printer.printRecord(header(added));
    for (Species each : species) {
      printer.printRecord(cells(each, added).stream().map(SafeCell::mark));
    }
    printer.flush();
  }

  public static List<String> header(List<Added> added) {
    List<String> header = new ArrayList<>(SpeciesColumn.NAMES);
    added.forEach(column -> header.add(column.name()));
    SpeciesColumn.TRAITS.forEach(column -> header.add(column.name()));
    return header;
  }

  /** The cells of a row as they are, without the marks that a text file needs. */
  public static List<String> cells(Species species, List<Added> added) {
    List<String> cells = new ArrayList<>(List.of(species.id(), species.scientificName(),
        String.join(CellValue.BETWEEN, species.commonNames()), species.family(),
        String.join(CellValue.BETWEEN, species.synonyms())));
    added.forEach(column -> cells.add(column.cell().apply(species)));
    SpeciesColumn.TRAITS.forEach(column -> cells.add(cell(species, column)));
    return cells;
  }

  private static String cell(Species species, SpeciesColumn column) {
    Trait trait = column.trait();
    return switch (column.content()) {
      case CAUTIONS -> CautionCell.write(species.cautions().stream().filter(c -> kindOf(c).equals(column.item())).toList());
      case EVIDENCE -> species.ruling(trait, column.item()).flatMap(Statement::evidence).map(Evidence::key).orElse("");
      case VALUE -> trait.shape() == Trait.Shape.WORDS
          ? words(species.words(trait))
          : species.ruling(trait, column.item()).map(s -> CellValue.write(s.value())).orElse("");
    };
  }

  /** Several statements can rule together here. */
  private static String words(List<String> ruling) {
    return ruling.isEmpty() ? "" : CellValue.write(new TraitValue.Words(ruling));
  }

  private static String kindOf(Statement caution) {
    return caution.item().split(":", 2)[0];
  }
}
