package guildwood.drawing.web;

import guildwood.drawing.DrawnBed;
import guildwood.drawing.Drawings;
import guildwood.drawing.Grown;
import guildwood.drawing.PlantKind;
import guildwood.drawing.YearLight;
import guildwood.drawing.Years;
import guildwood.species.Layer;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A bed's drawing in one year as the page shows it.
 *
 * @param name of the year
 * @param source address of the picture
 * @param facts what holds in this year, in short sentences
 * @param notes what was assumed or left out
 */
record DrawingView(int year, String name, String source, String description, List<String> facts, List<String> conflicts, List<String> notes) {

  /** One told year: cells in the order of the columns. */
  record YearRow(String year, boolean grown, List<String> cells, String open, String light, String dark) {}

  /** @param years the told years */
  record YearTable(List<String> layers, List<YearRow> years, boolean lightKnown, List<String> shaded) {}

  static DrawingView of(Drawings drawings, DrawnBed drawn, int year, Units units, Messages messages) {
    Grown.Cover cover = drawings.cover(drawn, year);
    List<String> facts = new ArrayList<>();
    facts.add(messages.say("drawing.fact.cover", DrawingText.percent(cover.any()), units.area(cover.openM2())));
    Optional<YearLight> light = drawings.light(drawn, year);
    light.ifPresent(l -> facts.add(messages.say("drawing.fact.light", DrawingText.hours(l.groundHours()), DrawingText.hours(l.openHours()))));
    light.ifPresent(l -> l.shaded(drawn.arrangement()).forEach(s -> facts.add(dark(drawn, s, messages))));
    String address = "/beds/" + drawn.scene().bed().id() + "/drawing.svg?year=" + year;
    return new DrawingView(year, name(drawn, year, messages), address, description(drawn, year, cover, messages), facts,
        new ConflictWords(drawn.arrangement(), units, messages).lines(drawn.conflicts()), notes(drawn, messages));
  }

  static String name(DrawnBed drawn, int year, Messages messages) {
    return year == 0 ? messages.say("drawing.year.planting")
        : messages.say(year >= drawn.untilGrown() ? "drawing.year.grown" : "drawing.year", year);
  }

  private static String dark(DrawnBed drawn, YearLight.Shaded shaded, Messages messages) {
    return messages.say("drawing.fact.dark", kind(drawn, shaded).name(), DrawingText.hours(shaded.hours().min()), DrawingText.hours(shaded.needsHours()));
  }

  private static PlantKind kind(DrawnBed drawn, YearLight.Shaded shaded) {
    return drawn.arrangement().kinds().stream().filter(k -> k.speciesId().equals(shaded.speciesId())).findFirst().orElseThrow();
  }

  /** What somebody who does not see the drawing is told. */
  static String description(DrawnBed drawn, int year, Grown.Cover cover, Messages messages) {
    List<String> kinds = drawn.arrangement().kinds().stream().map(k -> k.plants() + " " + k.name()).toList();
    return messages.say("drawing.text", drawn.scene().bed().name(), name(drawn, year, messages), String.join(", ", kinds), DrawingText.percent(cover.any()));
  }

  private static List<String> notes(DrawnBed drawn, Messages messages) {
    List<String> notes = new ArrayList<>();
    List<String> rates = drawn.arrangement().kinds().stream().filter(PlantKind::rateAssumed).map(PlantKind::name).toList();
    List<String> heights = drawn.arrangement().kinds().stream().filter(PlantKind::heightAssumed).map(PlantKind::name).toList();
    if (!rates.isEmpty()) {
      notes.add(messages.say("drawing.note.rates", String.join(", ", rates)));
    }
    if (!heights.isEmpty()) {
      notes.add(messages.say("drawing.note.heights", String.join(", ", heights)));
    }
    if (!drawn.notDrawn().isEmpty()) {
      notes.add(messages.say("drawing.note.not-drawn", String.join(", ", drawn.notDrawn())));
    }
    notes.add(messages.say(drawn.arrangement().ground().traced() ? "drawing.note.traced" : "drawing.note.rectangle"));
    return notes;
  }

  static YearTable table(Drawings drawings, DrawnBed drawn, Units units, Messages messages) {
    List<Layer> layers = drawn.arrangement().kinds().stream().map(PlantKind::layer).distinct().toList();
    List<YearRow> rows = new ArrayList<>();
    Map<String, String> shaded = new LinkedHashMap<>();
    for (int year : Years.told(drawn.arrangement(), drawn.settings().maturity())) {
      Grown.Cover cover = drawings.cover(drawn, year);
      Optional<YearLight> light = drawings.light(drawn, year);
      List<YearLight.Shaded> dark = light.map(l -> l.shaded(drawn.arrangement())).orElse(List.of());
      dark.forEach(s -> shaded.putIfAbsent(s.speciesId(), messages.say(year == 0 ? "drawing.shaded.at-once" : "drawing.shaded", kind(drawn, s).name(), year,
          DrawingText.hours(s.hours().min()), DrawingText.hours(s.needsHours()))));
      rows.add(new YearRow(Integer.toString(year), year >= drawn.untilGrown(), layers.stream().map(l -> DrawingText.percent(cover.byLayer().get(l))).toList(),
          units.area(cover.openM2()), light.map(l -> DrawingText.hours(l.groundHours())).orElse("–"),
          dark.isEmpty() ? "–" : String.join(", ", dark.stream().map(s -> kind(drawn, s).name()).toList())));
    }
    return new YearTable(layers.stream().map(l -> messages.say("term.layer." + l.key())).toList(), rows, drawn.sun().isPresent(), List.copyOf(shaded.values()));
  }
}
