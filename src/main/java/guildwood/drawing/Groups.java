package guildwood.drawing;

import java.util.ArrayList;
import java.util.List;

/** Plants of one kind that stand together and so need one label: single trees and shrubs, patches and drifts of the rest. */
final class Groups {
  /** Plants of a patch stand at most so many crowns apart. */
  private static final double TOGETHER = 1.6;

  private Groups() {}

  /** The groups of a kind's spots, each with the spot nearest its middle first. */
  static List<List<Spot>> of(PlantKind kind, List<Spot> spots) {
    List<Spot> left = new ArrayList<>(spots);
    List<List<Spot>> groups = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Spot> group = new ArrayList<>(List.of(left.remove(0)));
      for (int i = 0; kind.isGrouped() && i < group.size(); i++) {
        Spot member = group.get(i);
        List<Spot> joining = left.stream().filter(s -> awayM(s, member.at().xM(), member.at().yM()) < TOGETHER * kind.crownM()).toList();
        group.addAll(joining);
        left.removeAll(joining);
      }
      groups.add(middleFirst(group));
    }
    return groups;
  }

  private static List<Spot> middleFirst(List<Spot> group) {
    double x = group.stream().mapToDouble(s -> s.at().xM()).average().orElseThrow();
    double y = group.stream().mapToDouble(s -> s.at().yM()).average().orElseThrow();
    return group.stream().sorted(java.util.Comparator.comparingDouble(s -> awayM(s, x, y))).toList();
  }

  private static double awayM(Spot spot, double x, double y) {
    return Math.hypot(spot.at().xM() - x, spot.at().yM() - y);
  }
}
