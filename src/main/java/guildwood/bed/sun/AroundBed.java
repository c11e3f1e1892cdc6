package guildwood.bed.sun;

import guildwood.bed.Bed;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Scene;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What of a site's trees and buildings can be placed around one bed. Places are told from a bed's middle or from
 * the site's own point; one told from elsewhere counts only where this bed's place on the site is known too.
 *
 * @param placed in the order recorded
 * @param unplaced those of which nobody knows where they stand seen from this bed
 */
public record AroundBed(List<Placed> placed, List<Nearby> unplaced) {
  /**
   * A tree or building around the bed.
   *
   * @param origin where the point its place is told from lies, seen from the bed's middle
   * @param obstacle the same thing for the sun, seen from the bed's middle, under a label no other has
   */
  public record Placed(Nearby nearby, GroundPoint origin, Obstacle obstacle) {
    /** Where it stands, seen from the bed's middle. */
    public GroundPoint at() {
      return nearby.from(origin);
    }
  }

  public AroundBed {
    placed = List.copyOf(placed);
    unplaced = List.copyOf(unplaced);
  }

  /** @param bedsOfSite all of them, the bed itself among them */
  public static AroundBed of(Bed bed, List<Bed> bedsOfSite, List<Nearby> ofSite) {
    Map<Long, Bed> beds = bedsOfSite.stream().collect(Collectors.toMap(Bed::id, Function.identity()));
    List<Placed> placed = new ArrayList<>();
    List<Nearby> unplaced = new ArrayList<>();
    Set<String> labels = new HashSet<>(Set.of(Scene.HORIZON));
    for (Nearby nearby : ofSite) {
      Optional<GroundPoint> origin = origin(bed, beds, nearby);
      if (origin.isPresent()) {
        placed.add(new Placed(nearby, origin.get(), nearby.obstacle(label(nearby.name(), labels), origin.get())));
      } else {
        unplaced.add(nearby);
      }
    }
    return new AroundBed(placed, unplaced);
  }

  public List<Obstacle> obstacles() {
    return placed.stream().map(Placed::obstacle).toList();
  }

  public Optional<Placed> find(long nearbyId) {
    return placed.stream().filter(each -> each.nearby().id() == nearbyId).findFirst();
  }

  private static Optional<GroundPoint> origin(Bed bed, Map<Long, Bed> beds, Nearby nearby) {
    if (nearby.fromBed().isPresent() && nearby.fromBed().getAsLong() == bed.id()) {
      return Optional.of(new GroundPoint(0, 0));
    }
    Optional<GroundPoint> there = nearby.fromBed().isEmpty() ? Optional.of(new GroundPoint(0, 0))
        : Optional.ofNullable(beds.get(nearby.fromBed().getAsLong())).flatMap(Bed::middle);
    return there.flatMap(point -> bed.middle().map(here -> new GroundPoint(point.xM() - here.xM(), point.yM() - here.yM())));
  }

  private static String label(String name, Set<String> taken) {
    String label = name;
    for (int i = 2; !taken.add(label); i++) {
      label = name + " (" + i + ")";
    }
    return label;
  }
}
