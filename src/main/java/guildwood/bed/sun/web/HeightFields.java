package guildwood.bed.sun.web;

import guildwood.bed.sun.Nearby.Height;
import guildwood.kernel.Finding;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.PacedHeight;
import guildwood.site.sun.Pacing;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How tall something is: told, or worked out from a distance and the angle to its top. */
final class HeightFields {
  /** A told and a paced height may differ by this share before they contradict each other. */
  private static final double SAME = 0.02;

  /** Where to begin; people put in their own. */
  private static final double EYE_M = 1.6;

  private final Form form;
  private final LengthFields lengths;

  HeightFields(Form form, LengthFields lengths) {
    this.form = form;
    this.lengths = lengths;
  }

  static void blank(Map<String, String> values, Units units) {
    LengthFields.put(values, "eye", EYE_M, units);
  }

  static void fill(Map<String, String> values, Height height, Units units) {
    if (height.paced().isEmpty()) {
      LengthFields.put(values, "height", height.metres(), units);
      return;
    }
    PacedHeight paced = height.paced().get();
    LengthFields.put(values, "away", paced.distanceM(), units);
    values.put("angle", Units.number(paced.angleDegrees(), 4));
    LengthFields.put(values, "eye", paced.eyeHeightM(), units);
  }

  boolean anyTyped() {
    return form.ticked("height") || isPaced();
  }

  private boolean isPaced() {
    return form.ticked("away") || form.ticked("angle");
  }

  /**
   * The height; absent where it is refused. Where it is told and paced the two must agree.
   *
   * @param before as it was when the form was filled in
   */
  Optional<Height> read(Optional<Height> before) {
    Optional<Height> paced = isPaced() ? paced(before.flatMap(Height::paced)) : Optional.empty();
    if (isPaced() && !form.ticked("height")) {
      return paced;
    }
    Optional<Height> told = lengths.required("height", Obstacle.HEIGHT_M, before.map(Height::metres)).map(Height::told);
    if (paced.isPresent() && told.isPresent() && Math.abs(paced.get().metres() / told.get().metres() - 1) > SAME) {
      Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
      form.refuse(Finding.of("nearby.two-heights", "height", units.length(paced.get().metres())));
      return Optional.empty();
    }
    return isPaced() ? paced : told;
  }

  private Optional<Height> paced(Optional<PacedHeight> before) {
    Optional<Double> distance = lengths.required("away", Pacing.DISTANCE_M, before.map(PacedHeight::distanceM));
    OptionalDouble angle = form.number("angle", Pacing.ANGLE_DEGREES.min(), Pacing.ANGLE_DEGREES.max());
    if (!form.ticked("angle")) {
      form.refuse(Finding.of("value.missing", "angle"));
    }
    Optional<Double> eye = lengths.required("eye", Pacing.EYE_HEIGHT_M, before.map(PacedHeight::eyeHeightM));
    if (distance.isEmpty() || angle.isEmpty() || eye.isEmpty()) {
      return Optional.empty();
    }
    Height height = Height.of(new PacedHeight(distance.get(), angle.getAsDouble(), eye.get()));
    if (!Obstacle.HEIGHT_M.contains(height.metres())) {
      Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
      form.refuse(Finding.of("nearby.paced-height", "angle", SunWords.metres(height.metres(), units)));
      return Optional.empty();
    }
    return Optional.of(height);
  }
}
