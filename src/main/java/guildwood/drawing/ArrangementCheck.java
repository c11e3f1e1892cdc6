package guildwood.drawing;

import guildwood.guild.PollinationReach;
import guildwood.site.LengthReader;
import guildwood.site.sun.Tree;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Names everything that is wrong with an arrangement, made by the optimiser or by hand. */
public final class ArrangementCheck {
  private final Arrangement arrangement;
  private final ArrangingRules rules;
  private final Plot plot;

  private ArrangementCheck(Arrangement arrangement, ArrangingRules rules) {
    this.arrangement = arrangement;
    this.rules = rules;
    plot = new Plot(arrangement.ground(), rules);
  }

  /** The conflicts, the gravest kind first, within a kind the greatest first. */
  public static List<Conflict> conflicts(Arrangement arrangement, ArrangingRules rules) {
    ArrangementCheck check = new ArrangementCheck(arrangement, rules);
    List<Conflict> all = new ArrayList<>();
    var kinds = arrangement.byId();
    List<Spot> spots = arrangement.spots();
    for (int i = 0; i < spots.size(); i++) {
      PlantKind kind = kinds.get(spots.get(i).speciesId());
      check.alone(spots.get(i), kind, all);
      for (int j = i + 1; j < spots.size(); j++) {
        pair(spots.get(i), kind, spots.get(j), kinds.get(spots.get(j).speciesId()), all);
      }
    }
    all.sort(Comparator.comparing(Conflict::kind).thenComparing(c -> -c.byM()));
    return List.copyOf(all);
  }

  private static void pair(Spot one, PlantKind kind, Spot other, PlantKind otherKind, List<Conflict> all) {
    double away = awayM(one, other);
    boolean sameLayer = kind.layer() == otherKind.layer();
    if (sameLayer && CrownSpacing.betweenM(kind, otherKind) - away > CrownSpacing.SLACK_M) {
      all.add(new Conflict(Conflict.Kind.TOO_CLOSE, List.of(one.id(), other.id()), CrownSpacing.betweenM(kind, otherKind) - away));
    }
    double stems = slack(Math.min(CrownSpacing.stemGapM(kind), CrownSpacing.stemGapM(otherKind)) - away);
    if (!sameLayer && kind.isWoody() && otherKind.isWoody() && stems > 0) {
      all.add(new Conflict(Conflict.Kind.STEMS_TOO_CLOSE, List.of(one.id(), other.id()), stems));
    }
  }

  private void alone(Spot spot, PlantKind kind, List<Conflict> all) {
    double x = spot.at().xM();
    double y = spot.at().yM();
    double inside = plot.insideM(x, y);
    double radius = kind.crownM() / 2;
    add(all, Conflict.Kind.OUTSIDE, spot, arrangement.ground().outline().holds(x, y) ? 0 : Math.max(1e-3, -inside));
    add(all, Conflict.Kind.ON_PATH, spot, slack(plot.onPathM(x, y)));
    for (Tree tree : arrangement.ground().treesInside()) {
      double away = Math.sqrt(Math.pow(tree.foot().xM() - x, 2) + Math.pow(tree.foot().yM() - y, 2));
      add(all, Conflict.Kind.AT_TRUNK, spot, slack(Plot.TRUNK_M - away));
    }
    if (inside > 0) {
      add(all, Conflict.Kind.OVER_EDGE, spot, slack(radius - inside - rules.overhangM()));
    }
    if (kind.harvested()) {
      add(all, Conflict.Kind.OUT_OF_REACH, spot, slack(plot.accessM(x, y) - radius - rules.reachM()));
    }
    if (kind.needsPartner()) {
      partner(spot, kind, all);
    }
  }

  private void partner(Spot spot, PlantKind kind, List<Conflict> all) {
    double reach = PollinationReach.mostFt(kind.kinship()) * LengthReader.FOOT_M;
    var kinds = arrangement.byId();
    arrangement.spots().stream().filter(s -> !s.id().equals(spot.id()) && Partners.serve(kind, kinds.get(s.speciesId())))
        .mapToDouble(s -> awayM(s, spot)).min()
        .ifPresent(nearest -> add(all, Conflict.Kind.PARTNER_FAR, spot, nearest > reach ? nearest : 0));
  }

  private static double slack(double byM) {
    return byM > CrownSpacing.SLACK_M * 2 ? byM : 0;
  }

  private static void add(List<Conflict> all, Conflict.Kind kind, Spot spot, double byM) {
    if (byM > 0) {
      all.add(new Conflict(kind, List.of(spot.id()), byM));
    }
  }

  private static double awayM(Spot one, Spot other) {
    double dx = one.at().xM() - other.at().xM();
    double dy = one.at().yM() - other.at().yM();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
