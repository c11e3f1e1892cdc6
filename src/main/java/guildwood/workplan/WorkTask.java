package guildwood.workplan;

import guildwood.kernel.Finding;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A piece of work that is still to be done, whole.
 *
 * @param key stable while the plan keeps asking for it: {@code plant.bed-3.malus-domestica.have}
 * @param place bed or path it is done at; the site where it is none
 * @param subject plant or material, by name; may be empty
 * @param speciesId may be empty
 * @param bedId 0 where it belongs to no bed
 * @param amount left to do, above nothing
 * @param minutes of one person for one of what it is counted in
 * @param seasons in which it can be done
 * @param window the next days in which it is in season
 * @param after keys of the tasks that come first
 * @param detail way of raising, material, or where plants come from: a message key's last part; may be empty
 * @param advice what to know and to take care of
 */
public record WorkTask(String key, WorkKind kind, String place, String subject, String speciesId, long bedId, double amount,
    Count count, double minutes, List<InSeason> seasons, Window window, Set<String> after, String detail, List<Finding> advice) {
  public WorkTask {
    seasons = List.copyOf(seasons);
    after = Collections.unmodifiableSet(new TreeSet<>(after));
    advice = List.copyOf(advice);
    if (!(amount > 0 && minutes > 0) || after.contains(key)) {
      throw new IllegalArgumentException(key + ": " + amount + " at " + minutes + " minutes after " + after);
    }
  }

  /** The same task, only so much of it. */
  WorkTask part(double some) {
    return new WorkTask(key, kind, place, subject, speciesId, bedId, some, count, minutes, seasons, window, after, detail, advice);
  }

  public double allMinutes() {
    return amount * minutes;
  }
}
