package guildwood.site.sun;

import java.util.ArrayList;
import java.util.List;

/**
 * Bands of a sun map: the lower classes in two halves, full sun in three steps. Shades get lighter with
 * the hours and hatching thinner, so the map reads in grey and in a photocopy as well.
 *
 * @param fromHours included
 * @param toHours not included, but for the last
 * @param fill a colour whose lightness rises with the hours
 * @param hatch lines drawn across a hatching tile: 2 crossed, 1 single, 0 none
 */
public record SunBand(double fromHours, double toHours, LightClass lightClass, String fill, int hatch) {
  private static final String[] FILLS = {"#3b4660", "#66718c", "#8f98a8", "#b4b7aa", "#d9c98a", "#f0e2a2", "#fdf6d4"};

  /** From the darkest to the brightest. */
  public static List<SunBand> all() {
    double part = LightClass.PART_SHADE.fromHours();
    double full = LightClass.FULL_SUN.fromHours();
    double[] limits = {0, part / 2, part, (part + full) / 2, full, full + 2, full + 4, 24};
    List<SunBand> bands = new ArrayList<>();
    for (int i = 0; i < FILLS.length; i++) {
      bands.add(new SunBand(limits[i], limits[i + 1], LightClass.of(limits[i]), FILLS[i], Math.max(0, 2 - i / 2)));
    }
    return List.copyOf(bands);
  }

  /** Place in {@link #all} of the band of so many hours a day. */
  static int indexOf(List<SunBand> bands, double hours) {
    int index = bands.size() - 1;
    while (index > 0 && hours + 1e-6 < bands.get(index).fromHours()) {
      index--;
    }
    return index;
  }
}
