package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.materials.CardSheet;
import guildwood.materials.Covering;
import guildwood.materials.MaterialSettings;
import guildwood.materials.TrunkGap;
import guildwood.site.LengthReader.Scale;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The form of a site's settings for materials: filling it in, and reading it. */
final class SettingsForm {
  private static final double LITRES_IN_CUBIC_FOOT = 28.316846592;

  private SettingsForm() {}

  static Map<String, String> filled(MaterialSettings settings, Units units) {
    Map<String, String> values = new HashMap<>();
    values.put(LengthFields.UNIT, units.key());
    CoveringFields.put(values, "bed-", settings.beds(), units);
    CoveringFields.put(values, "path-", settings.paths(), units);
    values.put("settling", Units.number(settings.settlingPercent(), 1));
    values.put("load", VolumeFields.shown(settings.loadM3(), units));
    values.put("barrow", barrow(settings.barrowLitres(), units == Units.US));
    values.put("pace", VolumeFields.shown(settings.m3AnHour(), units));
    LengthFields.put(values, "gap", settings.gap().gapM(), Scale.CENTIMETRES_OR_INCHES, units);
    LengthFields.put(values, "trunk", settings.gap().trunkM(), Scale.CENTIMETRES_OR_INCHES, units);
    LengthFields.put(values, "sheet-length", settings.sheet().lengthM(), Scale.CENTIMETRES_OR_INCHES, units);
    LengthFields.put(values, "sheet-width", settings.sheet().widthM(), Scale.CENTIMETRES_OR_INCHES, units);
    LengthFields.put(values, "overlap", settings.sheet().overlapM(), Scale.CENTIMETRES_OR_INCHES, units);
    values.put("sheets", Units.number(settings.sheetsAnHour(), 1));
    return values;
  }

  /**
   * Reads all of it; where it is refused nothing is there and the form knows why.
   *
   * @param before what was kept: fields nobody touched keep its last digit
   */
  static Optional<MaterialSettings> read(Form form, MaterialSettings before) {
    Optional<Covering> beds = CoveringFields.read(form, "bed-", true, before.beds());
    Optional<Covering> paths = CoveringFields.read(form, "path-", true, before.paths());
    OptionalDouble settling = RunoffForm.required(form, "settling", MaterialSettings.SETTLING_PERCENT);
    VolumeFields volumes = VolumeFields.of(form, before.loadM3());
    Optional<Double> load = volumes.required("load", MaterialSettings.LOAD_M3, Optional.of(before.loadM3()));
    Optional<Double> barrow = barrow(form, before.barrowLitres());
    Optional<Double> pace = volumes.required("pace", MaterialSettings.M3_AN_HOUR, Optional.of(before.m3AnHour()));
    LengthFields lengths = LengthFields.of(form, Scale.CENTIMETRES_OR_INCHES);
    Optional<Double> gap = lengths.required("gap", TrunkGap.GAP_M, Optional.of(before.gap().gapM()));
    Optional<Double> trunk = lengths.required("trunk", TrunkGap.TRUNK_M, Optional.of(before.gap().trunkM()));
    Optional<CardSheet> sheet = sheet(form, lengths, before.sheet());
    OptionalDouble sheets = RunoffForm.required(form, "sheets", MaterialSettings.SHEETS_AN_HOUR);
    return form.isRefused() ? Optional.empty()
        : Optional.of(new MaterialSettings(beds.orElseThrow(), paths.orElseThrow(), settling.orElseThrow(), load.orElseThrow(),
            barrow.orElseThrow(), pace.orElseThrow(), new TrunkGap(gap.orElseThrow(), trunk.orElseThrow()), sheet.orElseThrow(),
            sheets.orElseThrow()));
  }

  private static Optional<CardSheet> sheet(Form form, LengthFields lengths, CardSheet before) {
    Optional<Double> length = lengths.required("sheet-length", CardSheet.SIDE_M, Optional.of(before.lengthM()));
    Optional<Double> width = lengths.required("sheet-width", CardSheet.SIDE_M, Optional.of(before.widthM()));
    Optional<Double> overlap = lengths.required("overlap", CardSheet.OVERLAP_M, Optional.of(before.overlapM()));
    if (length.isEmpty() || width.isEmpty() || overlap.isEmpty()) {
      return Optional.empty();
    }
    if (overlap.get() >= Math.min(length.get(), width.get())) {
      form.refuse(Finding.of("materials.overlap", "overlap"));
      return Optional.empty();
    }
    return Optional.of(new CardSheet(length.get(), width.get(), overlap.get()));
  }

  /** Litres, or cubic feet in US units. */
  private static Optional<Double> barrow(Form form, double before) {
    boolean us = LengthFields.isFeet(form);
    if (form.value("barrow").strip().equals(barrow(before, us))) {
      return Optional.of(before);
    }
    double unit = us ? LITRES_IN_CUBIC_FOOT : 1;
    Range litres = MaterialSettings.BARROW_LITRES;
    OptionalDouble number = RunoffForm.required(form, "barrow", new Range(litres.min() / unit, litres.max() / unit));
    return number.isPresent() ? Optional.of(number.getAsDouble() * unit) : Optional.empty();
  }

  private static String barrow(double litres, boolean us) {
    return Units.number(us ? litres / LITRES_IN_CUBIC_FOOT : litres, us ? 2 : 1);
  }
}
