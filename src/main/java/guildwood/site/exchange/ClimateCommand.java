package guildwood.site.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.climate.DayTemperatures;
import guildwood.site.climate.Hemisphere;
import guildwood.site.climate.StationRecord;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads the climate of a place from daily temperatures: a CSV file in, JSON out. Exit 2 with plain sentences on bad input. */
@Command(
    name = "climate",
    description = {
      "Print frost dates, growing degree days and the coldest winter of a weather station as JSON.",
      "The days: date,min,max with dates as year-month-day; a second row may give the unit, F or C."
    },
    mixinStandardHelpOptions = true)
public final class ClimateCommand implements Callable<Integer> {
  private static final int REFUSED = 2;
  private static final int MOST_MESSAGES = 50;

  @Spec
  private CommandSpec spec;

  @Option(names = "--days", required = true, paramLabel = "FILE", description = "Daily temperatures, a CSV file.")
  private Path days;

  @Option(names = "--unit", paramLabel = "F|C", description = "The unit of the temperatures, where the file has no row for it.")
  private String unit;

  @Option(names = "--hemisphere", paramLabel = "HALF", defaultValue = "north", description = "north (default) or south.")
  private String hemisphere;

  @Option(names = "--base", paramLabel = "DEGREES", defaultValue = "50F",
      description = "Base of the plain growing degree days with its unit, 50F (default) or 10C for example.")
  private String base;

  @Override
  public Integer call() throws IOException {
    List<Finding> findings = new ArrayList<>();
    Optional<Hemisphere> half = Arrays.stream(Hemisphere.values()).filter(h -> h.key().equals(hemisphere)).findFirst();
    if (half.isEmpty()) {
      findings.add(Finding.of("value.unknown-word", "--hemisphere", hemisphere, "north, south"));
    }
    OptionalDouble baseF = DegreeUnit.readDegreesF(base);
    if (baseF.isEmpty()) {
      findings.add(Finding.of("climate.base-unreadable", "--base", base));
    }
    Optional<DegreeUnit> given = Optional.ofNullable(unit).flatMap(DegreeUnit::read);
    if (unit != null && given.isEmpty()) {
      findings.add(Finding.of("value.unknown-word", "--unit", unit, "F, C"));
    }
    Checked<List<DayTemperatures>> read = findings.isEmpty() ? StationFile.read(days, given) : Checked.refused(findings);
    if (read.isRefused()) {
      return complain(read.findings());
    }
    StationRecord station = StationRecord.of(read.orThrow(), half.orElseThrow());
    if (station.wholeYears().isEmpty()) {
      return complain(List.of(Finding.of("climate.no-whole-year." + half.get().key(), days.getFileName().toString())));
    }
    new ClimateReport(new Messages(), station, baseF.getAsDouble()).write(spec.commandLine().getOut());
    return 0;
  }

  private int complain(List<Finding> findings) {
    Messages words = new Messages();
    PrintWriter err = spec.commandLine().getErr();
    findings.stream().limit(MOST_MESSAGES).forEach(f -> err.println(f.field() + ": " + words.say(f)));
    if (findings.size() > MOST_MESSAGES) {
      err.println("and " + (findings.size() - MOST_MESSAGES) + " more");
    }
    err.flush();
    return REFUSED;
  }
}
