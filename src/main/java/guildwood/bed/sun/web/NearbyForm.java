package guildwood.bed.sun.web;

import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Nearby.Body;
import guildwood.bed.sun.Nearby.Height;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The form of a tree or building: filling it in, and reading it. Places are seen from the middle of the bed. */
final class NearbyForm {
  static final Range PACE_M = new Range(0.3, 1.5);

  private final Form form;
  private final boolean tree;
  private final Optional<Placed> before;
  private final LengthFields lengths;
  private final double paceM;

  /** What stood in the form's fields when it was filled in. */
  record Placed(String name, GroundPoint at, Height height, Body body) {}

  /** @param usualPaceM the visitor's pace, where the form does not say it */
  NearbyForm(Form form, boolean tree, Optional<Placed> before, double usualPaceM) {
    this.form = form;
    this.tree = tree;
    this.before = before;
    this.paceM = LengthFields.of(form).optional("pace", PACE_M).orElse(usualPaceM);
    this.lengths = LengthFields.of(form, paceM);
  }

  static Map<String, String> blank(boolean tree, String name, double paceM, Units units) {
    Map<String, String> values = new HashMap<>();
    values.put(LengthFields.UNIT, units.key());
    values.put("name", name);
    LengthFields.put(values, "pace", paceM, units);
    HeightFields.blank(values, units);
    if (tree) {
      values.put("in-leaf", percent(Crown.USUAL_LIGHT_IN_LEAF));
      values.put("bare", percent(Crown.USUAL_LIGHT_BARE));
    } else {
      values.put("measured-to", GroundPlanFields.WALL);
    }
    return values;
  }

  static Map<String, String> filled(Placed placed, double paceM, Units units) {
    boolean tree = placed.body() instanceof Crown;
    Map<String, String> values = blank(tree, placed.name(), paceM, units);
    HeightFields.fill(values, placed.height(), units);
    if (placed.body() instanceof Crown crown) {
      PlaceFields.fill(values, placed.at(), units);
      LengthFields.put(values, "crown-base", crown.baseM(), units);
      LengthFields.put(values, "crown-radius", crown.radiusM(), units);
      values.put("in-leaf", percent(crown.lightInLeaf()));
      values.put("bare", percent(crown.lightBare()));
      values.put("evergreen", crown.evergreen() ? "yes" : "");
    } else {
      GroundPlanFields.fill(values, placed, units);
    }
    return values;
  }

  double paceM() {
    return paceM;
  }

  /** Reads all of it; where it is refused nothing is there and the form knows why. */
  Optional<Placed> read() {
    String name = form.text("name", Nearby.LONGEST_NAME);
    Optional<Height> height = new HeightFields(form, lengths).read(before.map(Placed::height));
    Optional<Placed> read = tree ? tree(name, height) : building(name, height);
    return form.isRefused() ? Optional.empty() : read;
  }

  /** The place and height as far as they are told; what is not filled in yet is not asked for. */
  Reckoned reckon() {
    PlaceFields place = new PlaceFields(form, lengths);
    HeightFields height = new HeightFields(form, lengths);
    return new Reckoned(
        place.anyTyped() ? place.read(before.map(Placed::at)) : Optional.empty(),
        height.anyTyped() ? height.read(before.map(Placed::height)) : Optional.empty());
  }

  /** What could be worked out of a form that is not saved yet. */
  record Reckoned(Optional<GroundPoint> at, Optional<Height> height) {}

  private Optional<Placed> tree(String name, Optional<Height> height) {
    Optional<GroundPoint> at = new PlaceFields(form, lengths).read(before.map(Placed::at));
    Optional<Crown> old = before.map(b -> (Crown) b.body());
    Optional<Double> base = lengths.required("crown-base", Tree.CROWN_BASE_M, old.map(Crown::baseM));
    Optional<Double> radius = lengths.required("crown-radius", Tree.CROWN_RADIUS_M, old.map(Crown::radiusM));
    if (base.isPresent() && height.isPresent() && base.get() >= height.get().metres()) {
      Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
      form.refuse(Finding.of("nearby.crown-base", "crown-base", SunWords.metres(height.get().metres(), units)));
    }
    boolean evergreen = form.ticked("evergreen");
    Optional<Double> inLeaf = share("in-leaf");
    // An evergreen is never bare: what stands in that field is of no matter.
    Optional<Double> bare = evergreen ? inLeaf : share("bare");
    if (form.isRefused()) {
      return Optional.empty();
    }
    Crown crown = new Crown(base.orElseThrow(), radius.orElseThrow(), inLeaf.orElseThrow(), bare.orElseThrow(), evergreen);
    return Optional.of(new Placed(name, at.orElseThrow(), height.orElseThrow(), crown));
  }

  private Optional<Placed> building(String name, Optional<Height> height) {
    Optional<GroundPlanFields.Ground> ground = new GroundPlanFields(form, lengths).read(before);
    return ground.flatMap(g -> height.map(h -> new Placed(name, g.at(), h, g.walls())));
  }

  private Optional<Double> share(String field) {
    OptionalDouble percent = form.number(field, 0, 100);
    if (!form.ticked(field)) {
      form.refuse(Finding.of("value.missing", field));
    }
    return percent.isPresent() ? Optional.of(percent.getAsDouble() / 100) : Optional.empty();
  }

  private static String percent(double share) {
    return Units.number(100 * share, 2);
  }
}
