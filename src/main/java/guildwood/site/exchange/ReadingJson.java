package guildwood.site.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.IndicatorTable;
import guildwood.site.survey.PlotReading;
import guildwood.site.survey.SurveyAxis;
import guildwood.site.survey.WetlandRules.Rated;
import guildwood.species.names.NameMatch;
import guildwood.web.Messages;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Readings as JSON with a stable order of keys. Numbers are not rounded; what cannot be said is null. */
final class ReadingJson {
  private final JsonNodeFactory json = JsonNodeFactory.instance;
  private final ObjectMapper mapper = new ObjectMapper();
  private final Messages words;
  private final List<SurveyAxis> axes;

  ReadingJson(Messages words, List<IndicatorTable> tables) {
    this.words = words;
    this.axes = tables.stream().map(IndicatorTable::axis).distinct().sorted().toList();
  }

  String write(List<PlotReading> plots) throws JsonProcessingException {
    ObjectNode root = json.objectNode();
    ArrayNode list = root.putArray("plots");
    plots.forEach(plot -> list.add(plot(plot)));
    return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(root);
  }

  private ObjectNode plot(PlotReading plot) {
    ObjectNode node = json.objectNode().put("plot", plot.plot());
    ObjectNode matched = node.putObject("coverMatchedPercent");
    for (SurveyAxis axis : axes) {
      AxisReading reading = plot.readings().get(axis);
      matched.put(axis.key(), reading == null ? 0 : reading.matchedCoverPercent());
    }
    ObjectNode read = node.putObject("axes");
    plot.readings().forEach((axis, reading) -> read.set(axis.key(), axis(reading)));
    number(node, "prevalenceIndex", plot.prevalenceIndex());
    ArrayNode dominants = node.putArray("dominants");
    plot.dominance().ifPresent(d -> d.dominants().stream().map(Rated::species).forEach(dominants::add));
    number(node, "dominancePercent", plot.dominance().map(d -> d.wetlandPercent()).orElse(OptionalDouble.empty()));
    if (!plot.otherSystems().isEmpty()) {
      ArrayNode others = node.putArray("otherSystems");
      plot.otherSystems().forEach(r -> others.add(axis(r).put("axis", r.axis().key())));
    }
    ArrayNode names = node.putArray("names");
    plot.names().stream().filter(n -> n.match().needsTelling()).forEach(n -> names.add(name(n)));
    ArrayNode notes = node.putArray("notes");
    plot.notes().forEach(n -> notes.add(words.say(n)));
    return node;
  }

  private ObjectNode axis(AxisReading reading) {
    ObjectNode node = json.objectNode();
    node.put("median", reading.median());
    node.put("low80", reading.interval80().min());
    node.put("high80", reading.interval80().max());
    node.put("weightedMean", reading.averages().weightedMean());
    double error = reading.averages().standardError();
    number(node, "standardError", Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty());
    node.put("unweightedMean", reading.averages().unweightedMean());
    node.put("species", reading.voices().size());
    node.put("effectiveSpecies", reading.effectiveSpecies());
    ArrayNode warnings = node.putArray("warnings");
    reading.warnings().forEach(w -> warnings.add(words.say(w)));
    node.put("called", reading.called());
    node.put("system", reading.system());
    node.put("scaleLow", reading.scale().min());
    node.put("scaleHigh", reading.scale().max());
    ArrayNode voices = node.putArray("voices");
    for (AxisReading.Voice voice : reading.voices()) {
      voices.add(json.objectNode().put("species", voice.species()).put("weight", voice.weight()).put("pull", voice.pull())
          .put("low", voice.reach().min()).put("high", voice.reach().max()).put("generalist", voice.generalist()));
    }
    return node;
  }

  private ObjectNode name(PlotReading.TakenName name) {
    NameMatch match = name.match();
    ObjectNode node = json.objectNode().put("written", name.written());
    node.put("takenFor", match.name().orElse(null));
    node.put("how", match.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    if (!match.suggestions().isEmpty()) {
      ArrayNode suggestions = node.putArray("suggestions");
      match.suggestions().forEach(suggestions::add);
    }
    return node;
  }

  private static void number(ObjectNode node, String key, OptionalDouble value) {
    if (value.isPresent()) {
      node.put(key, value.getAsDouble());
    } else {
      node.putNull(key);
    }
  }
}
