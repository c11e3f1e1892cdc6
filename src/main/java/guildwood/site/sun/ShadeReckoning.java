package guildwood.site.sun;

import java.util.ArrayList;
import java.util.List;

/**
 * Adds up, over a year, the sun that obstacles take from points.
 *
 * <p>Only what is taken is booked: a point that no shadow touches keeps the day's length. Where several
 * obstacles stand in one ray, the light left is the product of what each lets through, and the loss is
 * shared out among them in proportion to what each would take alone, so that the shares add up to the whole
 * loss. The distant skyline comes first: what it hides is its loss alone, since nothing nearer could win it back.
 */
final class ShadeReckoning {
  private final Scene scene;
  private final PointField field;
  private final SunTally tally;
  private final List<Shadow> shadows = new ArrayList<>();

  /** Points in shadow in one step, obstacle after obstacle; {@code ends} tells where each one's points end. */
  private final int[] shaded;
  private final int[] casters;
  private final int[] ends;
  private final double[] through;
  private int groups;

  /** The same points, each once. */
  private final int[] touched;
  private int touches;

  /** For a point: the light let through by what dims, how many let none through, and the sum of what each would take. */
  private final double[] dimmed;
  private final int[] shut;
  private final double[] asked;

  /** For a point: the share of light left, and what part of its asking each obstacle gets. */
  private final double[] left;
  private final double[] granted;

  private ShadeReckoning(Scene scene, PointField field) {
    this.scene = scene;
    this.field = field;
    int obstacles = scene.obstacles().size();
    int points = field.size();
    tally = new SunTally(obstacles, points);
    scene.obstacles().forEach(obstacle -> shadows.add(Shadow.of(obstacle, scene.readingHeightM())));
    shaded = new int[obstacles * points];
    casters = new int[obstacles];
    ends = new int[obstacles];
    through = new double[obstacles];
    touched = new int[points];
    dimmed = new double[points];
    shut = new int[points];
    asked = new double[points];
    left = new double[points];
    granted = new double[points];
  }

  /** The tally of a year, its points in the order of the field. */
  static SunTally of(Scene scene, SunPath path, PointField field) {
    ShadeReckoning reckoning = new ShadeReckoning(scene, field);
    path.days().forEach(reckoning::add);
    return reckoning.tally;
  }

  private void add(SunPath.Day day) {
    boolean inSeason = scene.season().contains(day.date());
    boolean inLeaf = scene.inLeaf().contains(day.date());
    tally.begin(day, inSeason);
    for (SunPath.Step step : day.steps()) {
      if (scene.horizon().hides(step.sun())) {
        tally.hidden(step);
      } else {
        castAll(step, inLeaf);
        findLosses();
        if (inSeason) {
          bookByObstacle(step);
        }
        bookByPoint(step);
      }
    }
  }

  private void castAll(SunPath.Step step, boolean inLeaf) {
    groups = 0;
    int count = 0;
    for (int obstacle = 0; obstacle < shadows.size(); obstacle++) {
      Shadow shadow = shadows.get(obstacle);
      double light = scene.obstacles().get(obstacle).letsThrough(inLeaf);
      int end = light < 1 && shadow.falls() ? shadow.mark(step, field, shaded, count) : count;
      if (end > count) {
        casters[groups] = obstacle;
        through[groups] = light;
        ends[groups++] = end;
        count = end;
      }
    }
  }

  private void findLosses() {
    touches = 0;
    for (int group = 0; group < groups; group++) {
      double light = through[group];
      for (int i = begin(group); i < ends[group]; i++) {
        int point = shaded[i];
        if (asked[point] == 0) {
          touched[touches++] = point;
          dimmed[point] = 1;
          shut[point] = 0;
        }
        asked[point] += 1 - light;
        if (light == 0) {
          shut[point]++;
        } else {
          dimmed[point] *= light;
        }
      }
    }
    for (int i = 0; i < touches; i++) {
      int point = touched[i];
      left[point] = shut[point] > 0 ? 0 : dimmed[point];
      granted[point] = (1 - left[point]) / asked[point];
      asked[point] = 0;
    }
  }

  private void bookByObstacle(SunPath.Step step) {
    for (int group = 0; group < groups; group++) {
      double light = through[group];
      double[] taken = tally.takenBy[casters[group]];
      double[] wonBack = tally.wonBackBy[casters[group]];
      for (int i = begin(group); i < ends[group]; i++) {
        int point = shaded[i];
        taken[point] += granted[point] * (1 - light) * step.hours();
        double without = light > 0 ? left[point] / light : shut[point] == 1 ? dimmed[point] : 0;
        wonBack[point] += (without - left[point]) * step.hours();
      }
    }
  }

  private void bookByPoint(SunPath.Step step) {
    double[] ofMonth = tally.takenThisMonth();
    double[] ofHalf = tally.takenThisHalf(step);
    for (int i = 0; i < touches; i++) {
      int point = touched[i];
      double lost = (1 - left[point]) * step.hours();
      ofMonth[point] += lost;
      ofHalf[point] += lost;
    }
  }

  private int begin(int group) {
    return group == 0 ? 0 : ends[group - 1];
  }
}
