package guildwood.materials.web;

import guildwood.bed.AreaReader;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.LengthReader.Scale;
import guildwood.site.water.Basin;
import guildwood.site.water.CurveNumber.Part;
import guildwood.site.water.GroundCover;
import guildwood.site.water.PeakFlow;
import guildwood.site.water.Runoff;
import guildwood.site.water.SoilGroup;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PlanPath;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The questions of the runoff page: filling them in, and reading them. */
final class RunoffForm {
  /** How many different covers can be told apart above one basin. */
  static final List<Integer> ROWS = List.of(1, 2, 3);
  static final Range SLOPE_PERCENT = new Range(0, 100);
  static final Range SOAK_MM_PER_HOUR = new Range(0.01, 2000);

  private static final Range RAIN_M = new Range(Runoff.RAIN_MM.min() / 1000, Runoff.RAIN_MM.max() / 1000);
  private static final Range SOAK_M = new Range(SOAK_MM_PER_HOUR.min() / 1000, SOAK_MM_PER_HOUR.max() / 1000);

  private static final Range INTENSITY_M = new Range(PeakFlow.MM_PER_HOUR.min() / 1000, PeakFlow.MM_PER_HOUR.max() / 1000);

  private RunoffForm() {}

  /** All that was asked. */
  record Question(Runoff runoff, SoilGroup soil, Optional<Basin> basin, OptionalDouble slopePercent, OptionalDouble soakMmPerHour,
      Optional<PeakFlow> peak) {}

  static Map<String, String> blank(Units units) {
    Map<String, String> values = new HashMap<>();
    values.put(LengthFields.UNIT, units.key());
    values.put("cover-1", GroundCover.GRASS.key());
    values.put("side", "3");
    values.put("open", "100");
    return values;
  }

  /** A basin dug where a path runs: as long and wide as the path and as deep as its covering, which fills it. */
  static Map<String, String> along(PlanPath path, Units units) {
    Map<String, String> values = blank(units);
    LengthFields.put(values, "length", path.lengthM(), units);
    LengthFields.put(values, "bottom", path.widthM(), units);
    values.put("side", "0");
    if (path.depthM() > 0) {
      LengthFields.put(values, "depth", path.depthM(), Scale.CENTIMETRES_OR_INCHES, units);
    }
    return values;
  }

  /** Reads all of it; where it is refused nothing is there and the form knows why. */
  static Optional<Question> read(Form form) {
    Optional<Double> rainM = LengthFields.of(form, Scale.MILLIMETRES_OR_INCHES).required("rain", RAIN_M);
    Optional<SoilGroup> soil = SoilGroup.ofKey(form.value("soil"));
    if (soil.isEmpty()) {
      form.refuse(form.ticked("soil") ? Finding.of("item.unknown", "soil", form.value("soil")) : Finding.of("value.missing", "soil"));
    }
    List<Part> parts = soil.map(group -> parts(form, group)).orElse(List.of());
    Optional<Basin> basin = basin(form);
    OptionalDouble slope = form.number("slope", SLOPE_PERCENT.min(), SLOPE_PERCENT.max());
    Optional<PeakFlow> peak = peak(form);
    Optional<Double> soakM = LengthFields.of(form, Scale.MILLIMETRES_OR_INCHES).optional("soak", SOAK_M);
    if (form.isRefused()) {
      return Optional.empty();
    }
    return Optional.of(new Question(new Runoff(rainM.orElseThrow() * 1000, parts), soil.orElseThrow(), basin, slope,
        soakM.map(metres -> OptionalDouble.of(metres * 1000)).orElse(OptionalDouble.empty()), peak));
  }

  private static List<Part> parts(Form form, SoilGroup soil) {
    List<Part> parts = new ArrayList<>();
    for (int row : ROWS) {
      String area = "area-" + row;
      if (row > 1 && form.value(area).isBlank()) {
        continue;
      }
      Optional<Double> areaM2 = form.take(AreaReader.read(form.value(area), LengthFields.isFeet(form), area,
          Runoff.AREA_M2.min(), Runoff.AREA_M2.max(), "runoff.area-out"));
      Optional<GroundCover> cover = GroundCover.ofKey(form.value("cover-" + row));
      if (cover.isEmpty()) {
        form.refuse(Finding.of("value.missing", "cover-" + row));
      }
      areaM2.ifPresent(m2 -> cover.ifPresent(c -> parts.add(new Part(m2, c.on(soil)))));
    }
    return parts;
  }

  /** Without one of its two numbers no peak is asked for. */
  private static Optional<PeakFlow> peak(Form form) {
    if (!form.ticked("intensity") && !form.ticked("coefficient")) {
      return Optional.empty();
    }
    Optional<Double> metres = LengthFields.of(form, Scale.MILLIMETRES_OR_INCHES).required("intensity", INTENSITY_M);
    OptionalDouble coefficient = required(form, "coefficient", PeakFlow.COEFFICIENT);
    return metres.isEmpty() || coefficient.isEmpty() ? Optional.empty()
        : Optional.of(new PeakFlow(coefficient.getAsDouble(), metres.get() * 1000));
  }

  /** Without any of its sizes no basin is asked for. */
  private static Optional<Basin> basin(Form form) {
    if (List.of("length", "bottom", "depth").stream().noneMatch(form::ticked)) {
      return Optional.empty();
    }
    LengthFields ground = LengthFields.of(form);
    Optional<Double> length = ground.required("length", Basin.LENGTH_M);
    Optional<Double> bottom = ground.required("bottom", Basin.BOTTOM_M);
    Optional<Double> depth = LengthFields.of(form, Scale.CENTIMETRES_OR_INCHES).required("depth", Basin.DEPTH_M);
    OptionalDouble side = required(form, "side", Basin.SIDE_RUN);
    OptionalDouble open = required(form, "open", Basin.OPEN_PERCENT);
    return form.isRefused() ? Optional.empty() : Optional.of(new Basin(length.orElseThrow(), bottom.orElseThrow(), depth.orElseThrow(),
        side.orElseThrow(), open.orElseThrow()));
  }

  /** A number that must be there. */
  static OptionalDouble required(Form form, String field, Range within) {
    if (form.value(field).isBlank()) {
      form.refuse(Finding.of("value.missing", field));
      return OptionalDouble.empty();
    }
    return form.number(field, within.min(), within.max());
  }
}
