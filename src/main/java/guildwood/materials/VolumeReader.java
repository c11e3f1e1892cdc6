package guildwood.materials;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.NumberWithUnit;
import guildwood.kernel.Range;
import java.util.Locale;

/** Reads volumes of loose material: a number in the visitor's unit, one with a unit of its own, or a count of loads. */
public final class VolumeReader {
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  private final boolean yards;
  private final double loadM3;

  /**
   * A reader for one visitor.
   *
   * @param yards whether a number without a unit is in cubic yards rather than cubic metres
   * @param loadM3 what one load is
   */
  public VolumeReader(boolean yards, double loadM3) {
    this.yards = yards;
    this.loadM3 = loadM3;
  }

  /** Reads a volume that must be there, in cubic metres. */
  public Checked<Double> read(String typed, Range withinM3, String field) {
    Checked<NumberWithUnit> read = NumberWithUnit.read(typed, field, "volume.unreadable");
    if (read.isRefused()) {
      return Checked.refused(read.findings());
    }
    double unitM3 = unitM3(read.orThrow().unit());
    if (unitM3 == 0) {
      return Checked.refused(Finding.of("volume.unreadable", field));
    }
    double volumeM3 = read.orThrow().number() * unitM3;
    return withinM3.contains(volumeM3) ? Checked.of(volumeM3) : Checked.refused(Finding.of("volume.out-of-scale", field,
        plain(withinM3.min()), plain(withinM3.max()), plain(Volume.cubicYards(withinM3.min())), plain(Volume.cubicYards(withinM3.max()))));
  }

  /** Cubic metres in a unit; 0 for a word that is none. */
  private double unitM3(String unit) {
    return switch (unit) {
      case "" -> yards ? Volume.CUBIC_YARD_M3 : 1;
      case "m3", "m³", "cbm", "cubicmetres", "cubicmeters", "cubicmetre", "cubicmeter" -> 1;
      case "l", "litre", "litres", "liter", "liters" -> 0.001;
      case "yd3", "yd³", "yd", "yards", "yard", "cuyd", "cubicyards", "cubicyard" -> Volume.CUBIC_YARD_M3;
      case "ft3", "ft³", "cuft", "cubicfeet" -> CUBIC_FOOT_M3;
      case "load", "loads" -> loadM3;
      default -> 0;
    };
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }
}
