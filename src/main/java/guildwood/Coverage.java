package guildwood;

import guildwood.kernel.Checked;
import guildwood.species.LibraryCoverage;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.web.Messages;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints how much of the library that comes with the program is known, as Markdown tables. */
@Command(
    name = "coverage",
    description = "Print how much of the library that comes with the program is known, and from what kind of source.",
    mixinStandardHelpOptions = true)
final class Coverage implements Callable<Integer> {
  @Spec
  private CommandSpec spec;

  private final Messages messages = new Messages();

  @Override
  public Integer call() {
    Checked<SpeciesLibrary> library = ShippedLibrary.read(FirstFilling.SEED);
    if (library.isRefused()) {
      PrintWriter err = spec.commandLine().getErr();
      library.findings().forEach(f -> err.println(f.field() + ": " + messages.say(f)));
      err.flush();
      return 2;
    }
    print(LibraryCoverage.of(library.orThrow()), spec.commandLine().getOut());
    return 0;
  }

  private void print(LibraryCoverage coverage, PrintWriter out) {
    out.println(messages.say("coverage.intro", coverage.species(), coverage.values()));
    head(out, "trait", "known", "share", "values", "common-practice");
    for (LibraryCoverage.TraitLine line : coverage.traits()) {
      row(out, messages.say("trait." + line.trait().key()), line.known(), percent(line.known(), coverage.species()),
          line.values(), line.commonPractice());
    }
    head(out, "function", "measured", "observed", "folk", "no");
    for (LibraryCoverage.FunctionLine line : coverage.functions()) {
      // A claim without a grade counts with the weakest.
      row(out, messages.say("item.function." + line.function().key()), line.measured(), line.observed(),
          line.folk() + line.ungraded(), line.no());
    }
    head(out, "kind", "sources", "values", "share");
    for (LibraryCoverage.KindLine line : coverage.kinds()) {
      if (line.sources() == 0) {
        continue;
      }
      row(out, messages.say("source.kind." + line.kind().key()), line.sources(), line.values(),
          percent(line.values(), coverage.values()));
    }
    out.flush();
  }

  private void head(PrintWriter out, String... columns) {
    out.println();
    StringBuilder names = new StringBuilder("|");
    StringBuilder rule = new StringBuilder("|");
    for (String column : columns) {
      names.append(' ').append(messages.say("coverage." + column)).append(" |");
      rule.append(rule.length() == 1 ? " --- |" : " ---: |");
    }
    out.println(names);
    out.println(rule);
  }

  private static void row(PrintWriter out, Object... cells) {
    StringBuilder row = new StringBuilder("|");
    for (Object cell : cells) {
      row.append(' ').append(cell).append(" |");
    }
    out.println(row);
  }

  private static String percent(int part, int whole) {
    return whole == 0 ? "0.0 %" : String.format(Locale.ROOT, "%.1f %%", 100.0 * part / whole);
  }
}
