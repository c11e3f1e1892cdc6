package guildwood.bed;

import guildwood.site.sun.Footprint;
import java.util.Map;
import java.util.Optional;

/**
 * The outlines of beds where they were traced, metres east and north of the site's own point. An outline holds as long
 * as its bed has the area and the rectangle that came from it: whoever tells a bed another size lets go of it. A bed
 * that is moved takes its outline along.
 */
public interface Outlines {
  Optional<Footprint> ofBed(long bedId);

  /** Those of a site's beds that have one, by the id of the bed. */
  Map<Long, Footprint> ofSite(long siteId);

  /**
   * Keeps an outline, and with it the area, the rectangle and the place of the bed. Trees and buildings whose places
   * were told from the bed's middle stay where they are on the site. False where the bed is gone.
   */
  boolean keep(long bedId, BedOutline outline);

  /** Lets go of an outline; the bed keeps its area, rectangle and place. False where there is none. */
  boolean remove(long bedId);

  /**
   * Gives a bed back the area, rectangle and place it had before it was first traced, without an outline. Trees and
   * buildings stay where they are. False where the bed is gone.
   */
  boolean restore(Bed before);
}
