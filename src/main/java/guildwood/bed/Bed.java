package guildwood.bed;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.species.Axis;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One bed of a site.
 *
 * @param areaM2 ground area, square metres
 * @param size the rectangle the bed fills or lies in; absent where only its area is known
 * @param middle where its middle lies, seen from the site's own point; absent where not known
 * @param conditions what the bed says itself; the rest is inherited from its site
 * @param standing plants already there, which stay
 */
public record Bed(
    long id,
    long siteId,
    String name,
    double areaM2,
    Optional<Rectangle> size,
    Optional<GroundPoint> middle,
    Map<Axis, Condition> conditions,
    List<Standing> standing,
    String note) {
  public static final double SMALLEST_AREA_M2 = 0.1;
  public static final double LARGEST_AREA_M2 = 100_000;
  /** How far a bed's middle may lie from the site's own point, each way: a garden's scale, flat enough for the sun model. */
  public static final Range PLACE_M = new Range(-2_000, 2_000);
  public static final int LONGEST_NAME = 120;
  public static final int LONGEST_NOTE = 2000;

  public Bed {
    conditions = Map.copyOf(conditions);
    standing = List.copyOf(standing);
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("a bed needs a name of at most " + LONGEST_NAME + " characters: " + name);
    }
    if (!(areaM2 >= SMALLEST_AREA_M2 && areaM2 <= LARGEST_AREA_M2)) {
      throw new IllegalArgumentException("a bed of " + areaM2 + " m2");
    }
    if (middle.isPresent() && !(PLACE_M.contains(middle.get().xM()) && PLACE_M.contains(middle.get().yM()))) {
      throw new IllegalArgumentException("a bed at " + middle.get());
    }
  }

  /** A bed of which only the area is known. */
  public Bed(long id, long siteId, String name, double areaM2, Map<Axis, Condition> conditions, List<Standing> standing, String note) {
    this(id, siteId, name, areaM2, Optional.empty(), Optional.empty(), conditions, standing, note);
  }

  /** The rectangle it lies in; a square of its area where nobody told a size. */
  public Rectangle ground() {
    return size.orElseGet(() -> Rectangle.square(areaM2));
  }

  /**
   * The conditions that hold in the bed: its own, and the site's where it says nothing. The length of the
   * season comes from the site's frost dates where nobody states it. What wild plants indicate in the bed
   * yields to what is measured on its site.
   */
  public Map<Axis, Condition> conditionsIn(Site site) {
    Map<Axis, Condition> all = new EnumMap<>(Axis.class);
    site.frostFreeDays().ifPresent(days -> all.put(Axis.SEASON,
        new Condition(Axis.SEASON, Range.of(days), Basis.INHERITED, days + " days")));
    site.conditions().forEach((axis, condition) -> all.put(axis, condition.inherited()));
    conditions.forEach((axis, own) -> {
      if (!yieldsToSite(axis, site)) {
        all.put(axis, own);
      }
    });
    return all;
  }

  /** Whether the bed's own condition is only indicated while the site's is measured. */
  public boolean yieldsToSite(Axis axis, Site site) {
    Condition own = conditions.get(axis);
    Condition ofSite = site.conditions().get(axis);
    return own != null && own.basis() == Basis.INDICATED && ofSite != null && ofSite.basis() == Basis.MEASURED;
  }

  /** How many plants of a species stand here already. */
  public int standingOf(String speciesId) {
    return standing.stream().filter(s -> s.speciesId().equals(speciesId)).mapToInt(Standing::count).sum();
  }

  /** The same bed with so many plants of a species standing in it; none of them where the count is 0. */
  public Bed withStanding(String speciesId, int count) {
    List<Standing> all = new ArrayList<>(standing);
    all.removeIf(s -> s.speciesId().equals(speciesId));
    if (count > 0) {
      all.add(new Standing(speciesId, count));
    }
    return new Bed(id, siteId, name, areaM2, size, middle, conditions, all, note);
  }

  /** The same bed with a condition of its own in the place of what it said on that axis before. */
  public Bed withCondition(Condition condition) {
    Map<Axis, Condition> all = new EnumMap<>(Axis.class);
    all.putAll(conditions);
    all.put(condition.axis(), condition);
    return new Bed(id, siteId, name, areaM2, size, middle, all, standing, note);
  }

  /**
   * A plant that already stands in the bed.
   *
   * @param count how many of it
   */
  public record Standing(String speciesId, int count) {
    public static final int MOST = 10_000;

    public Standing {
      if (count < 1 || count > MOST) {
        throw new IllegalArgumentException(count + " plants of " + speciesId);
      }
    }
  }
}
