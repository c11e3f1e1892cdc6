package guildwood.bed.survey.web;

import guildwood.bed.Bed;
import guildwood.bed.Evidence;
import guildwood.bed.SurveyReadings;
import guildwood.site.Condition;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.Occurrence;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.PlotReading;
import guildwood.site.survey.SurveyAxis;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.site.survey.web.AxisView;
import guildwood.site.survey.web.AxisWords;
import guildwood.site.survey.web.WetlandView;
import guildwood.site.web.ConditionView;
import guildwood.species.names.NameMatch;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A survey and what its plants say, in words.
 *
 * @param facts date, plot, scale
 * @param matched how many names are taken for a plant, in words
 * @param notes what holds for the whole plot
 * @param unheard axes no plant speaks about, in words; may be empty
 * @param wetland none, or one
 */
public record SurveyView(
    long id, String name, List<String> facts, String note, String matched, List<String> notes, List<PlantView> plants,
    List<PlantView> unmatched, List<AxisPart> axes, String unheard, List<WetlandView> wetland, boolean regionChosen) {

  /** One row as typed, with what it is taken for; {@code accepted} where a person said so. */
  public record PlantView(
      String written, String taken, String takenName, boolean renamed, boolean accepted, String cover, String status, boolean planted,
      List<Suggestion> suggestions) {}

  public record Suggestion(String species, String name) {}

  /** One axis with what else is known of it, and where it can be taken over. */
  public record AxisPart(AxisView view, List<String> contradictions, List<String> kept, List<Target> targets) {}

  /** A bed that can take the interval over. @param replaces what it states now; may be empty */
  public record Target(long id, String name, String replaces) {}

  static SurveyView of(SurveySheet sheet, Ground ground, List<Bed> beds, SurveyReadings readings, Units units, Messages messages) {
    PlotReading plot = readings.read(sheet);
    List<PlantView> plants = sheet.rows().stream().map(r -> plant(r, sheet, readings.names(), messages)).toList();
    List<AxisPart> axes = new ArrayList<>();
    for (Map.Entry<SurveyAxis, AxisReading> entry : plot.readings().entrySet()) {
      axes.add(part(sheet, entry.getValue(), ground, beds, readings, units, messages));
    }
    AxisWords words = new AxisWords(messages);
    String unheard = String.join(", ", plot.unheard().stream().map(words::label).toList());
    List<WetlandView> wetland = sheet.region().isPresent() && plot.dominance().isPresent()
        ? List.of(WetlandView.of(plot, sheet.region().get(), readings.names(), messages)) : List.of();
    return new SurveyView(sheet.id(), sheet.name(), facts(sheet, units, messages), sheet.note(),
        messages.say("survey.matched", sheet.matchedRows(), sheet.wildRows().size()), plot.notes().stream().map(messages::say).toList(), plants,
        plants.stream().filter(p -> p.taken().isEmpty() && !p.planted()).distinct().toList(), axes, unheard, wetland, sheet.region().isPresent());
  }

  private static List<String> facts(SurveySheet sheet, Units units, Messages messages) {
    List<String> facts = new ArrayList<>();
    facts.add(sheet.date().map(SurveyLine::day).orElse(messages.say("survey.no-date")));
    sheet.plotSizeM2().ifPresent(m2 -> facts.add(messages.say("survey.fact.plot", units.area(m2))));
    boolean anyCover = sheet.rows().stream().anyMatch(r -> !r.cover().isEmpty());
    facts.add(anyCover ? messages.say("survey.fact.scale", messages.say("survey.scale." + sheet.scale().key())) : messages.say("survey.fact.list"));
    sheet.region().ifPresent(r -> facts.add(messages.say("survey.fact.region", messages.say("item.wetland." + r.key()))));
    return facts;
  }

  private static PlantView plant(Row row, SurveySheet sheet, PlantNames names, Messages messages) {
    NameMatch match = names.find(row.written());
    String cover = row.cover().isEmpty() ? "" : switch (sheet.scale()) {
      case PERCENT -> messages.say("survey.cover.percent", row.cover());
      default -> messages.say("survey.cover.class", row.cover(), Units.number(sheet.scale().percent(row.cover()).orElseThrow(), 1));
    };
    List<String> status = new ArrayList<>();
    status.add(messages.say("survey.origin." + row.origin().name().toLowerCase(Locale.ROOT)));
    if (row.stage() != Occurrence.Stage.NOT_SAID) {
      status.add(messages.say("survey.stage." + row.stage().name().toLowerCase(Locale.ROOT)));
    }
    List<Suggestion> suggestions = row.taken().isPresent() ? List.of()
        : match.suggestions().stream().map(s -> new Suggestion(s, name(s, names))).toList();
    return new PlantView(row.written(), row.taken().orElse(""), row.taken().map(t -> name(t, names)).orElse(""),
        row.taken().isPresent() && !row.taken().get().equals(row.written()), row.taken().isPresent() && match.name().isEmpty(),
        cover, String.join(", ", status), row.origin() == Occurrence.Origin.PLANTED, suggestions);
  }

  private static String name(String species, PlantNames names) {
    return names.plant(species).map(Plant::commonName).orElse(species);
  }

  private static AxisPart part(SurveySheet sheet, AxisReading reading, Ground ground, List<Bed> beds, SurveyReadings readings,
      Units units, Messages messages) {
    AxisView view = AxisView.of(reading, readings.names(), readings.library(), messages);
    List<String> contradictions = new ArrayList<>();
    List<String> kept = new ArrayList<>();
    List<Target> targets = new ArrayList<>();
    if (!ground.isBed()) {
      addContradiction(contradictions, Evidence.of(sheet, reading, ground.site()), ground.site().name(), units, messages);
    }
    for (Bed bed : beds) {
      Evidence evidence = Evidence.of(sheet, reading, bed, ground.site());
      boolean ownStatement = bed.conditions().values().stream().anyMatch(c -> evidence.stated().filter(c::equals).isPresent());
      if (ground.isBed() || ownStatement) {
        addContradiction(contradictions, evidence, bed.name(), units, messages);
      }
      if (reading.condition(sheet.name()).isPresent()) {
        if (evidence.isOutranked()) {
          kept.add(messages.say("reading.measured-stays", bed.name(), stated(evidence.stated().orElseThrow(), units, messages)));
        } else {
          Optional<Condition> own = reading.axis().axis().map(bed.conditions()::get);
          targets.add(new Target(bed.id(), bed.name(), own.map(c -> stated(c, units, messages)).orElse("")));
        }
      }
    }
    return new AxisPart(view, contradictions, kept, targets);
  }

  private static void addContradiction(List<String> lines, Evidence evidence, String of, Units units, Messages messages) {
    if (evidence.isContradiction()) {
      lines.add(messages.say("reading.contradiction", of, stated(evidence.stated().orElseThrow(), units, messages)));
    }
  }

  private static String stated(Condition condition, Units units, Messages messages) {
    ConditionView view = ConditionView.of(condition, units, messages);
    return messages.say("reading.stated", view.full(), view.basis());
  }

  /** A contradiction as the bed's page tells it. */
  public static String contradiction(Evidence evidence, Units units, Messages messages) {
    AxisWords words = new AxisWords(messages);
    return messages.say("bed.contradiction", words.label(evidence.reading().axis()),
        stated(evidence.stated().orElseThrow(), units, messages),
        words.full(evidence.reading().axis(), evidence.reading().interval80()), evidence.survey().name());
  }
}
