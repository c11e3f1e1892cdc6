package guildwood.drawing.web;

import guildwood.drawing.ArrangingRules;
import guildwood.drawing.DrawingSettings;
import guildwood.drawing.GrowthRate;
import guildwood.drawing.YearsToMaturity;
import guildwood.kernel.Finding;
import guildwood.site.web.LengthFields;
import guildwood.species.Layer;
import guildwood.web.Form;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The fields of a drawing's settings. */
final class SettingsForm {
  private SettingsForm() {}

  /** A layer with its three fields. */
  record Row(String layer, String name) {
    static List<Row> all(Messages messages) {
      return java.util.Arrays.stream(Layer.values()).map(l -> new Row(l.key(), messages.say("term.layer." + l.key()))).toList();
    }
  }

  static Form filled(DrawingSettings settings, Units units, Messages messages) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, units.key());
    LengthFields.put(values, "reach", settings.rules().reachM(), units);
    LengthFields.put(values, "overhang", settings.rules().overhangM(), units);
    values.put("edge", settings.rules().walkableEdge() ? "on" : "");
    for (Layer layer : Layer.values()) {
      for (GrowthRate rate : GrowthRate.values()) {
        values.put(field(layer, rate), Integer.toString(settings.maturity().of(layer, rate)));
      }
    }
    return Form.blank(values, messages);
  }

  /** The settings as typed; absent where something is refused. */
  static Optional<DrawingSettings> read(Form form, DrawingSettings before) {
    LengthFields lengths = LengthFields.of(form);
    Optional<Double> reach = lengths.required("reach", ArrangingRules.REACH_M, Optional.of(before.rules().reachM()));
    Optional<Double> overhang = lengths.required("overhang", ArrangingRules.OVERHANG_M, Optional.of(before.rules().overhangM()));
    Map<Layer, List<Integer>> years = new EnumMap<>(Layer.class);
    for (Layer layer : Layer.values()) {
      List<Integer> ofLayer = new ArrayList<>();
      for (GrowthRate rate : GrowthRate.values()) {
        ofLayer.add(years(form, field(layer, rate)));
      }
      years.put(layer, ofLayer);
    }
    return form.isRefused() ? Optional.empty() : Optional.of(new DrawingSettings(
        new ArrangingRules(reach.orElseThrow(), overhang.orElseThrow(), form.ticked("edge")), new YearsToMaturity(years), before.seed()));
  }

  private static int years(Form form, String field) {
    OptionalInt years = form.wholeNumber(field, (int) YearsToMaturity.YEARS.min(), (int) YearsToMaturity.YEARS.max());
    if (years.isEmpty() && form.messageOf(field).isEmpty()) {
      form.refuse(Finding.of("value.missing", field));
    }
    return years.orElse(1);
  }

  private static String field(Layer layer, GrowthRate rate) {
    return "years." + layer.key() + "." + rate.key();
  }
}
