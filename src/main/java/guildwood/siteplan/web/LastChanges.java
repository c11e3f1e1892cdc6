package guildwood.siteplan.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** How to take back the last change of each plan, until the program ends. */
final class LastChanges {
  private static final int MOST_SITES = 100;

  private final Map<Long, Change> changes = new LinkedHashMap<>() {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Long, Change> eldest) {
      return size() > MOST_SITES;
    }
  };

  /**
   * A change.
   *
   * @param what message key of what was done
   * @param name of what it was done to
   * @param back takes it back; false where that cannot be any more
   */
  record Change(String what, String name, BooleanSupplier back) {}

  synchronized void remember(long siteId, Change change) {
    changes.remove(siteId);
    changes.put(siteId, change);
  }

  synchronized Optional<Change> of(long siteId) {
    return Optional.ofNullable(changes.get(siteId));
  }

  /** The last change, which from now on is no longer remembered. */
  synchronized Optional<Change> take(long siteId) {
    return Optional.ofNullable(changes.remove(siteId));
  }
}
