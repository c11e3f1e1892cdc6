package guildwood;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.SurveyReadings;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.PlantLines;
import guildwood.site.survey.SurveySheet;
import guildwood.species.WetlandRegion;
import guildwood.species.exchange.CsvTable.Row;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** The invented surveys of the demonstration, from {@code seed-data/demo}. */
final class DemoSurveys {
  private DemoSurveys() {}

  static void fill(Beds beds, SurveyReadings readings) {
    List<Row> plants = DemoRows.of("survey-plants", "survey", "line");
    for (Row row : DemoRows.of("surveys", "bed", "name", "date", "plot_size_m2", "region", "note")) {
      Bed bed = beds.all().stream().filter(b -> b.name().equals(row.cell("bed"))).findFirst().orElseThrow();
      String lines = plants.stream().filter(p -> p.cell("survey").equals(row.cell("name"))).map(p -> p.cell("line"))
          .collect(Collectors.joining("\n"));
      readings.surveys().add(new SurveySheet(0, bed.siteId(), OptionalLong.of(bed.id()), row.cell("name"),
          Optional.of(LocalDate.parse(row.cell("date"))), OptionalDouble.of(Double.parseDouble(row.cell("plot_size_m2"))),
          CoverScale.PERCENT, Optional.of(WetlandRegion.valueOf(row.cell("region"))), row.cell("note"),
          PlantLines.read(lines, CoverScale.PERCENT, readings.names()::find, "line").orThrow())).orElseThrow();
    }
  }
}
