package guildwood.materials.web;

import guildwood.kernel.Range;
import guildwood.materials.Volume;
import guildwood.materials.VolumeReader;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Optional;

/** Fields for volumes in the unit the form was filled in with. */
final class VolumeFields {
  private final Form form;
  private final VolumeReader reader;

  private VolumeFields(Form form, VolumeReader reader) {
    this.form = form;
    this.reader = reader;
  }

  /** @param loadM3 what one load is */
  static VolumeFields of(Form form, double loadM3) {
    return new VolumeFields(form, new VolumeReader(LengthFields.isFeet(form), loadM3));
  }

  /** A volume that must be there and keeps its last digit where nobody touched the field; absent where it is refused. */
  Optional<Double> required(String field, Range withinM3, Optional<Double> kept) {
    return kept.filter(m3 -> shown(m3, LengthFields.isFeet(form)).equals(form.value(field).strip()))
        .or(() -> form.take(reader.read(form.value(field), withinM3, field)));
  }

  static String shown(double cubicMetres, Units units) {
    return shown(cubicMetres, units == Units.US);
  }

  private static String shown(double cubicMetres, boolean yards) {
    return Units.number(yards ? Volume.cubicYards(cubicMetres) : cubicMetres, 2);
  }
}
