package guildwood.site;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The sites as they are kept. Every change is one transaction: all of it, or nothing. */
public interface Sites {
  /** All sites, by name. */
  List<Site> all();

  Optional<Site> find(long id);

  /** Keeps a new site, whatever its id says, and returns the id it got. */
  long add(Site site);

  /** Changes a site as it stands at this moment and returns what it became; empty where there is none. */
  Optional<Site> change(long id, UnaryOperator<Site> change);

  /** Removes a site with its beds and all that belongs to them; false where there is none. */
  boolean remove(long id);
}
