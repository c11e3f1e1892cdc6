package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.BedOutline;
import guildwood.kernel.Finding;
import guildwood.site.sun.Compass;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Map;
import java.util.Optional;

/** The fields of a bed's form that tell its rectangle and where it lies on the site. */
final class BedGroundFields {
  /** The bed may fill its rectangle but for rounding, and must fill a quarter of it: less is a slip of the pen. */
  private static final double MOST_FILLED = 1.02;
  private static final double LEAST_FILLED = 0.25;

  private BedGroundFields() {}

  static void fill(Map<String, String> values, Bed bed, Units units) {
    bed.size().ifPresent(size -> {
      LengthFields.put(values, "length", size.lengthM(), units);
      LengthFields.put(values, "width", size.widthM(), units);
      values.put("turn", Units.number(size.turnDegrees(), 2));
    });
    bed.middle().ifPresent(middle -> {
      LengthFields.put(values, "east", middle.xM(), units);
      LengthFields.put(values, "north", middle.yM(), units);
    });
  }

  /** The rectangle; absent where none is told, or the form knows what is wrong with it. */
  static Optional<Rectangle> size(Form form, LengthFields lengths, Optional<Rectangle> before) {
    if (!form.ticked("length") && !form.ticked("width") && !form.ticked("turn")) {
      return Optional.empty();
    }
    Optional<Double> length = lengths.required("length", Rectangle.SIDE_M, before.map(Rectangle::lengthM));
    Optional<Double> width = lengths.required("width", Rectangle.SIDE_M, before.map(Rectangle::widthM));
    // It is of no matter which way a square without a direction lies: along the compass.
    boolean square = length.isPresent() && length.equals(width) && form.value("turn").isBlank();
    Optional<Double> kept = before.map(Rectangle::turnDegrees).filter(degrees -> Units.number(degrees, 2).equals(form.value("turn").strip()));
    Optional<Double> turn = square ? Optional.of(0.0) : kept.or(() -> form.take(Compass.read(form.value("turn"), "turn")));
    if (length.isEmpty() || width.isEmpty() || turn.isEmpty()) {
      return Optional.empty();
    }
    Rectangle size = new Rectangle(length.get(), width.get(), turn.get());
    if (size.slenderness() > BedOutline.MOST_SLENDER) {
      form.refuse(Finding.of("bed.too-slender", "width", Units.number(BedOutline.MOST_SLENDER, 0)));
    }
    return Optional.of(size);
  }

  /** Refuses a rectangle that the bed does not fit into, or gets lost in. */
  static void compare(Form form, Rectangle size, double areaM2) {
    Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
    double filled = areaM2 / size.areaM2();
    if (filled > MOST_FILLED || filled < LEAST_FILLED) {
      String code = filled > 1 ? "bed.size-too-small" : "bed.size-too-large";
      form.refuse(Finding.of(code, "length", units.area(size.areaM2()), units.area(areaM2)));
    }
  }

  /** Where the bed's middle lies; absent where that is not told, or the form knows what is wrong with it. */
  static Optional<GroundPoint> middle(Form form, LengthFields lengths, Optional<GroundPoint> before) {
    if (!form.ticked("east") && !form.ticked("north")) {
      return Optional.empty();
    }
    Optional<Double> east = lengths.required("east", Bed.PLACE_M, before.map(GroundPoint::xM));
    Optional<Double> north = lengths.required("north", Bed.PLACE_M, before.map(GroundPoint::yM));
    return east.flatMap(x -> north.map(y -> new GroundPoint(x, y)));
  }
}
