package guildwood.siteplan;

import guildwood.bed.Bed;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.site.Site;
import guildwood.site.sun.Building;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that is on a site's plan.
 *
 * @param outlines of beds that were traced, by their id
 * @param nearby trees and buildings of the site, those the sun on its beds is reckoned with
 * @param paper absent where nobody chose one
 * @param picture where it lies; absent where there is none
 */
public record SitePlan(Site site, List<Bed> beds, Map<Long, Footprint> outlines, List<PlanPath> paths, List<Water> waters,
    List<Nearby> nearby, Optional<Paper> paper, Optional<PicturePlace> picture) {

  /** Everything whose place is known, what lies lowest first. */
  public List<PlanShape> shapes() {
    List<PlanShape> shapes = new ArrayList<>();
    waters.forEach(water -> shapes.add(PlanShape.area(ShapeKind.WATER, water.id(), water.name(), water.outline())));
    paths.forEach(path -> shapes.add(PlanShape.of(path)));
    beds.forEach(bed -> shape(bed).ifPresent(shapes::add));
    nearby.forEach(each -> shape(each).ifPresent(shapes::add));
    return shapes;
  }

  public Optional<PlanShape> find(ShapeKind kind, long id) {
    return shapes().stream().filter(shape -> shape.kind() == kind && shape.id() == id).findFirst();
  }

  private Optional<PlanShape> shape(Bed bed) {
    Footprint traced = outlines.get(bed.id());
    if (traced != null) {
      return Optional.of(PlanShape.area(ShapeKind.BED, bed.id(), bed.name(), traced));
    }
    return bed.middle().map(middle -> new PlanShape(ShapeKind.BED, bed.id(), bed.name(), bed.ground().around(middle).corners(), 0, false));
  }

  /** How it is drawn; empty where nobody knows where it stands. */
  public Optional<PlanShape> shape(Nearby each) {
    return origin(each).map(origin -> each.body() instanceof Crown crown
        ? new PlanShape(ShapeKind.TREE, each.id(), each.name(), List.of(each.from(origin)), 2 * crown.radiusM(), true)
        : PlanShape.area(ShapeKind.BUILDING, each.id(), each.name(), ((Building) each.obstacle(each.name(), origin)).footprint()));
  }

  /** Where the point lies from which the place of a tree or building is told; empty where nobody knows. */
  public Optional<GroundPoint> origin(Nearby each) {
    return each.fromBed().isEmpty() ? Optional.of(new GroundPoint(0, 0))
        : beds.stream().filter(bed -> bed.id() == each.fromBed().getAsLong()).findFirst().flatMap(Bed::middle);
  }

  /** Beds, trees and buildings of which nobody knows where on the site they are. */
  public List<String> unplaced() {
    List<String> names = new ArrayList<>();
    beds.stream().filter(bed -> shape(bed).isEmpty()).forEach(bed -> names.add(bed.name()));
    nearby.stream().filter(each -> origin(each).isEmpty()).forEach(each -> names.add(each.name()));
    return names;
  }

  /** Beds that are not traced, wherever they lie. */
  public List<Bed> untraced() {
    return beds.stream().filter(bed -> !outlines.containsKey(bed.id())).toList();
  }
}
