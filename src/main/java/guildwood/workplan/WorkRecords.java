package guildwood.workplan;

import java.util.List;
import java.util.Optional;

/** What is kept about work on the sites. Every change is one transaction: all of it, or nothing. */
public interface WorkRecords {
  /** The usual ones where none were kept. */
  WorkSettings settings(long siteId);

  /** False where the site is gone. */
  boolean keep(long siteId, WorkSettings settings);

  /** What was done on a site, the latest first. */
  List<Done> done(long siteId);

  /**
   * Keeps that work was done, whatever its id says, with what it changes: bought plants are on hand, planted ones
   * stand in their bed and are on hand no longer. Empty where the site, bed or plants are not there any more.
   */
  Optional<Done> finish(Done done);

  /** Takes it back with all it changed. */
  TakenBack takeBack(long siteId, long doneId);

  /** What became of work that was to be taken back. */
  enum TakenBack {
    TAKEN_BACK,
    /** What it brought was used since: plants bought with it are planted, plants planted with it are gone. */
    USED_SINCE,
    NOT_THERE
  }
}
