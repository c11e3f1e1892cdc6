package guildwood.materials;

import guildwood.kernel.Range;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What beds and paths are covered with. Loose material is counted in cubic metres, card in sheets. */
public enum Material {
  /** 100 to 500: USDA ARS and NRCS, Akron, Colorado. Weight as extension tables quote it, taken to be NRAES-54. */
  WOOD_CHIPS(new Range(100, 500), new Range(264, 368)),
  /** Straw of small grains, 80 to 150: USDA ARS and NRCS, Akron, Colorado. Weight quoted as above. */
  STRAW(new Range(80, 150), new Range(58, 357)),
  /** 40 to 80: Cornell Composting, fact sheet 2. Weight quoted as above. */
  LEAVES(new Range(40, 80), new Range(60, 80)),
  /** 20: USDA ARS and NRCS, Akron, Colorado. */
  GRASS_CLIPPINGS(Range.of(20), null),
  /** 20: NRCS 2011, C:N Ratios in Cropping Systems. */
  ROTTED_MANURE(Range.of(20), null),
  /** Differs too much with what went in for one published figure. */
  COMPOST(null, null),
  CARD(null, null);

  /**
   * Above about this ratio of carbon to nitrogen what decays takes nitrogen from the soil: NRCS 2011 gives 24 as the
   * ideal diet of soil microbes, Cornell Composting 30 as the ideal mix.
   */
  private static final double NITROGEN_TIED_UP_ABOVE = 30;

  private final Range carbonToNitrogen;
  private final Range kgPerM3;

  Material(Range carbonToNitrogen, Range kgPerM3) {
    this.carbonToNitrogen = carbonToNitrogen;
    this.kgPerM3 = kgPerM3;
  }

  /** Stable name in the database, in addresses and in message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Material> ofKey(String key) {
    return Arrays.stream(values()).filter(material -> material.key().equals(key)).findFirst();
  }

  /** Parts of carbon to one of nitrogen; empty where no source we read gives it. */
  public Optional<Range> carbonToNitrogen() {
    return Optional.ofNullable(carbonToNitrogen);
  }

  /** Weight of a loose cubic metre as delivered, quoted at second hand; empty where we know none. */
  public Optional<Range> kgPerM3() {
    return Optional.ofNullable(kgPerM3);
  }

  /** Whether it ties up nitrogen when it is dug in. Lying on the ground it does not. */
  public boolean tiesUpNitrogenDugIn() {
    return carbonToNitrogen != null && carbonToNitrogen.max() > NITROGEN_TIED_UP_ABOVE;
  }

  public boolean inSheets() {
    return this == CARD;
  }
}
