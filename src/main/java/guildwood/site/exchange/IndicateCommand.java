package guildwood.site.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.IndicatorTable;
import guildwood.site.survey.Survey;
import guildwood.site.survey.SurveyReader;
import guildwood.web.Messages;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads site conditions from plants: two CSV files in, JSON out. Exit 2 with plain messages on bad input. */
@Command(
    name = "indicate",
    description = {
      "Read site conditions from the wild plants that grow there, and print JSON.",
      "The survey: plot,species,cover_percent[,status][,stratum][,stage].",
      "The values: species,system,axis,value[,width] or species,system,axis,min,max[,preferred_min,preferred_max]."
    },
    mixinStandardHelpOptions = true)
public final class IndicateCommand implements Callable<Integer> {
  private static final int MOST_MESSAGES = 50;

  @Spec
  private CommandSpec spec;

  @Option(names = "--survey", required = true, paramLabel = "FILE", description = "The survey, a CSV file.")
  private Path survey;

  @Option(names = "--values", required = true, paramLabel = "FILE", description = "The indicator values, a CSV file.")
  private Path values;

  @Option(names = "--cover-scale", paramLabel = "SCALE", defaultValue = "percent",
      description = "How cover is written: percent (default), braun-blanquet, daubenmire, carolina or van-der-maarel.")
  private String coverScale;

  @Override
  public Integer call() throws JsonProcessingException {
    Messages words = new Messages();
    List<Finding> findings = new ArrayList<>();
    Optional<CoverScale> scale = Arrays.stream(CoverScale.values()).filter(s -> s.key().equals(coverScale)).findFirst();
    if (scale.isEmpty()) {
      findings.add(Finding.of("value.unknown-word", "--cover-scale", coverScale,
          String.join(", ", Arrays.stream(CoverScale.values()).map(CoverScale::key).toList())));
    }
    Checked<List<Survey>> surveys = SurveyFile.read(survey, scale.orElse(CoverScale.PERCENT));
    Checked<List<IndicatorTable>> tables = ValuesFile.read(values);
    findings.addAll(surveys.findings());
    findings.addAll(tables.findings());
    if (!findings.isEmpty()) {
      PrintWriter err = spec.commandLine().getErr();
      findings.stream().limit(MOST_MESSAGES).forEach(f -> err.println(f.field() + ": " + words.say(f)));
      if (findings.size() > MOST_MESSAGES) {
        err.println("and " + (findings.size() - MOST_MESSAGES) + " more");
      }
      err.flush();
      return 2;
    }
    SurveyReader reader = new SurveyReader(tables.orThrow());
    String json = new ReadingJson(words, tables.orThrow()).write(surveys.orThrow().stream().map(reader::read).toList());
    new PrintStream(System.out, true, StandardCharsets.UTF_8).println(json);
    return 0;
  }
}
