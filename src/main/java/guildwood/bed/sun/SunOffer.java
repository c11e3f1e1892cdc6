package guildwood.bed.sun;

import guildwood.bed.Bed;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.sun.LightClass;
import guildwood.species.Axis;
import guildwood.species.ClassWords;
import guildwood.species.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** The reckoned sun as a condition a bed can take over, held against what the bed says already. */
public final class SunOffer {
  /**
   * A range is at least so wide, hours: paced heights and guessed crowns are never known better. The same width as
   * that of a single measured number. Our own choice, no publication.
   */
  private static final double LEAST_WIDTH = 1;

  private SunOffer() {}

  /** How the offer stands to what the bed says of its own. */
  public enum Standing {
    /** The bed says nothing of its own about light. */
    NEW,
    /** It has this very range already. */
    TAKEN,
    /** It says something that shares hours or a light class with the offer. */
    AGREES,
    /** It says something that shares neither. */
    CONTRADICTS
  }

  /**
   * The season's range over the middle of the bed, to a tenth of an hour. Hours beyond the top of the class of full
   * sun are cut off: in the long days of the north they are more than any plant's range was written for.
   */
  public static Condition of(BedSun sun) {
    double most = ClassWords.range(Unit.SUN_HOURS, "full sun").orElseThrow().max();
    Range middle = sun.middleHours();
    Range wide = middle.width() >= LEAST_WIDTH ? middle : Range.of(middle.middle()).widened(LEAST_WIDTH / 2);
    double high = Math.min(most, Math.max(LEAST_WIDTH, wide.max()));
    double low = Math.max(0, Math.min(wide.min(), high - LEAST_WIDTH));
    Range range = new Range(tenth(low), tenth(high));
    return new Condition(Axis.LIGHT, range, Basis.COMPUTED, plain(range.min()) + " to " + plain(range.max()));
  }

  public static Standing standing(Condition offer, Bed bed) {
    Optional<Condition> own = Optional.ofNullable(bed.conditions().get(Axis.LIGHT));
    if (own.isEmpty()) {
      return Standing.NEW;
    }
    if (own.get().equals(offer)) {
      return Standing.TAKEN;
    }
    return agree(own.get().range(), offer.range()) ? Standing.AGREES : Standing.CONTRADICTS;
  }

  /** Nine hours that somebody counted and thirteen by the almanac are both full sun: no reason to distrust either. */
  private static boolean agree(Range one, Range other) {
    Range low = one.min() < other.min() ? one : other;
    Range high = low == one ? other : one;
    // Six hours end part shade; they do not begin full sun.
    double end = Math.max(low.min(), low.max() - 0.01);
    return one.overlaps(other) || LightClass.of(end) == LightClass.of(high.min());
  }

  /** A measured value outranks the reckoning, which never takes its place. */
  public static boolean isOutranked(Bed bed) {
    Condition own = bed.conditions().get(Axis.LIGHT);
    return own != null && own.basis() == Basis.MEASURED;
  }

  private static double tenth(double hours) {
    return BigDecimal.valueOf(hours).setScale(1, RoundingMode.HALF_UP).doubleValue();
  }

  private static String plain(double hours) {
    return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
  }
}
