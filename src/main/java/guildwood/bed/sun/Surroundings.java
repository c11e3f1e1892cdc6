package guildwood.bed.sun;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;

/** What stands around the beds, as it is kept. Every change is one transaction: all of it, or nothing. */
public interface Surroundings {
  /** Everything near the beds of a site, in the order it was recorded. */
  List<Nearby> ofSite(long siteId);

  Optional<Nearby> find(long id);

  /** Keeps a new one, whatever its id says, and returns the id it got; empty where its site or bed is gone. */
  OptionalLong add(Nearby nearby);

  /** Changes one as it stands at this moment and returns what it became; empty where there is none. It stays on its site. */
  Optional<Nearby> change(long id, UnaryOperator<Nearby> change);

  /** Removes one; false where there is none. */
  boolean remove(long id);

  /** The skyline that was measured for the whole site. */
  Optional<Skyline> skylineOfSite(long siteId);

  /** The skyline that was measured for this bed and holds there instead of the site's. */
  Optional<Skyline> skylineOfBed(long bedId);

  /** Keeps the site's skyline, and lets it hold in this bed too; false where one of them is gone. */
  boolean keepForSite(long siteId, long bedId, Skyline skyline);

  /** Keeps a skyline of the bed's own; false where it is gone. */
  boolean keepForBed(long bedId, Skyline skyline);
}
