package guildwood.bed.web;

import guildwood.bed.AreaReader;
import guildwood.bed.Bed;
import guildwood.site.Condition;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.site.web.ConditionFields;
import guildwood.site.web.LengthFields;
import guildwood.species.Axis;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form of a bed: filling it in from a bed, and reading a bed out of it. */
final class BedForm {
  private static final String AREA_UNIT = "area-unit";

  private BedForm() {}

  static Map<String, String> blank(Units units) {
    Map<String, String> values = new HashMap<>(ConditionFields.filled(Map.of()));
    values.put(AREA_UNIT, units.key());
    values.put(LengthFields.UNIT, units.key());
    return values;
  }

  static Map<String, String> filled(Bed bed, Units units) {
    Map<String, String> values = blank(units);
    values.putAll(ConditionFields.filled(bed.conditions()));
    values.put("name", bed.name());
    values.put("area", area(bed.areaM2(), units == Units.US));
    BedGroundFields.fill(values, bed, units);
    values.put("note", bed.note());
    return values;
  }

  /**
   * Reads the form; where it is refused the bed is absent and the form knows why.
   *
   * @param before the bed as it is kept; absent for a new one
   */
  static Optional<Bed> read(Form form, long siteId, Optional<Bed> before) {
    String name = form.text("name", Bed.LONGEST_NAME);
    // The unit the field was labelled with when it was sent out, whatever the visitor has switched to since.
    boolean squareFeet = isSquareFeet(form);
    LengthFields lengths = LengthFields.of(form);
    Optional<Rectangle> size = BedGroundFields.size(form, lengths, before.flatMap(Bed::size));
    Optional<GroundPoint> middle = BedGroundFields.middle(form, lengths, before.flatMap(Bed::middle));
    Optional<Double> areaM2 = areaM2(form, squareFeet, before, size);
    // A traced bed may fill little of its rectangle; what nobody touched is not held against anything.
    boolean touched = before.filter(b -> Optional.of(b.areaM2()).equals(areaM2) && b.size().equals(size)).isEmpty();
    if (touched && areaM2.isPresent() && size.isPresent()) {
      BedGroundFields.compare(form, size.get(), areaM2.get());
    }
    Map<Axis, Condition> conditions = ConditionFields.take(form, before.map(Bed::conditions).orElse(Map.of()));
    String note = form.longText("note", Bed.LONGEST_NOTE);
    return form.isRefused() ? Optional.empty()
        : Optional.of(new Bed(0, siteId, name, areaM2.orElseThrow(), size, middle, conditions, before.map(Bed::standing).orElse(List.of()), note));
  }

  /** The area as typed; that of the rectangle where only a rectangle is told. */
  private static Optional<Double> areaM2(Form form, boolean squareFeet, Optional<Bed> before, Optional<Rectangle> size) {
    Optional<Double> kept = before.map(Bed::areaM2).filter(m2 -> area(m2, squareFeet).equals(form.value("area").strip()));
    boolean ofSize = form.value("area").isBlank() && size.isPresent()
        && size.get().areaM2() >= Bed.SMALLEST_AREA_M2 && size.get().areaM2() <= Bed.LARGEST_AREA_M2;
    return ofSize ? size.map(Rectangle::areaM2)
        : kept.or(() -> form.take(AreaReader.read(form.value("area"), squareFeet, "area")));
  }

  static boolean isSquareFeet(Form form) {
    return form.value(AREA_UNIT).equals(Units.US.key());
  }

  private static String area(double areaM2, boolean squareFeet) {
    return Units.number(squareFeet ? areaM2 / AreaReader.SQUARE_FOOT_M2 : areaM2, 2);
  }
}
