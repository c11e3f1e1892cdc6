package guildwood.guild;

import java.util.Locale;

/** Every rule a guild can break. The words are at message key {@code rule.<key>}. */
public enum GuildRule {
  /** Args: none. */
  UNKNOWN_SPECIES,
  /** Args: axis key, fit in thousandths, shortfall in the axis unit. */
  DOES_NOT_FIT,
  /** Borderline, and the owner does not allow it. Args as for {@link #DOES_NOT_FIT}. */
  BORDERLINE,
  /** Nothing that decides is known, and the owner does not allow it. Args: none. */
  FIT_NOT_KNOWN,
  /** Neither its layer nor its height is known. Args: none. */
  LAYER_NOT_KNOWN,
  /** Args: none. */
  BANNED,
  /** Args: key of the caution kind. */
  CAUTION,
  /** Not stated as native. Args: region key. */
  NOT_NATIVE,
  /**
   * Nothing on hand, and the owner wants nothing else; or fewer than planned. Args: how many are on hand, planned,
   * could be propagated.
   */
  NOT_IN_STOCK,
  /**
   * Nothing on hand nor to be propagated, and the owner buys nothing; or fewer than planned. Args: how many are on
   * hand or can be propagated, planned.
   */
  NOT_TO_BE_HAD,
  /** One mature crown is larger than the bed. Args: crown in m2, bed in m2. */
  LARGER_THAN_BED,
  /** Too few plants of a ground cover to cover anything. Args: planned, needed. */
  PATCH_TOO_SMALL,
  /** Needs a compatible partner and has none. Args: none. */
  PARTNER_MISSING,
  /** Args: planned, allowed. */
  TOO_MANY_SPECIES,
  /** Args: planned, allowed. */
  TOO_MANY_PLANTS,
  /** Args: cost in cents, budget in cents. */
  OVER_BUDGET,
  /** Args: layer key, crowns in m2, room for them in m2. */
  LAYER_FULL,
  /** Crowns above take light that sun-loving plants of the layer need. Args: layer key, needed in m2, bed in m2. */
  NO_LIGHT_LEFT,
  /** One harms the other. Args: conflict item. */
  ENEMIES,
  /** Args: genus, planned, allowed. */
  GENUS_LIMIT,
  /** Fewer than stand there; plants that stand stay. Args: planned, standing. */
  STANDING_LEFT_OUT,
  /** Pinned otherwise. Args: planned, pinned. */
  PIN_IGNORED;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
