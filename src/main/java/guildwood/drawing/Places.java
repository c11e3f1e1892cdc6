package guildwood.drawing;

import guildwood.guild.PollinationReach;
import guildwood.site.LengthReader;

/**
 * What is wished of a plant's place apart from its spacing, as a cost in square metres: tall plants on the pole side,
 * crowns not far over the edge, what is picked in reach, light for what needs it, stems apart from woody stems, groups
 * together, pollen partners in reach. The weights are ours, set so that each is seen to be kept where there is room.
 */
final class Places {
  private static final double POLE = 0.5;
  private static final double OVERHANG = 0.8;
  private static final double OVERHANG_TOO_FAR = 40;
  private static final double REACH = 40;
  /** Reach and overhang are kept by this much more than asked, so that pushing plants apart does not spoil them. */
  private static final double AMPLE_M = 0.06;

  private static final double LIGHT = 2.5;
  private static final double STEMS = 30;
  private static final double TOGETHER = 4;
  private static final double PARTNER = 0.02;

  private final Plot plot;
  private final ArrangingRules rules;
  private final Canopy canopy;
  private final double tallestM;

  /** Middle of each kind's plants and the radius of a patch that holds them. */
  private double[] middleX = new double[0];
  private double[] middleY = new double[0];
  private double[] patchM = new double[0];

  Places(Plot plot, ArrangingRules rules, Canopy canopy, double tallestM) {
    this.plot = plot;
    this.rules = rules;
    this.canopy = canopy;
    this.tallestM = tallestM;
  }

  double cost(Crowd crowd, int plant, double x, double y) {
    PlantKind kind = crowd.kind(plant);
    double radius = kind.crownM() / 2;
    double tall = kind.heightM() / tallestM;
    double over = Math.max(0, radius - plot.insideM(x, y));
    double tooFar = Math.max(0, over - rules.overhangM() + AMPLE_M);
    double cost = POLE * tall * tall * plot.fromPoleM(y) + OVERHANG * over * over + OVERHANG_TOO_FAR * tooFar * tooFar
        + STEMS * canopy.crowding(x, y, CrownSpacing.stemGapM(kind));
    if (kind.harvested()) {
      double beyond = Math.max(0, plot.accessM(x, y) - radius - rules.reachM() + AMPLE_M);
      cost += REACH * beyond * beyond;
    }
    double need = kind.needOfLight();
    if (need > 0) {
      cost += LIGHT * need * canopy.shade(x, y);
    }
    if (kind.isGrouped() && crowd.kindOf[plant] < middleX.length) {
      cost += fromPatch(crowd.kindOf[plant], x, y);
    }
    return cost + partner(crowd, plant, x, y);
  }

  private double fromPatch(int kind, double x, double y) {
    double dx = x - middleX[kind];
    double dy = y - middleY[kind];
    double beyond = Math.max(0, Math.sqrt(dx * dx + dy * dy) - patchM[kind]);
    return TOGETHER * beyond * beyond;
  }

  /** Looks anew where the groups have their middles. */
  void gather(Crowd crowd) {
    int kinds = crowd.kinds.size();
    middleX = new double[kinds];
    middleY = new double[kinds];
    patchM = new double[kinds];
    for (int i = 0; i < crowd.size; i++) {
      middleX[crowd.kindOf[i]] += crowd.x[i] / crowd.kind(i).plants();
      middleY[crowd.kindOf[i]] += crowd.y[i] / crowd.kind(i).plants();
    }
    for (int kind = 0; kind < kinds; kind++) {
      patchM[kind] = Math.sqrt(crowd.kinds.get(kind).plants()) * crowd.kinds.get(kind).crownM() * 0.6;
    }
  }

  /** In a bed wider than pollen is carried, partners of one species are drawn to one another. */
  private double partner(Crowd crowd, int plant, double x, double y) {
    PlantKind kind = crowd.kind(plant);
    double reach = PollinationReach.mostFt(kind.kinship()) * LengthReader.FOOT_M;
    if (!kind.needsPartner() || plot.longM() <= reach) {
      return 0;
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (int other = 0; other < crowd.size; other++) {
      if (other != plant && crowd.placed[other] && Partners.serve(kind, crowd.kind(other))) {
        nearest = Math.min(nearest, Math.sqrt((crowd.x[other] - x) * (crowd.x[other] - x) + (crowd.y[other] - y) * (crowd.y[other] - y)));
      }
    }
    double beyond = Double.isInfinite(nearest) ? 0 : Math.max(0, nearest - reach * 0.95);
    return PARTNER * beyond * beyond;
  }
}
