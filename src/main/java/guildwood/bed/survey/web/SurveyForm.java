package guildwood.bed.survey.web;

import guildwood.bed.AreaReader;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.PlantLines;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.species.WetlandRegion;
import guildwood.web.Form;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The form of a survey: filling it in from one, and reading one out of it. */
final class SurveyForm {
  /** The ways to write cover that are offered. */
  static final List<CoverScale> SCALES = List.of(CoverScale.PERCENT, CoverScale.BRAUN_BLANQUET, CoverScale.DAUBENMIRE);

  private static final double SMALLEST_PLOT_M2 = 0.01;
  private static final double LARGEST_PLOT_M2 = 100_000;
  private static final String PLOT_UNIT = "plot-unit";

  private SurveyForm() {}

  static Map<String, String> blank(Ground ground, LocalDate today, Units units) {
    Map<String, String> values = new HashMap<>();
    values.put("name", shortened(ground.name()));
    values.put("date", today.toString());
    values.put("scale", CoverScale.PERCENT.key());
    values.put("region", "");
    values.put(PLOT_UNIT, units.key());
    return values;
  }

  static Map<String, String> filled(SurveySheet sheet, Units units) {
    Map<String, String> values = new HashMap<>();
    values.put("name", sheet.name());
    values.put("date", sheet.date().map(LocalDate::toString).orElse(""));
    values.put("plot", sheet.plotSizeM2().isPresent() ? plot(sheet.plotSizeM2().getAsDouble(), units == Units.US) : "");
    values.put(PLOT_UNIT, units.key());
    values.put("scale", sheet.scale().key());
    values.put("region", sheet.region().map(WetlandRegion::key).orElse(""));
    values.put("plants", PlantLines.write(sheet.rows()));
    values.put("note", sheet.note());
    return values;
  }

  /**
   * Reads the form; where it is refused the survey is absent and the form knows why.
   *
   * @param before the survey as it is kept; absent for a new one
   */
  static Optional<SurveySheet> read(Form form, Ground ground, Optional<SurveySheet> before, PlantNames names,
      List<WetlandRegion> regions, LocalDate today) {
    String name = form.text("name", SurveySheet.LONGEST_NAME);
    // Somewhere it is tomorrow already.
    Optional<LocalDate> date = form.date("date", today.plusDays(1));
    OptionalDouble plot = plot(form, before);
    Optional<CoverScale> scale = SCALES.stream().filter(s -> s.key().equals(form.value("scale"))).findFirst();
    Optional<WetlandRegion> region = regions.stream().filter(r -> r.key().equals(form.value("region"))).findFirst();
    if (scale.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "scale", form.value("scale")));
    }
    if (region.isEmpty() && form.ticked("region")) {
      form.refuse(Finding.of("item.unknown", "region", form.value("region")));
    }
    Optional<List<Row>> rows = scale.flatMap(s -> form.take(PlantLines.read(form.value("plants"), s, names::find, "plants")));
    String note = form.longText("note", SurveySheet.LONGEST_NOTE);
    if (form.isRefused()) {
      return Optional.empty();
    }
    SurveySheet sheet = new SurveySheet(0, ground.site().id(), ground.bedId(), name, date, plot, scale.orElseThrow(), region, note,
        rows.orElseThrow());
    return Optional.of(before.map(b -> sheet.keepingAccepted(b.rows())).orElse(sheet));
  }

  static boolean isSquareFeet(Form form) {
    return form.value(PLOT_UNIT).equals(Units.US.key());
  }

  /** All that is wrong with the list of plants, line by line. */
  static List<String> plantProblems(Form form, Messages messages) {
    return form.findings().stream().filter(f -> f.field().equals("plants")).map(messages::say).toList();
  }

  /** The classes of each scale with the percentage they stand for, in words. */
  static List<String> classes(Messages messages) {
    return SCALES.stream().filter(s -> !s.classes().isEmpty()).map(s -> messages.say("survey.scale." + s.key()) + ": "
        + String.join(", ", s.classes().stream().map(c -> messages.say("survey.class", c,
            Units.number(s.percent(c).orElseThrow(), 1))).toList())).toList();
  }

  static String shortened(String name) {
    return name.length() <= SurveySheet.LONGEST_NAME ? name : name.substring(0, SurveySheet.LONGEST_NAME);
  }

  private static OptionalDouble plot(Form form, Optional<SurveySheet> before) {
    String typed = form.optionalText("plot", 40);
    if (typed.isEmpty()) {
      return OptionalDouble.empty();
    }
    boolean squareFeet = isSquareFeet(form);
    OptionalDouble kept = before.map(SurveySheet::plotSizeM2).orElse(OptionalDouble.empty());
    if (kept.isPresent() && plot(kept.getAsDouble(), squareFeet).equals(typed)) {
      return kept;
    }
    Checked<Double> read = AreaReader.read(typed, squareFeet, "plot", SMALLEST_PLOT_M2, LARGEST_PLOT_M2, "survey.plot-out-of-scale");
    return form.take(read).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static String plot(double areaM2, boolean squareFeet) {
    return Units.number(squareFeet ? areaM2 / AreaReader.SQUARE_FOOT_M2 : areaM2, 2);
  }
}
