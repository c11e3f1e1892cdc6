package guildwood.bed.sun.web;

import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Walls;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.sun.Compass;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The ground plan of a building: a rectangle told by its near wall or its middle, or a list of corners. */
final class GroundPlanFields {
  static final String WALL = "wall";
  static final String MIDDLE = "middle";
  static final List<String> MEASURED_TO = List.of(WALL, MIDDLE);

  private static final List<String> RECTANGLE = List.of("distance", "direction", "east", "north", "length", "width", "turn");
  private static final int LONGEST_CORNERS = 4_000;

  /** A wall seen more sharply from the side than this has no far side that could be told from the near one. */
  private static final double LEAST_FACING = Math.sin(Math.toRadians(5));

  private final Form form;
  private final LengthFields lengths;

  GroundPlanFields(Form form, LengthFields lengths) {
    this.form = form;
    this.lengths = lengths;
  }

  /** A ground plan and where it stands. */
  record Ground(GroundPoint at, Walls walls) {}

  static void fill(Map<String, String> values, NearbyForm.Placed placed, Units units) {
    Walls.Plan plan = ((Walls) placed.body()).plan();
    if (plan instanceof Walls.Box box) {
      PlaceFields.fill(values, placed.at(), units);
      values.put("measured-to", MIDDLE);
      LengthFields.put(values, "length", box.rectangle().lengthM(), units);
      LengthFields.put(values, "width", box.rectangle().widthM(), units);
      values.put("turn", Units.number(box.rectangle().turnDegrees(), 2));
    } else {
      values.put("corners", corners(plan.around(placed.at()), units));
    }
  }

  Optional<Ground> read(Optional<NearbyForm.Placed> before) {
    if (form.value("corners").isBlank()) {
      return rectangle(before);
    }
    if (RECTANGLE.stream().anyMatch(form::ticked)) {
      form.refuse(Finding.of("nearby.two-plans", "corners"));
      return Optional.empty();
    }
    return outline(before).map(outline -> new Ground(new GroundPoint(0, 0), new Walls(new Walls.Corners(outline))));
  }

  private Optional<Ground> rectangle(Optional<NearbyForm.Placed> before) {
    Optional<Rectangle> old = before.flatMap(b -> ((Walls) b.body()).plan() instanceof Walls.Box box
        ? Optional.of(box.rectangle()) : Optional.empty());
    Optional<GroundPoint> told = new PlaceFields(form, lengths).read(old.flatMap(o -> before).map(NearbyForm.Placed::at));
    Optional<Double> length = lengths.required("length", Rectangle.SIDE_M, old.map(Rectangle::lengthM));
    Optional<Double> width = lengths.required("width", Rectangle.SIDE_M, old.map(Rectangle::widthM));
    Optional<Double> turn = form.take(Compass.read(form.value("turn"), "turn"));
    boolean known = MEASURED_TO.contains(form.value("measured-to"));
    if (!known) {
      form.refuse(Finding.of("value.missing", "measured-to"));
    }
    if (told.isEmpty() || length.isEmpty() || width.isEmpty() || turn.isEmpty() || !known) {
      return Optional.empty();
    }
    Rectangle rectangle = new Rectangle(length.get(), width.get(), turn.get());
    Optional<GroundPoint> middle = form.value("measured-to").equals(MIDDLE) ? told : behind(told.get(), rectangle);
    return middle.map(at -> new Ground(at, new Walls(new Walls.Box(rectangle))));
  }

  /** The middle of a building whose long wall with its middle here looks at the bed. */
  private Optional<GroundPoint> behind(GroundPoint wall, Rectangle rectangle) {
    GroundPoint across = Compass.step(rectangle.turnDegrees() + 90, 1);
    double away = across.xM() * wall.xM() + across.yM() * wall.yM();
    if (Math.abs(away) <= LEAST_FACING * Math.hypot(wall.xM(), wall.yM())) {
      form.refuse(Finding.of("nearby.wall-edge-on", "measured-to"));
      return Optional.empty();
    }
    GroundPoint back = Compass.step(rectangle.turnDegrees() + (away > 0 ? 90 : 270), rectangle.widthM() / 2);
    return Optional.of(new GroundPoint(wall.xM() + back.xM(), wall.yM() + back.yM()));
  }

  /** One corner a line, east and north. */
  private Optional<Footprint> outline(Optional<NearbyForm.Placed> before) {
    String text = form.longText("corners", LONGEST_CORNERS);
    Optional<Footprint> kept = before.flatMap(b -> ((Walls) b.body()).plan() instanceof Walls.Corners corners
        ? Optional.of(corners.around(b.at())) : Optional.empty());
    Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
    if (kept.isPresent() && corners(kept.get(), units).equals(text)) {
      return kept;
    }
    List<GroundPoint> corners = new ArrayList<>();
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    for (String line : lines) {
      Optional<GroundPoint> corner = corner(line.strip());
      if (corner.isEmpty()) {
        form.refuse(Finding.of("nearby.corner", "corners", corners.size() + 1));
        return Optional.empty();
      }
      corners.add(corner.get());
    }
    Checked<Footprint> outline = Footprint.through("corners", corners);
    outline.findings().forEach(f -> form.refuse(new Finding(f.code().replace("sun.", "nearby."), f.field(), f.args())));
    return outline.value();
  }

  private Optional<GroundPoint> corner(String line) {
    String[] pair = line.split("\\s*;\\s*|\\s+");
    if (pair.length != 2) {
      return Optional.empty();
    }
    Optional<Double> east = lengths.plain(pair[0], Nearby.PLACE_M);
    Optional<Double> north = lengths.plain(pair[1], Nearby.PLACE_M);
    return east.flatMap(x -> north.map(y -> new GroundPoint(x, y)));
  }

  private static String corners(Footprint outline, Units units) {
    return outline.corners().stream()
        .map(corner -> LengthFields.shown(corner.xM(), units) + " " + LengthFields.shown(corner.yM(), units))
        .collect(Collectors.joining("\n"));
  }
}
