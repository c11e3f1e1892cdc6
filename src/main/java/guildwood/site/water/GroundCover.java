package guildwood.site.water;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What covers the ground, with its curve numbers on the four hydrologic soil groups.
 *
 * <p>Woods to thin grass: TR-55, table 2-2c, as the Low Impact Development Manual for Michigan (SEMCOG 2008), table 9.2,
 * reprints it. Bare soil to roofs: TR-55, table 2-2a, as Mathematics and Statistics for the Environment, table 25.5A, adapts
 * it. Both are for average wetness and an initial loss of a fifth. The tables know no bed under mulch.
 */
public enum GroundCover {
  /** Protected from grazing; litter and brush cover the soil. */
  WOODS(30, 55, 70, 77),
  /** Litter, small trees and brush destroyed by heavy grazing or burning. */
  WOODS_WITHOUT_LITTER(45, 66, 77, 83),
  /** Orchard or tree farm in good condition, reckoned as half woods, half grass. */
  ORCHARD(32, 58, 72, 79),
  /** Brush, weeds and grass, mostly brush, more than three quarters of the ground covered. */
  BRUSH(30, 48, 65, 73),
  /** Grass all over, mown for hay, not grazed. */
  MEADOW(30, 58, 71, 78),
  /** Pasture or open grass, more than three quarters of the ground covered. */
  GRASS(39, 61, 74, 80),
  /** Half to three quarters covered. */
  GRASS_WORN(49, 69, 79, 84),
  /** Less than half covered. */
  GRASS_THIN(68, 79, 86, 89),
  /** Newly graded ground without plants. */
  BARE_SOIL(77, 86, 91, 94),
  EARTH_PATH(72, 82, 87, 89),
  GRAVEL(76, 85, 89, 91),
  ROOF_OR_PAVING(98, 98, 98, 98);

  private final List<Integer> numbers;

  GroundCover(int a, int b, int c, int d) {
    this.numbers = List.of(a, b, c, d);
  }

  /** Stable name in addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<GroundCover> ofKey(String key) {
    return Arrays.stream(values()).filter(cover -> cover.key().equals(key)).findFirst();
  }

  public CurveNumber on(SoilGroup soil) {
    return new CurveNumber(numbers.get(soil.ordinal()));
  }
}
