package guildwood.bed.sun;

import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.PacedHeight;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A tree or building near the beds of a site, as people recorded it.
 *
 * @param fromBed the bed from whose middle its place was measured; absent where that is the site's own point
 * @param at its place, seen from there: the foot of a tree, the middle of a rectangular building, the point from
 *     which the corners of any other were told
 */
public record Nearby(long id, long siteId, OptionalLong fromBed, String name, GroundPoint at, Height height, Body body) {
  public static final int LONGEST_NAME = 120;

  /** How far away, each way, people may say that it stands. */
  public static final Range PLACE_M = new Range(-2_000, 2_000);

  /** How many a site may have. Their shadows are reckoned one by one, and a list beyond this is past surveying by hand. */
  public static final int MOST_ON_A_SITE = 60;

  public Nearby {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("a name of 1 to " + LONGEST_NAME + " characters, not " + name);
    }
    body.obstacle(name, at, height.metres());
  }

  /** What it is apart from its place and height. */
  public sealed interface Body permits Crown, Walls {
    Obstacle obstacle(String label, GroundPoint at, double heightM);
  }

  /**
   * Height over the ground at its foot.
   *
   * @param paced how it was measured; absent where people told the height itself
   */
  public record Height(double metres, Optional<PacedHeight> paced) {
    public static Height told(double metres) {
      return new Height(metres, Optional.empty());
    }

    public static Height of(PacedHeight paced) {
      return new Height(paced.metres(), Optional.of(paced));
    }
  }

  /**
   * What stands there for the sun, in another frame of reference.
   *
   * @param label by which it is told from the others
   * @param origin where the point {@link #at} is told from lies in that frame
   */
  public Obstacle obstacle(String label, GroundPoint origin) {
    return body.obstacle(label, from(origin), height.metres());
  }

  /** Its place in another frame of reference in which the point it is told from lies at {@code origin}. */
  public GroundPoint from(GroundPoint origin) {
    return new GroundPoint(origin.xM() + at.xM(), origin.yM() + at.yM());
  }
}
