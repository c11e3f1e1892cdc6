package guildwood.site.web;

import guildwood.kernel.Range;
import guildwood.site.LengthReader;
import guildwood.site.LengthReader.Scale;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fields for lengths in the visitor's unit. The form carries the unit its fields were filled in with, whatever the
 * visitor has switched to since.
 */
public final class LengthFields {
  /** Name of the hidden field with the unit. */
  public static final String UNIT = "length-unit";

  private final Form form;
  private final double unitM;
  private final LengthReader reader;

  private LengthFields(Form form, Scale scale, LengthReader reader) {
    this.form = form;
    this.unitM = scale.unitM(isFeet(form));
    this.reader = reader;
  }

  /** Fields in which paces cannot be counted. */
  public static LengthFields of(Form form) {
    return of(form, Scale.METRES_OR_FEET);
  }

  /** Fields of another scale: depths of mulch, rain. */
  public static LengthFields of(Form form, Scale scale) {
    return new LengthFields(form, scale, new LengthReader(scale, isFeet(form)));
  }

  /** @param paceM length of one of the visitor's paces */
  public static LengthFields of(Form form, double paceM) {
    return new LengthFields(form, Scale.METRES_OR_FEET, new LengthReader(isFeet(form), OptionalDouble.of(paceM)));
  }

  public static boolean isFeet(Form form) {
    return form.value(UNIT).equals(Units.US.key());
  }

  /** Fills a field with a length. */
  public static void put(Map<String, String> values, String field, double metres, Units units) {
    put(values, field, metres, Scale.METRES_OR_FEET, units);
  }

  /** Fills a field of another scale. */
  public static void put(Map<String, String> values, String field, double metres, Scale scale, Units units) {
    values.put(field, shown(metres, scale.unitM(units == Units.US)));
  }

  /** A length that must be there; absent where it is refused. */
  public Optional<Double> required(String field, Range withinM) {
    return form.take(reader.read(form.value(field), withinM, field));
  }

  /** A length that may be left out. */
  public Optional<Double> optional(String field, Range withinM) {
    return form.value(field).isBlank() ? Optional.empty() : required(field, withinM);
  }

  /**
   * A length that may be left out, and that keeps its last digit where nobody touched the field.
   *
   * @param kept as it was when the field was filled in
   */
  public Optional<Double> optional(String field, Range withinM, Optional<Double> kept) {
    return kept.filter(metres -> shown(metres, unitM).equals(form.value(field).strip())).or(() -> optional(field, withinM));
  }

  /** The same for one that must be there. */
  public Optional<Double> required(String field, Range withinM, Optional<Double> kept) {
    return kept.filter(metres -> shown(metres, unitM).equals(form.value(field).strip())).or(() -> required(field, withinM));
  }

  /** A length that stands in no field of its own; absent where it cannot be read or lies beyond the scale. */
  public Optional<Double> plain(String typed, Range withinM) {
    return reader.read(typed, withinM, "").value();
  }

  /** How a field shows a length. */
  public static String shown(double metres, Units units) {
    return shown(metres, Scale.METRES_OR_FEET.unitM(units == Units.US));
  }

  private static String shown(double metres, double unitM) {
    return Units.number(metres / unitM, 2);
  }
}
