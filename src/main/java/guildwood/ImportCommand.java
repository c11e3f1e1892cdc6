package guildwood;

import guildwood.importing.BroughtLibrary;
import guildwood.importing.Decisions;
import guildwood.importing.ImportCounts;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.Review;
import guildwood.importing.exchange.ChosenTable;
import guildwood.importing.exchange.ImportReport;
import guildwood.importing.exchange.ImportSummary;
import guildwood.importing.exchange.MappingFile;
import guildwood.importing.exchange.RejectedRows;
import guildwood.importing.exchange.UnreadTally;
import guildwood.importing.store.SqlImports;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.LibraryMerge;
import guildwood.species.exchange.DataPackageReader;
import guildwood.species.exchange.LibraryPackage;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Brings a table, or the data package of another library, into the library of a data directory. Exit 0 when it is kept,
 * whole; 2 with plain sentences where it is not, and then nothing of it is.
 */
@Command(
    name = "import",
    description = {
      "Bring a table (CSV, TSV, XLSX, ODS) or a data package into the species library, as one step that can be undone.",
      "What its columns mean is suggested by the table itself; --dry-run shows it and changes nothing."
    },
    mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {
  private static final int REFUSED = 2;
  private static final int MOST_FINDINGS = 50;

  @Spec
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The table, or a data package.")
  private Path file;

  @Option(names = "--data", paramLabel = "DIR", defaultValue = "data",
      description = "Where the database lives; made where there is none (default: ./${DEFAULT-VALUE}).")
  private Path data;

  @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet to bring in (default: the first that has a heading).")
  private String sheet;

  @Option(names = "--mapping", paramLabel = "FILE", description = "What the columns mean, as --save-mapping or the pages keep it.")
  private Path mappingFile;

  @Option(names = "--save-mapping", paramLabel = "FILE", description = "Write what the columns are taken to mean; to be corrected and handed in again.")
  private Path saveMapping;

  @Option(names = "--dry-run", description = "Say what would be brought in, and change nothing.")
  private boolean dryRun;

  @Option(names = "--rejects", paramLabel = "FILE", description = "Write the rows of which anything stays out, each with the reasons, as CSV.")
  private Path rejects;

  @Option(names = "--source", paramLabel = "TITLE", description = "Where the values come from (default: the name of the file).")
  private String source;

  @Option(names = "--source-kind", paramLabel = "KIND", defaultValue = "hearsay",
      description = "regulation, publication, agency-table, own-experience, hearsay or common-practice (default: ${DEFAULT-VALUE}).")
  private String sourceKind;

  @Option(names = "--report", paramLabel = "FILE", description = "Write the same as is printed, as JSON.")
  private Path report;

  private final Messages messages = new Messages();

  @Override
  public Integer call() throws IOException {
    if (!Files.isReadable(file) || Files.isDirectory(file)) {
      return refuse(file, List.of(Finding.of(Files.exists(file) ? "file.unreadable" : "file.missing", "")));
    }
    Checked<Optional<Mapping>> mapping = mapping();
    Optional<Source.Kind> kind = Source.Kind.ofKey(sourceKind);
    String title = (source == null ? file.getFileName().toString() : source).strip();
    if (mapping.isRefused()) {
      return refuse(mappingFile, mapping.findings());
    } else if (kind.isEmpty()) {
      return refuse(sourceKind, List.of(Finding.of("import.command.no-such-kind", "")));
    } else if (title.isEmpty() || title.length() > Source.LONGEST_TITLE) {
      return refuse("--source", List.of(Finding.of("import.command.source-title", "", Source.LONGEST_TITLE)));
    }
    boolean isPackage = DataPackageReader.isPackage(file);
    if (isPackage && (sheet != null || mappingFile != null || saveMapping != null || rejects != null || report != null || source != null)) {
      return refuse(file, List.of(Finding.of("import.command.package-options", "")));
    }
    try (Database database = Database.open(data)) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      if (isPackage) {
        return bringPackage(database, records);
      }
      FirstFilling.fill(records, messages, FirstFilling.SEED);
      return bringTable(database, records, mapping.orThrow(), new ImportSource(kind.get(), title, "", OptionalInt.empty()));
    }
  }

  private Checked<Optional<Mapping>> mapping() throws IOException {
    if (mappingFile == null) {
      return Checked.of(Optional.empty());
    }
    try {
      return MappingFile.read(Files.readAllBytes(mappingFile)).map(Optional::of);
    } catch (NoSuchFileException e) {
      return Checked.refused(Finding.of("file.missing", ""));
    } catch (AccessDeniedException e) {
      return Checked.refused(Finding.of("file.denied", ""));
    }
  }

  private int bringTable(Database database, SqlSpeciesRecords records, Optional<Mapping> saved, ImportSource from) throws IOException {
    Checked<ChosenTable> chosen = ChosenTable.of(file, Optional.ofNullable(sheet), saved, records.library());
    if (chosen.isRefused()) {
      return refuse(file, chosen.findings());
    }
    ChosenTable table = chosen.orThrow();
    if (saveMapping != null) {
      Files.writeString(saveMapping, MappingFile.write(table.mapping()), StandardCharsets.UTF_8);
    }
    ImportPlan plan = new ImportPlan(table.mapping(), from, Decisions.NONE);
    UnreadTally unread = new UnreadTally();
    Checked<ImportCounts> counts = review(table, plan, new Review(plan, records.library(), records.holdings()), unread);
    if (counts.isRefused()) {
      return refuse(file, counts.findings());
    }
    Optional<ImportRun> run = Optional.empty();
    if (!dryRun) {
      String title = messages.say("import.command.title", file.getFileName(), table.table().name());
      Checked<ImportRun> kept = new SqlImports(database, records).bring(table.table(), plan, title, Clock.systemUTC().instant(), ImportProgress.NONE);
      if (kept.isRefused()) {
        return refuse(file, kept.findings());
      }
      run = kept.value();
    }
    ImportSummary summary = new ImportSummary(file.toString(), table, run.map(ImportRun::counts).orElse(counts.orThrow()), unread, run);
    if (report != null) {
      Files.writeString(report, new ImportReport(messages).write(summary), StandardCharsets.UTF_8);
    }
    summary.lines(messages).forEach(line -> spec.commandLine().getOut().println(plain(line)));
    return CommandLine.ExitCode.OK;
  }

  private Checked<ImportCounts> review(ChosenTable table, ImportPlan plan, Review review, UnreadTally unread) throws IOException {
    if (rejects == null) {
      return unread.review(table.table(), review, Optional.empty(), messages);
    }
    try (Writer to = Files.newBufferedWriter(rejects, StandardCharsets.UTF_8)) {
      return unread.review(table.table(), review, Optional.of(new RejectedRows(to, plan.mapping().heading())), messages);
    }
  }

  private int bringPackage(Database database, SqlSpeciesRecords records) {
    Checked<LibraryPackage> read = DataPackageReader.read(file);
    if (read.isRefused()) {
      return refuse(file, read.findings());
    }
    LibraryPackage brought = read.orThrow();
    brought.remarks().forEach(remark -> complain(file, remark));
    if (dryRun) {
      say(LibraryMerge.of(records.library(), Beside.of(records), brought.contents(), id -> true));
      say("import.command.dry-run");
    } else {
      BroughtLibrary kept = new SqlImports(database, records).bring(brought.contents(), file.getFileName().toString(), Clock.systemUTC().instant());
      say(kept.merge());
      say("import.command.kept", Long.toString(kept.run().id()));
    }
    return CommandLine.ExitCode.OK;
  }

  private void say(LibraryMerge merge) {
    say("import.command.package", merge.additions().species().size(), merge.additions().statements().size(),
        merge.additions().sources().size(), merge.sameSpecies(), merge.sameValues(), merge.disagreeing());
    if (!merge.inBin().isEmpty()) {
      say("import.command.package-bin", String.join(", ", merge.inBin()));
    }
  }

  private void say(String key, Object... args) {
    spec.commandLine().getOut().println(plain(messages.say(key, args)));
  }

  private int refuse(Object what, List<Finding> findings) {
    findings.stream().limit(MOST_FINDINGS).forEach(finding -> complain(what, finding));
    if (findings.size() > MOST_FINDINGS) {
      complain(what, Finding.of("json.more", "", findings.size() - MOST_FINDINGS));
    }
    return REFUSED;
  }

  private void complain(Object what, Finding finding) {
    String where = finding.field().isEmpty() || finding.field().startsWith("column-") ? "" : finding.field() + ": ";
    spec.commandLine().getErr().println("guildwood: " + what + ": " + where + plain(messages.say(finding)));
  }

  /** Typographic quotes made plain, for terminals that know ASCII only. */
  private static String plain(String sentence) {
    return sentence.replaceAll("[“”]", "\"").replaceAll("[‘’]", "'");
  }
}
