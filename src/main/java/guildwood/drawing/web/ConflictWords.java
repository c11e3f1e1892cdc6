package guildwood.drawing.web;

import guildwood.drawing.Arrangement;
import guildwood.drawing.Conflict;
import guildwood.drawing.PlantKind;
import guildwood.drawing.Spot;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Conflicts in words, those of one kind and the same species in one sentence. */
final class ConflictWords {
  private final Arrangement arrangement;
  private final Units units;
  private final Messages messages;

  ConflictWords(Arrangement arrangement, Units units, Messages messages) {
    this.arrangement = arrangement;
    this.units = units;
    this.messages = messages;
  }

  List<String> lines(List<Conflict> conflicts) {
    Map<String, List<Conflict>> alike = new LinkedHashMap<>();
    for (Conflict conflict : conflicts) {
      String species = String.join("+", conflict.spots().stream().map(id -> spot(id).speciesId()).sorted().toList());
      alike.computeIfAbsent(conflict.kind() + " " + species, k -> new ArrayList<>()).add(conflict);
    }
    return alike.values().stream().map(this::line).toList();
  }

  private String line(List<Conflict> alike) {
    Conflict first = alike.get(0);
    List<Spot> spots = first.spots().stream().map(this::spot).toList();
    PlantKind one = arrangement.kind(spots.get(0));
    PlantKind other = arrangement.kind(spots.get(spots.size() - 1));
    String by = DrawingText.length(alike.stream().mapToDouble(Conflict::byM).max().orElseThrow(), units);
    String key = first.kind().key();
    return alike.size() == 1
        ? messages.say("drawing.conflict." + key, DrawingText.plant(one, spots.get(0)), DrawingText.plant(other, spots.get(spots.size() - 1)), by)
        : messages.say("drawing.conflicts." + key, one.name(), other.name(), by, alike.size());
  }

  private Spot spot(String id) {
    return arrangement.find(id).orElseThrow();
  }
}
