package guildwood.site.survey.web;

import guildwood.site.survey.AxisReading;
import guildwood.site.survey.AxisReading.Voice;
import guildwood.site.survey.IndicatorLibrary;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.SurveyAxis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What the plants say on one axis, in words.
 *
 * @param headline the answer in one sentence
 * @param sources where the values of these plants come from
 */
public record AxisView(
    String key, String label, boolean called, String headline, String median, String interval, String effective, String matched,
    String weighted, String unweighted, List<String> warnings, List<VoiceView> voices, AxisPicture picture, List<String> sources) {

  /** One species that speaks. */
  public record VoiceView(String name, String species, String weight, String reach, String pull, boolean generalist) {}

  public static AxisView of(AxisReading reading, PlantNames names, IndicatorLibrary library, Messages messages) {
    AxisWords words = new AxisWords(messages);
    SurveyAxis axis = reading.axis();
    String headline = reading.called()
        ? messages.say("reading.headline", words.classes(axis, reading.interval80()), words.classes(axis, reading.median()))
        : messages.say("reading.no-call");
    double error = reading.averages().standardError();
    String mean = words.full(axis, onScale(reading, reading.averages().weightedMean()));
    String weighted = Double.isFinite(error) ? messages.say("reading.mean-error", mean, Units.number(error, 2)) : mean;
    List<VoiceView> voices = reading.voices().stream().sorted(Comparator.comparingDouble(Voice::weight).reversed())
        .map(v -> voice(v, axis, names, words)).toList();
    return new AxisView(axis.key(), words.label(axis), reading.called(), headline, words.full(axis, reading.median()),
        words.full(axis, reading.interval80()), Units.number(reading.effectiveSpecies(), 1),
        Units.number(reading.matchedCoverPercent(), 0), weighted,
        words.full(axis, onScale(reading, reading.averages().unweightedMean())),
        reading.warnings().stream().map(messages::say).toList(), voices,
        AxisPicture.of(reading, species -> commonName(species, names), messages), sources(reading, library));
  }

  private static VoiceView voice(Voice voice, SurveyAxis axis, PlantNames names, AxisWords words) {
    return new VoiceView(commonName(voice.species(), names), voice.species(), Units.number(100 * voice.weight(), 0),
        words.full(axis, voice.reach()), words.pull(axis, voice.pull()), voice.generalist());
  }

  private static String commonName(String species, PlantNames names) {
    return names.plant(species).map(Plant::commonName).orElse(species);
  }

  /** Centres of ranges can lie a little beyond a scale that ends where plants do. */
  private static double onScale(AxisReading reading, double mean) {
    return Math.min(reading.scale().max(), Math.max(reading.scale().min(), mean));
  }

  private static List<String> sources(AxisReading reading, IndicatorLibrary library) {
    List<String> species = reading.voices().stream().map(Voice::species).toList();
    return library.facts().stream().filter(f -> f.axis() == reading.axis() && species.contains(f.species()))
        .map(f -> library.sources().get(f.sourceId())).filter(Objects::nonNull).distinct()
        .map(s -> (s.author().isEmpty() ? "" : s.author() + (s.year().isPresent() ? " " + s.year().getAsInt() : "") + ": ") + s.title())
        .toList();
  }
}
