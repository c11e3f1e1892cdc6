package guildwood.materials;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** What is kept about materials on the sites. Every change is one transaction: all of it, or nothing. */
public interface MaterialRecords {
  /** The site's settings; the usual ones where none were kept. */
  MaterialSettings settings(long siteId);

  /** False where the site is gone. */
  boolean keep(long siteId, MaterialSettings settings);

  /** How single beds and paths are covered, where the owner said so. */
  Map<Target, Covering> coverings(long siteId);

  /** Keeps the covering of one bed or path; without one the site's settings hold again. False where the site is gone. */
  boolean keep(long siteId, Target target, Optional<Covering> covering);

  /** The order of beds and paths as the owner set it; those never moved are not in it. */
  List<Target> order(long siteId);

  /** False where the site is gone. */
  boolean keep(long siteId, List<Target> order);

  /** What came, the latest first. */
  List<Delivery> deliveries(long siteId);

  /** Keeps a new delivery, whatever its id says; empty where its site is gone. */
  OptionalLong add(Delivery delivery);

  /** Forgets a delivery. */
  Removal removeDelivery(long siteId, long id);

  /** What was laid, the latest first. */
  List<Laid> laid(long siteId);

  /**
   * Keeps that material was laid and takes it from the stock as far as it reaches at this moment; the rest counts as
   * brought from elsewhere, so that the stock is never less than nothing. Empty where the site is gone.
   */
  Optional<Laid> lay(long siteId, Need need, double amount, LocalDate on, boolean finished);

  /** Takes back that something was laid: it lies in the stock again. False where there is no such entry. */
  boolean takeBack(long siteId, long laidId);

  /** What became of a delivery that was to be forgotten. */
  enum Removal {
    REMOVED,
    /** Some of it was laid already: the stock would be less than nothing. */
    LAID_ALREADY,
    NOT_THERE
  }
}
