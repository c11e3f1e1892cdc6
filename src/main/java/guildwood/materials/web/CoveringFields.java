package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.materials.Covering;
import guildwood.materials.Material;
import guildwood.site.LengthReader.Scale;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fields for a covering; several coverings in one form are told apart by what their fields begin with. */
final class CoveringFields {
  /** What can lie on top. */
  static final List<String> ON_TOP = Arrays.stream(Material.values()).filter(m -> !m.inSheets()).map(Material::key).toList();

  private CoveringFields() {}

  static void put(Map<String, String> values, String begins, Covering covering, Units units) {
    values.put(begins + "material", covering.material().key());
    LengthFields.put(values, begins + "depth", covering.depthM(), Scale.CENTIMETRES_OR_INCHES, units);
    values.put(begins + "card", covering.card() ? "yes" : "");
  }

  /** Absent where it is refused; its depth keeps its last digit where nobody touched the field. */
  static Optional<Covering> read(Form form, String begins, boolean wanted, Covering before) {
    Optional<Material> material = Material.ofKey(form.value(begins + "material")).filter(m -> !m.inSheets());
    if (material.isEmpty()) {
      form.refuse(Finding.of("item.unknown", begins + "material", form.value(begins + "material")));
    }
    Optional<Double> depth = LengthFields.of(form, Scale.CENTIMETRES_OR_INCHES)
        .required(begins + "depth", Covering.DEPTH_M, Optional.of(before.depthM()));
    return material.flatMap(m -> depth.map(d -> new Covering(m, d, form.ticked(begins + "card"), wanted)));
  }
}
