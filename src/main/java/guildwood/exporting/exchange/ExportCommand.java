package guildwood.exporting.exchange;

import guildwood.bed.store.SqlBeds;
import guildwood.choosing.BedChoice;
import guildwood.choosing.BedChoices;
import guildwood.choosing.CurrentIndex;
import guildwood.choosing.web.AddressedChoice;
import guildwood.exporting.ExportFormat;
import guildwood.kernel.Finding;
import guildwood.site.store.SqlSites;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.SpeciesRecords;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Writes the library of a data directory, or what the library page would show of it, to a file. Exit 0 when the file
 * stands, 2 with plain sentences where it does not; a file that was there before stays as it was then.
 */
@Command(
    name = "export",
    description = {
      "Write the species library to a file: as a table (csv), as a workbook (xlsx), or as a data package (package) that"
          + " another Guildwood can import without loss."
    },
    mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
  private static final int REFUSED = 2;

  @Spec
  private CommandSpec spec;

  @Option(names = "--data", paramLabel = "DIR", defaultValue = "data",
      description = "Where the database lives (default: ./${DEFAULT-VALUE}).")
  private Path data;

  @Option(names = "--format", paramLabel = "FORM",
      description = "csv, xlsx or package (default: as the file is called, .csv, .xlsx or .zip).")
  private String format;

  @Option(names = "--to", paramLabel = "FILE", required = true, description = "The file to write.")
  private Path to;

  @Option(names = "--filter", paramLabel = "ADDRESS", defaultValue = "",
      description = "Only what the library page shows under this address, for example 'layer=shrub&function=nitrogen-fixer'.")
  private String filter;

  private final Messages messages = new Messages();

  @Override
  public Integer call() throws IOException {
    Optional<ExportFormat> form = form();
    if (form.isEmpty()) {
      return refuse(format == null ? Finding.of("export.form-not-named", "") : Finding.of("export.form-unknown", "", format));
    }
    Optional<Map<String, List<String>>> parameters = AddressedChoice.parametersOf(filter);
    if (parameters.isEmpty()) {
      return refuse(Finding.of("export.filter-unreadable", "", filter));
    }
    List<String> unknown = AddressedChoice.unknownNames(parameters.get());
    if (!unknown.isEmpty()) {
      return refuse(unknown.stream().map(name -> Finding.of("export.filter-unknown", "", name)).toArray(Finding[]::new));
    }
    if (!Database.isIn(data)) {
      return refuse(Finding.of("export.no-database", "", data));
    }
    try (Database database = Database.open(data)) {
      return write(database, parameters.get(), form.get());
    }
  }

  private int write(Database database, Map<String, List<String>> parameters, ExportFormat form) throws IOException {
    SpeciesRecords records = new SqlSpeciesRecords(database);
    List<BedChoice> beds = BedChoices.of(new SqlSites(database), new SqlBeds(database)).all();
    AddressedChoice choice = AddressedChoice.of(parameters, new CurrentIndex(records::library).get(), beds);
    if (!choice.notes().isEmpty()) {
      return refuse(choice.notes().stream().map(ExportCommand::refusal).toArray(Finding[]::new));
    }
    write(new LibraryExport(choice, Beside.of(records), messages), form);
    spec.commandLine().getOut().println(messages.say("export.written", choice.species().size(), to));
    return CommandLine.ExitCode.OK;
  }

  private Optional<ExportFormat> form() {
    if (format != null) {
      return ExportFormat.ofKey(format.toLowerCase(Locale.ROOT));
    }
    String name = to.toString().toLowerCase(Locale.ROOT);
    return Arrays.stream(ExportFormat.values()).filter(f -> name.endsWith(ending(f.fileName()))).findFirst();
  }

  private static String ending(String fileName) {
    return fileName.substring(fileName.lastIndexOf('.'));
  }

  /** On a page what cannot be read is left out and noted; a file cannot tell that it holds more than was asked for. */
  private static Finding refusal(Finding note) {
    List<String> args = new ArrayList<>(note.args());
    args.add(note.field());
    return new Finding(note.code().replace("choosing.", "export.filter."), "", args);
  }

  /** Written beside the file and moved into its place, so that nobody ever finds half a file. */
  private void write(LibraryExport export, ExportFormat form) throws IOException {
    Path folder = Optional.ofNullable(to.toAbsolutePath().getParent()).orElseThrow();
    Path unfinished = Files.createTempFile(folder, "export", ".part");
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(unfinished))) {
        export.write(form, out);
      }
      Files.move(unfinished, to, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }

  private int refuse(Finding... findings) {
    for (Finding finding : findings) {
      // Typographic quotes made plain, for terminals that know ASCII only.
      spec.commandLine().getErr().println("guildwood: " + messages.say(finding).replaceAll("[“”]", "\"").replaceAll("[‘’]", "'"));
    }
    return REFUSED;
  }
}
