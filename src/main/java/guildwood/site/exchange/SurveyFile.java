package guildwood.site.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.Occurrence;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import guildwood.site.survey.Survey;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * {@code plot,species,cover_percent[,status][,stratum][,stage]}: status wild (default) or planted; stage seedling or
 * mature. An empty cover means that the species was seen; plots keep the order of their first rows.
 */
final class SurveyFile {
  private SurveyFile() {}

  static Checked<List<Survey>> read(Path path, CoverScale scale) {
    return surveys(InputTable.read(path, List.of("plot", "species")), scale);
  }

  static Checked<List<Survey>> surveys(InputTable table, CoverScale scale) {
    Map<String, List<Occurrence>> plots = new LinkedHashMap<>();
    for (InputTable.Row row : table.rows()) {
      String plot = row.required("plot").orElse("");
      String species = row.required("species").orElse("");
      OptionalDouble cover = cover(row, scale);
      Origin origin = word(row, "status", Origin.WILD, Origin.values());
      Stage stage = word(row, "stage", Stage.NOT_SAID, Stage.SEEDLING, Stage.MATURE);
      if (!plot.isEmpty() && !species.isEmpty()) {
        plots.computeIfAbsent(plot, p -> new ArrayList<>())
            .add(new Occurrence(species, cover, origin, stage, row.text("stratum").toLowerCase(Locale.ROOT)));
      }
    }
    if (table.findings().isEmpty() && plots.isEmpty()) {
      return Checked.refused(Finding.of("table.no-rows", "survey"));
    }
    List<Survey> surveys = new ArrayList<>();
    plots.forEach((plot, occurrences) -> surveys.add(Survey.of(plot, occurrences)));
    return table.findings().isEmpty() ? Checked.of(List.copyOf(surveys)) : Checked.refused(table.findings());
  }

  private static OptionalDouble cover(InputTable.Row row, CoverScale scale) {
    String text = row.text("cover_percent");
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble percent = scale.percent(text);
    if (percent.isEmpty()) {
      if (scale == CoverScale.PERCENT) {
        row.refuse("cover_percent", "survey.cover-unreadable", text);
      } else {
        row.refuse("cover_percent", "value.unknown-word", text, String.join(", ", scale.classes()));
      }
    }
    return percent;
  }

  @SafeVarargs
  private static <E extends Enum<E>> E word(InputTable.Row row, String column, E usual, E... words) {
    String text = row.text(column);
    if (text.isEmpty()) {
      return usual;
    }
    List<String> known = new ArrayList<>();
    for (E word : words) {
      known.add(word.name().toLowerCase(Locale.ROOT));
      if (word.name().equalsIgnoreCase(text)) {
        return word;
      }
    }
    row.refuse(column, "value.unknown-word", text, String.join(", ", known));
    return usual;
  }
}
