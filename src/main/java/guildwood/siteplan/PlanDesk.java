package guildwood.siteplan;

import guildwood.bed.Beds;
import guildwood.bed.Outlines;
import guildwood.bed.sun.Surroundings;
import guildwood.site.Sites;
import java.util.Optional;

/** Where the plans are put together from what is known of a site: one place for each fact, the plan has none of its own. */
public record PlanDesk(Sites sites, Beds beds, Outlines outlines, Surroundings surroundings, PlanRecords records, PlanSheets sheets) {

  /** The plan of a site as it is now; empty where there is no such site. */
  public Optional<SitePlan> find(long siteId) {
    return sites.find(siteId).map(site -> new SitePlan(site, beds.ofSite(siteId), outlines.ofSite(siteId), records.paths(siteId),
        records.waters(siteId), surroundings.ofSite(siteId), sheets.paper(siteId), sheets.picturePlace(siteId)));
  }
}
