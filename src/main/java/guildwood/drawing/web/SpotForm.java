package guildwood.drawing.web;

import guildwood.bed.Bed;
import guildwood.drawing.Arrangement;
import guildwood.drawing.DrawnBed;
import guildwood.drawing.PlantKind;
import guildwood.drawing.Spot;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields in which places of plants are told in numbers: east and north of the bed's middle. */
final class SpotForm {
  static final Range STEP_M = new Range(0.01, 100);

  private SpotForm() {}

  /** A row of the table of places; what is wrong with its fields stands in the form. */
  record Row(String id, String plant, String layer, boolean standing) {}

  static List<Row> rows(DrawnBed drawn, String species, Messages messages) {
    Arrangement arrangement = drawn.arrangement();
    return arrangement.spots().stream().filter(s -> species.isEmpty() || s.speciesId().equals(species)).map(spot -> {
      PlantKind kind = arrangement.kind(spot);
      return new Row(spot.id(), DrawingText.plant(kind, spot), messages.say("term.layer." + kind.layer().key()), arrangement.isStanding(spot));
    }).toList();
  }

  static Form filled(DrawnBed drawn, Units units, Messages messages) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, units.key());
    for (Spot spot : drawn.arrangement().spots()) {
      LengthFields.put(values, "east." + spot.id(), spot.at().xM(), units);
      LengthFields.put(values, "north." + spot.id(), spot.at().yM(), units);
      values.put("lock." + spot.id(), spot.locked() ? "on" : "");
    }
    return Form.blank(values, messages);
  }

  /** The spots as typed, of those plants the form has fields for. Whoever is moved is locked. */
  static List<Spot> read(Form form, DrawnBed drawn) {
    LengthFields lengths = LengthFields.of(form);
    List<Spot> spots = new ArrayList<>();
    for (String id : form.names("east.")) {
      Optional<Spot> kept = drawn.arrangement().find(id);
      if (kept.isPresent()) {
        Optional<Double> east = lengths.required("east." + id, Bed.PLACE_M, kept.map(s -> s.at().xM()));
        Optional<Double> north = lengths.required("north." + id, Bed.PLACE_M, kept.map(s -> s.at().yM()));
        east.flatMap(x -> north.map(y -> new GroundPoint(x, y))).ifPresent(at -> {
          if (at.equals(kept.get().at())) {
            spots.add(kept.get().locked(form.ticked("lock." + id)));
          } else {
            inside(form, drawn, "east." + id, at).ifPresent(there -> spots.add(kept.get().at(there).locked(true)));
          }
        });
      }
    }
    return spots;
  }

  /** A place for a stem; refused outside the bed. */
  static Optional<GroundPoint> inside(Form form, DrawnBed drawn, String field, GroundPoint at) {
    if (drawn.arrangement().ground().outline().holds(at.xM(), at.yM())) {
      return Optional.of(at);
    }
    form.refuse(Finding.of("drawing.outside", field));
    return Optional.empty();
  }
}
