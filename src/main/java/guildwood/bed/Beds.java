package guildwood.bed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;

/** The beds as they are kept. Every change is one transaction: all of it, or nothing. */
public interface Beds {
  /** All beds, by name. */
  List<Bed> all();

  /** The beds of one site, by name. */
  List<Bed> ofSite(long siteId);

  Optional<Bed> find(long id);

  /** Keeps a new bed, whatever its id says, and returns the id it got; empty where its site is gone. */
  OptionalLong add(Bed bed);

  /**
   * Changes a bed as it stands at this moment and returns what it became; empty where there is none. A bed
   * stays on its site.
   */
  Optional<Bed> change(long id, UnaryOperator<Bed> change);

  /** Removes a bed and all that belongs to it; false where there is none. */
  boolean remove(long id);

  /** What goes with a bed when it is removed. */
  Belongings belongings(long bedId);

  /**
   * What hangs on a bed.
   *
   * @param wishes asked of its guild
   * @param guilds saved for it
   * @param links given out to look at those guilds, still working or not
   * @param near species recorded as growing near it
   */
  record Belongings(int wishes, int guilds, int links, int near) {
    /** What hangs on a bed near which nothing is recorded. */
    public Belongings(int wishes, int guilds, int links) {
      this(wishes, guilds, links, 0);
    }

    public Belongings plus(Belongings other) {
      return new Belongings(wishes + other.wishes, guilds + other.guilds, links + other.links, near + other.near);
    }
  }
}
