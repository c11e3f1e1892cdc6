package guildwood.guild.exchange;

import guildwood.fit.Fit;
import guildwood.guild.Composer;
import guildwood.guild.Composition;
import guildwood.guild.Effort;
import guildwood.guild.GuildProblem;
import guildwood.guild.Progress;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.SpeciesTable;
import guildwood.species.exchange.SpeciesTableReader;
import guildwood.web.Messages;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Composes guilds for the bed in one file from the species in another and prints them as JSON. Exit 0, also
 * where a wish cannot be met: the answer says why. Exit 2 where a file cannot be read as it stands.
 */
@Command(
    name = "compose",
    description = {
      "Compose guilds for a bed and print them as JSON: proposals, what they leave open and why, and how every"
          + " species suits the bed. The same files and seed give the same bytes on every machine."
    },
    mixinStandardHelpOptions = true)
public final class ComposeCommand implements Callable<Integer> {
  private static final int REFUSED = 2;
  private static final int MOST_FINDINGS = 50;
  private static final int MOST_PROPOSALS = 20;

  @Spec
  private CommandSpec spec;

  @Option(names = "--bed", paramLabel = "FILE", required = true,
      description = "The bed with its wishes, rules, standing plants and stock, a JSON file.")
  private Path bedFile;

  @Option(names = "--species", paramLabel = "FILE", required = true,
      description = "The species, a CSV file as the library page gives it out.")
  private Path speciesFile;

  @Option(names = "--seed", paramLabel = "NUMBER", defaultValue = "1",
      description = "Another seed looks elsewhere first (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(names = "--proposals", paramLabel = "NUMBER", defaultValue = "5",
      description = "How many proposals at most, 1 to " + MOST_PROPOSALS + " (default: ${DEFAULT-VALUE}).")
  private int proposals;

  private final Messages messages = new Messages();
  private final List<String> warnings = new ArrayList<>();
  private int findings;

  @Override
  public Integer call() throws IOException {
    if (proposals < 1 || proposals > MOST_PROPOSALS) {
      complain("--proposals", List.of(Finding.of("json.out-of-scale", "", proposals, 1, MOST_PROPOSALS)));
    }
    Optional<SpeciesLibrary> library = library();
    // Without species the bed can still be read for what else is wrong, but not for the species it names.
    Optional<BedFile> bed = library.flatMap(this::bed);
    if (findings > 0 || bed.isEmpty()) {
      return REFUSED;
    }
    if (bed.get().plan().bed().conditions().keySet().stream().noneMatch(Fit.DECISIVE::contains)) {
      warn(bedFile, Finding.of("compose.nothing-decisive", ""));
    }
    GuildProblem problem = bed.get().problem();
    Composition composition = new Composer(Effort.USUAL).compose(problem, seed, proposals, Progress.UNWATCHED);
    new CompositionJson(bed.get().plan(), problem, messages).write(composition, seed, warnings, spec.commandLine().getOut());
    return CommandLine.ExitCode.OK;
  }

  private Optional<SpeciesLibrary> library() {
    Optional<byte[]> bytes = bytes(speciesFile);
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    Checked<SpeciesTable> table = SpeciesTableReader.read(new ByteArrayInputStream(bytes.get()));
    complain(speciesFile.toString(), table.findings());
    table.value().ifPresent(t -> t.unknownColumns().forEach(column ->
        warn(speciesFile, Finding.of("species-table.ignored", "", column))));
    return table.value().map(SpeciesTable::library);
  }

  private Optional<BedFile> bed(SpeciesLibrary library) {
    Optional<byte[]> bytes = bytes(bedFile);
    List<String> ignored = new ArrayList<>();
    Optional<Checked<BedFile>> read = bytes.map(b -> BedFileReader.read(b, library, ignored));
    read.ifPresent(r -> complain(bedFile.toString(), r.findings()));
    ignored.forEach(key -> warn(bedFile, Finding.of("json.ignored", "", key)));
    return read.flatMap(Checked::value);
  }

  private Optional<byte[]> bytes(Path file) {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      complain(file.toString(), List.of(Finding.of("file.missing", "")));
    } catch (AccessDeniedException e) {
      complain(file.toString(), List.of(Finding.of("file.denied", "")));
    } catch (IOException e) {
      complain(file.toString(), List.of(Finding.of("file.unreadable", "")));
    }
    return Optional.empty();
  }

  /** Said at once, and again in the answer. */
  private void warn(Path file, Finding finding) {
    say(file.toString(), finding);
    warnings.add(messages.say(finding));
  }

  private void complain(String what, List<Finding> all) {
    findings += all.size();
    all.stream().limit(MOST_FINDINGS).forEach(finding -> say(what, finding));
    if (all.size() > MOST_FINDINGS) {
      say(what, Finding.of("json.more", "", all.size() - MOST_FINDINGS));
    }
  }

  /** One sentence, with typographic quotes made plain for terminals that know ASCII only. */
  private void say(String what, Finding finding) {
    String where = finding.field().isEmpty() ? "" : finding.field() + ": ";
    String sentence = messages.say(finding).replaceAll("[“”]", "\"").replaceAll("[‘’]", "'");
    PrintWriter err = spec.commandLine().getErr();
    err.println("guildwood: " + what + ": " + where + sentence);
  }
}
