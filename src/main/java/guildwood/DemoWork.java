package guildwood;

import guildwood.site.Sites;
import guildwood.workplan.WorkRecords;
import guildwood.workplan.WorkSettings;
import java.time.DayOfWeek;
import java.util.Map;

/** The demonstration's school has helpers on Saturdays. */
final class DemoWork {
  private static final WorkSettings SATURDAY_HELPERS = new WorkSettings(2, 4, DayOfWeek.SATURDAY, 45, 20, 6, 4, Map.of());

  private DemoWork() {}

  static void fill(Sites sites, WorkRecords work) {
    sites.all().forEach(site -> work.keep(site.id(), SATURDAY_HELPERS));
  }
}
