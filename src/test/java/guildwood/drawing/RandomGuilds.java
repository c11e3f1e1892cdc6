package guildwood.drawing;

import guildwood.fit.Trapezoid;
import guildwood.guild.Kinship;
import guildwood.kernel.Range;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Seeded invented guilds in beds of all shapes: rectangles, L-shapes, triangles, thin strips. */
final class RandomGuilds {
  private static final double[] CROWN_M = {8, 4.5, 1.8, 1.4, 0.7, 0.5, 0.35};
  private static final double[] HEIGHT_M = {16, 6, 1.8, 2.5, 0.6, 0.15, 0.4};
  private static final int[] SHADE = {60, 50, 40, 20, 10, 0, 0};

  private RandomGuilds() {}

  /** A guild in its bed. */
  record Case(BedGround ground, List<PlantKind> kinds) {
    int plants() {
      return kinds.stream().mapToInt(PlantKind::plants).sum();
    }
  }

  /** Fills every layer that has a plant narrow enough up to a share of the bed's area, never beyond. */
  static Case filled(long seed, double share) {
    Random dice = new Random(seed * 0x9E3779B97F4A7C15L + 5);
    BedGround ground = ground((int) (seed % 4), dice, 5 + dice.nextDouble() * 25);
    double area = guildwood.site.GroundShapes.polygon(ground.outline()).getArea();
    List<PlantKind> kinds = new ArrayList<>();
    for (Layer layer : Layer.values()) {
      double room = share * (layer == Layer.CLIMBER ? Math.max(area / 6, Math.min(area, 2)) : area);
      for (int species = 1 + dice.nextInt(3); species > 0; species--) {
        double crown = CROWN_M[layer.ordinal()] * (0.6 + 0.8 * dice.nextDouble());
        int most = (int) (room / (Math.PI * crown * crown / 4));
        int plants = species == 1 ? most : (int) (most * dice.nextDouble());
        if (plants > 0) {
          kinds.add(kind(layer, kinds.size(), plants, crown, dice));
          room -= plants * Math.PI * crown * crown / 4;
        }
      }
    }
    return new Case(ground, kinds);
  }

  static BedGround ground(int shape, Random dice, double areaM2) {
    double turn = dice.nextInt(3) == 0 ? dice.nextDouble() * Math.PI : 0;
    double a = Math.sqrt(areaM2);
    List<double[]> corners = switch (shape) {
      case 0 -> box(a * 1.3, a / 1.3);
      case 1 -> List.of(new double[] {0, 0}, new double[] {a * 1.2, 0}, new double[] {a * 1.2, a * 0.55}, new double[] {a * 0.5, a * 0.55},
          new double[] {a * 0.5, a * 1.35}, new double[] {0, a * 1.35});
      case 2 -> List.of(new double[] {0, 0}, new double[] {a * 1.6, 0}, new double[] {a * (0.2 + dice.nextDouble()), a * 1.25});
      default -> box(a * 3.2, a / 3.2);
    };
    return BedGround.of(Footprint.through("", corners.stream().map(c -> new GroundPoint(
        c[0] * Math.cos(turn) - c[1] * Math.sin(turn) - a / 2, c[0] * Math.sin(turn) + c[1] * Math.cos(turn) - a / 2)).toList()).orThrow());
  }

  private static List<double[]> box(double wide, double high) {
    return List.of(new double[] {0, 0}, new double[] {wide, 0}, new double[] {wide, high}, new double[] {0, high});
  }

  static BedGround rectangle(double eastM, double northM) {
    return BedGround.of(Footprint.through("", List.of(new GroundPoint(-eastM / 2, -northM / 2), new GroundPoint(eastM / 2, -northM / 2),
        new GroundPoint(eastM / 2, northM / 2), new GroundPoint(-eastM / 2, northM / 2))).orThrow());
  }

  private static PlantKind kind(Layer layer, int number, int plants, double crownM, Random dice) {
    double least = dice.nextDouble() * 5;
    return new PlantKind("plant-" + number, "Plant " + number, plants, 0, layer, crownM, HEIGHT_M[layer.ordinal()], false,
        GrowthRate.values()[dice.nextInt(3)], false, dice.nextBoolean(), least > 4, false, new Kinship("Plant", "Plant " + number, false),
        Optional.of(new Trapezoid(new Range(least, 16), new Range(least + 1, 16))), SHADE[layer.ordinal()]);
  }

  /** A plain kind for a test to place. */
  static PlantKind kind(String id, Layer layer, int plants, double crownM) {
    return new PlantKind(id, id.replace('-', ' '), plants, 0, layer, crownM, HEIGHT_M[layer.ordinal()], false, GrowthRate.MEDIUM, false, false,
        false, false, new Kinship("Plant", id, false), Optional.of(new Trapezoid(new Range(5, 16), new Range(6, 16))), SHADE[layer.ordinal()]);
  }
}
