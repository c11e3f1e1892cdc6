package guildwood.exporting.exchange;

import guildwood.choosing.BedFits;
import guildwood.choosing.web.AddressedChoice;
import guildwood.exporting.ExportFormat;
import guildwood.fit.AxisFit;
import guildwood.fit.Fit;
import guildwood.species.LibraryExtract;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.Species;
import guildwood.species.exchange.DataPackageWriter;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.species.exchange.SpeciesTableWriter.Added;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/**
 * Writes what is chosen of the library in any of the forms. Where a bed is chosen, tables and workbooks say how each
 * species suits it; a data package holds what is known of the species and no verdicts, which belong to the bed.
 */
public final class LibraryExport {
  private final AddressedChoice choice;
  private final Beside beside;
  private final Messages messages;

  public LibraryExport(AddressedChoice choice, Beside beside, Messages messages) {
    this.choice = choice;
    this.beside = beside;
    this.messages = messages;
  }

  /** @param out stays open */
  public void write(ExportFormat format, OutputStream out) throws IOException {
    switch (format) {
      case CSV -> {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        SpeciesTableWriter.write(choice.species(), added(), text);
        text.flush();
      }
      case XLSX -> new LibraryWorkbook(extract(), choice.species(), added(), messages).write(out);
      case PACKAGE -> DataPackageWriter.write(extract(), messages, out);
    }
  }

  private LibraryExtract extract() {
    return choice.isWhole()
        ? LibraryExtract.whole(choice.library(), beside)
        : LibraryExtract.some(choice.library(), choice.species(), beside);
  }

  private List<Added> added() {
    return choice.fits().map(fits -> List.of(
        added(fits, "verdict", false, fit -> fit.verdict().key()),
        added(fits, "fit", true, fit -> fit.overall().isPresent() ? Units.number(fit.overall().getAsDouble(), 3) : ""),
        added(fits, "limiting_axis", false, fit -> fit.limiting().filter(a -> a.value() < 1).map(AxisFit::axis).map(a -> a.key()).orElse(""))))
        .orElse(List.of());
  }

  private static Added added(BedFits fits, String name, boolean number, Function<Fit, String> cell) {
    Function<Species, String> ofSpecies = species -> cell.apply(fits.of(species));
    return new Added(name, number, ofSpecies);
  }
}
