package guildwood.drawing;

import guildwood.bed.Bed;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.site.GroundShapes;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.SitePlans;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;

/** Puts together the ground of a bed: its traced outline or else its rectangle, the paths and the trees that touch it. */
final class BedGrounds {
  /** Paths so near to the edge are those from which people work, and are drawn, metres. */
  private static final double BESIDE_M = 1.5;

  private final SitePlans plans;

  BedGrounds(SitePlans plans) {
    this.plans = plans;
  }

  /** @param plants labels of trees around the bed that are plants of the guild themselves */
  BedGround of(BedScene scene, Set<String> plants) {
    Bed bed = scene.bed();
    Optional<Footprint> traced = bed.middle().flatMap(middle -> plans.outline(bed.id()).map(outline -> outline.moved(away(middle))));
    Footprint outline = traced.orElseGet(() -> bed.ground().around(new GroundPoint(0, 0)));
    Geometry shape = GroundShapes.polygon(outline);
    List<BedGround.Strip> paths = bed.middle().stream().flatMap(middle -> plans.paths(bed.siteId()).stream().map(path -> strip(path, middle)))
        .filter(path -> GroundShapes.strip(path.line(), path.widthM()).isWithinDistance(shape, BESIDE_M)).toList();
    return new BedGround(outline, scene.site().latitudeDegrees().orElse(0) < 0, traced.isPresent(), paths,
        trees(scene).filter(t -> !plants.contains(t.label())
            && Shapes.circle(t.foot().xM(), t.foot().yM(), t.crownRadiusM()).intersects(shape)).toList());
  }

  static Stream<Tree> trees(BedScene scene) {
    return scene.around().obstacles().stream().filter(Tree.class::isInstance).map(Tree.class::cast);
  }

  private static BedGround.Strip strip(PlanPath path, GroundPoint middle) {
    GroundPoint by = away(middle);
    return new BedGround.Strip(path.name(), path.line().stream().map(p -> new GroundPoint(p.xM() + by.xM(), p.yM() + by.yM())).toList(), path.widthM());
  }

  private static GroundPoint away(GroundPoint middle) {
    return new GroundPoint(-middle.xM(), -middle.yM());
  }
}
