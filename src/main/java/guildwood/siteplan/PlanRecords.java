package guildwood.siteplan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Paths and water as they are kept. Beds, trees and buildings of a plan are those of the site itself. Every change is
 * one transaction: all of it, or nothing.
 */
public interface PlanRecords extends SitePlans {
  /** How many paths, and how many waters, a site may have: more than that cannot be told apart on a plan. */
  int MOST_ON_A_SITE = 200;

  /** Keeps a new path, whatever its id says, and returns the id it got; empty where its site is gone. */
  OptionalLong add(PlanPath path);

  /** Puts this in the place of the path with its id; false where there is none. */
  boolean change(PlanPath path);

  boolean removePath(long id);

  Optional<PlanPath> findPath(long id);

  /** The water of a site in the order it was drawn. */
  List<Water> waters(long siteId);

  OptionalLong add(Water water);

  boolean change(Water water);

  boolean removeWater(long id);

  Optional<Water> findWater(long id);
}
