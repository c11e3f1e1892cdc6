package guildwood.site.sun;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented scenes for tests, the same for the same seed. */
final class Scenes {
  static final Season SUMMER = Season.of(4, 1, 9, 30);
  static final Season WHOLE_YEAR = Season.of(1, 1, 12, 31);
  static final Coordinates WISCONSIN = new Coordinates(44.9, -89.6);

  private Scenes() {}

  static Scene open(Coordinates place) {
    return with(place, SUMMER, List.of());
  }

  static Scene with(Coordinates place, Season season, List<Obstacle> obstacles) {
    return new Scene(place, 2026, season, season, 0, Horizon.LEVEL, obstacles);
  }

  /** Up to five trees and buildings near the origin, some of them letting no light through, some overlapping. */
  static List<Obstacle> obstacles(Random random) {
    List<Obstacle> obstacles = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 1; i <= count; i++) {
      obstacles.add(random.nextInt(3) == 0 ? building(random, "building " + i) : tree(random, "tree " + i));
    }
    return obstacles;
  }

  static Tree tree(Random random, String label) {
    double height = 2 + 12 * random.nextDouble();
    double inLeaf = random.nextInt(4) == 0 ? 0 : 0.5 * random.nextDouble();
    return new Tree(label, near(random, 8), height, 0.6 * height * random.nextDouble(), 0.5 + 4 * random.nextDouble(),
        inLeaf, inLeaf + (1 - inLeaf) * random.nextDouble(), random.nextBoolean());
  }

  /** A rectangle, or an L. */
  static Building building(Random random, String label) {
    GroundPoint at = near(random, 9);
    double x = at.xM();
    double y = at.yM();
    double width = 2 + 6 * random.nextDouble();
    double depth = 2 + 6 * random.nextDouble();
    Footprint footprint = random.nextBoolean()
        ? ShadowTest.footprint(x, y, x + width, y, x + width, y + depth, x, y + depth)
        : ShadowTest.footprint(x, y, x + width, y, x + width, y + depth / 2, x + width / 3, y + depth / 2,
            x + width / 3, y + depth, x, y + depth);
    return new Building(label, footprint, 2 + 6 * random.nextDouble());
  }

  static GroundPoint near(Random random, double reachM) {
    return new GroundPoint(reachM * (2 * random.nextDouble() - 1), reachM * (2 * random.nextDouble() - 1));
  }

  static List<GroundPoint> points(Random random, int count) {
    List<GroundPoint> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(near(random, 6));
    }
    return points;
  }

  static Obstacle raised(Obstacle obstacle, double byM) {
    return obstacle instanceof Tree t
        ? new Tree(t.label(), t.foot(), t.heightM() + byM, t.crownBaseM(), t.crownRadiusM(), t.lightInLeaf(), t.lightBare(), t.evergreen())
        : new Building(obstacle.label(), ((Building) obstacle).footprint(), ((Building) obstacle).heightM() + byM);
  }

  /** The same with east and west (or north and south) swapped. */
  static Obstacle mirrored(Obstacle obstacle, int east, int north) {
    if (obstacle instanceof Tree t) {
      GroundPoint foot = new GroundPoint(east * t.foot().xM(), north * t.foot().yM());
      return new Tree(t.label(), foot, t.heightM(), t.crownBaseM(), t.crownRadiusM(), t.lightInLeaf(), t.lightBare(), t.evergreen());
    }
    Building building = (Building) obstacle;
    List<GroundPoint> corners = building.footprint().corners().stream()
        .map(corner -> new GroundPoint(east * corner.xM(), north * corner.yM())).toList();
    return new Building(building.label(), Footprint.through("", corners).orThrow(), building.heightM());
  }
}
