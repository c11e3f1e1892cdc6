package guildwood.bed.sun;

import guildwood.site.sun.Coordinates;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.site.sun.Scene;
import guildwood.site.sun.SunPath;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Sun over beds, worked out when it is asked for and kept for the next time: the sun's path for each place and
 * year, and the last few beds. One bed is worked out at a time, so that many askers do not take the machine over.
 */
public final class SunReadings {
  private static final int PATHS = 4;
  private static final int BEDS = 8;

  private final Map<PlaceAndYear, SunPath> paths = latest(PATHS);
  private final Map<Asked, BedSun> beds = latest(BEDS);
  private final ReentrantLock reckoning = new ReentrantLock(true);

  private record PlaceAndYear(Coordinates place, int year) {}

  private record Asked(Scene scene, Rectangle ground, Footprint outline, double cellM) {}

  /** The sun on a bed that fills its rectangle around the scene's origin. */
  public BedSun of(Scene scene, Rectangle ground, double cellM) {
    return of(scene, ground, ground.around(new GroundPoint(0, 0)), cellM);
  }

  /** The sun on a bed of this outline in a rectangle around the scene's origin; the same question gets the same answer. */
  public BedSun of(Scene scene, Rectangle ground, Footprint outline, double cellM) {
    Asked asked = new Asked(scene, ground, outline, cellM);
    Optional<BedSun> kept = find(beds, asked);
    if (kept.isPresent()) {
      return kept.get();
    }
    reckoning.lock();
    try {
      return findOrMake(beds, asked, () -> BedSun.of(scene, path(scene), ground, outline, cellM));
    } finally {
      reckoning.unlock();
    }
  }

  private SunPath path(Scene scene) {
    return findOrMake(paths, new PlaceAndYear(scene.place(), scene.year()), () -> scene.sunPath(SunPath.USUAL_STEP_MINUTES));
  }

  private static <K, V> V findOrMake(Map<K, V> kept, K key, Supplier<V> make) {
    Optional<V> found = find(kept, key);
    if (found.isPresent()) {
      return found.get();
    }
    V made = make.get();
    synchronized (kept) {
      kept.put(key, made);
    }
    return made;
  }

  private static <K, V> Optional<V> find(Map<K, V> kept, K key) {
    synchronized (kept) {
      return Optional.ofNullable(kept.get(key));
    }
  }

  private static <K, V> Map<K, V> latest(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }
}
