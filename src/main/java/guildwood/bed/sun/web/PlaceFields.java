package guildwood.bed.sun.web;

import guildwood.bed.sun.Nearby;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.Compass;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Map;
import java.util.Optional;

/** Where something stands, seen from the bed's middle: distance and direction, or east and north. */
final class PlaceFields {
  /** Two ways of telling one place may differ by so much before they contradict each other, metres. */
  private static final double SAME_M = 0.1;

  private static final Range DISTANCE_M = new Range(0, Nearby.PLACE_M.max());

  private final Form form;
  private final LengthFields lengths;

  PlaceFields(Form form, LengthFields lengths) {
    this.form = form;
    this.lengths = lengths;
  }

  static void fill(Map<String, String> values, GroundPoint at, Units units) {
    LengthFields.put(values, "east", at.xM(), units);
    LengthFields.put(values, "north", at.yM(), units);
  }

  boolean anyTyped() {
    return isPaced() || isSurveyed();
  }

  private boolean isPaced() {
    return form.ticked("distance") || form.ticked("direction");
  }

  private boolean isSurveyed() {
    return form.ticked("east") || form.ticked("north");
  }

  /**
   * The place; absent where it is refused. Where both ways are filled in they must agree.
   *
   * @param before as it was when the form was filled in
   */
  Optional<GroundPoint> read(Optional<GroundPoint> before) {
    Optional<GroundPoint> paced = isPaced() ? paced() : Optional.empty();
    Optional<GroundPoint> surveyed = isSurveyed() ? surveyed(before) : Optional.empty();
    if (!anyTyped()) {
      form.refuse(Finding.of("value.missing", "distance"));
    } else if (paced.isPresent() && surveyed.isPresent() && apart(paced.get(), surveyed.get()) > SAME_M) {
      Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
      form.refuse(Finding.of("nearby.two-places", "distance", SunWords.east(paced.get(), units), SunWords.north(paced.get(), units)));
      return Optional.empty();
    }
    return surveyed.or(() -> paced);
  }

  private Optional<GroundPoint> paced() {
    Optional<Double> distance = lengths.required("distance", DISTANCE_M);
    Optional<Double> direction = form.take(Compass.read(form.value("direction"), "direction"));
    return distance.flatMap(metres -> direction.map(degrees -> Compass.step(degrees, metres)));
  }

  private Optional<GroundPoint> surveyed(Optional<GroundPoint> before) {
    Optional<Double> east = lengths.required("east", Nearby.PLACE_M, before.map(GroundPoint::xM));
    Optional<Double> north = lengths.required("north", Nearby.PLACE_M, before.map(GroundPoint::yM));
    return east.flatMap(x -> north.map(y -> new GroundPoint(x, y)));
  }

  private static double apart(GroundPoint a, GroundPoint b) {
    return Math.hypot(a.xM() - b.xM(), a.yM() - b.yM());
  }
}
