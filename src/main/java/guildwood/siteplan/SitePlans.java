package guildwood.siteplan;

import guildwood.site.sun.Footprint;
import java.util.List;
import java.util.Optional;

/** What is drawn on the plans of the sites. */
public interface SitePlans {
  /** The outline of a bed where it was traced, metres east and north of the site's own point. */
  Optional<Footprint> outline(long bedId);

  /** The paths of a site in the order they were drawn. */
  List<PlanPath> paths(long siteId);
}
