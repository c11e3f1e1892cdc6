package guildwood.siteplan.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.Compass;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PicturePlace;
import guildwood.siteplan.PlanPoints;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Scale, north and place of a picture. What is left empty stays as it is: two points and a distance give the scale, two
 * points or a direction give north, one point known on the site gives the place.
 */
final class PictureForm {
  /** The points of a picture that can be told, in pixels from its upper left corner. */
  static final List<String> SPOTS = List.of("scale-1", "scale-2", "south", "north", "pin");

  private static final Range DISTANCE_M = new Range(0.05, 5_000);

  private final Form form;
  private final PicturePlace before;
  private final LengthFields lengths;

  PictureForm(Form form, PicturePlace before) {
    this.form = form;
    this.before = before;
    this.lengths = LengthFields.of(form);
  }

  static Map<String, String> filled(PicturePlace place, Units units) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, units.key());
    values.put("turn", Units.number(place.turnDegrees(), 1));
    return values;
  }

  /** A point of the picture, pixels to the right and down. */
  private record Spot(double right, double down) {
    double distance(Spot other) {
      return Math.hypot(right - other.right, down - other.down);
    }
  }

  /** How the picture lies from now on; empty where something is refused. */
  Optional<PicturePlace> read() {
    Optional<Double> metresPerPx = metresPerPx();
    Optional<Double> turn = turnDegrees();
    if (form.isRefused()) {
      return Optional.empty();
    }
    PicturePlace laid = new PicturePlace(before.widthPx(), before.heightPx(), before.middle(), metresPerPx.orElse(before.metresPerPx()),
        turn.orElse(before.turnDegrees()));
    PicturePlace pinned = pinned(laid);
    return form.isRefused() ? Optional.empty() : Optional.of(pinned);
  }

  private boolean anyTold(String... fields) {
    return Stream.of(fields).anyMatch(form::ticked);
  }

  private Optional<Spot> spot(String name) {
    Optional<Double> right = pixels(name + ".x", before.widthPx());
    Optional<Double> down = pixels(name + ".y", before.heightPx());
    return right.flatMap(x -> down.map(y -> new Spot(x, y)));
  }

  private Optional<Double> pixels(String field, int most) {
    OptionalDouble number = form.number(field, 0, most);
    if (!form.ticked(field)) {
      form.refuse(Finding.of("value.missing", field));
    }
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private Optional<Double> metresPerPx() {
    if (!anyTold("scale-1.x", "scale-1.y", "scale-2.x", "scale-2.y", "distance")) {
      return Optional.empty();
    }
    Optional<Spot> one = spot("scale-1");
    Optional<Spot> other = spot("scale-2");
    Optional<Double> distance = lengths.required("distance", DISTANCE_M);
    if (one.isEmpty() || other.isEmpty() || areSame(one.get(), other.get(), "scale-2.x") || distance.isEmpty()) {
      return Optional.empty();
    }
    double metresPerPx = distance.get() / one.get().distance(other.get());
    if (!PicturePlace.METRES_PER_PX.contains(metresPerPx)) {
      form.refuse(Finding.of("picture.scale", "distance"));
      return Optional.empty();
    }
    return Optional.of(metresPerPx);
  }

  private boolean areSame(Spot one, Spot other, String field) {
    if (one.equals(other)) {
      form.refuse(Finding.of("picture.points-equal", field));
      return true;
    }
    return false;
  }

  /** Two points count, where they are told, before a direction in degrees. */
  private Optional<Double> turnDegrees() {
    if (!anyTold("south.x", "south.y", "north.x", "north.y")) {
      return form.ticked("turn") ? form.take(Compass.read(form.value("turn"), "turn")) : Optional.empty();
    }
    Optional<Spot> south = spot("south");
    Optional<Spot> north = spot("north");
    if (south.isEmpty() || north.isEmpty() || areSame(south.get(), north.get(), "north.x")) {
      return Optional.empty();
    }
    // The line looks so far clockwise of the upper edge; the upper edge as far the other way of north.
    double ofLine = Math.toDegrees(Math.atan2(north.get().right() - south.get().right(), south.get().down() - north.get().down()));
    return Optional.of((720 - ofLine) % 360);
  }

  private PicturePlace pinned(PicturePlace laid) {
    if (!anyTold("pin.x", "pin.y", "pin-east", "pin-north")) {
      return laid;
    }
    Optional<Spot> pin = spot("pin");
    Optional<Double> east = lengths.required("pin-east", PlanPoints.REACH_M);
    Optional<Double> north = lengths.required("pin-north", PlanPoints.REACH_M);
    if (pin.isEmpty() || east.isEmpty() || north.isEmpty()) {
      return laid;
    }
    GroundPoint offset = laid.fromMiddle(pin.get().right(), pin.get().down());
    double middleEast = east.get() - offset.xM();
    double middleNorth = north.get() - offset.yM();
    if (!PicturePlace.MIDDLE_M.contains(middleEast) || !PicturePlace.MIDDLE_M.contains(middleNorth)) {
      form.refuse(Finding.of("picture.too-far", "pin-east"));
      return laid;
    }
    return laid.at(new GroundPoint(middleEast, middleNorth));
  }
}
