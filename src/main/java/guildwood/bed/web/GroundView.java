package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.web.SiteView;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A site with its beds, in words. */
record GroundView(SiteView site, List<BedView> beds) {

  static GroundView of(Site site, List<Bed> beds, Units units, Messages messages) {
    return new GroundView(SiteView.of(site, units, messages),
        beds.stream().map(bed -> BedView.of(bed, site, units, messages)).toList());
  }

  /** All sites with their beds, by name. */
  static List<GroundView> all(Sites sites, Beds beds, Units units, Messages messages) {
    Map<Long, List<Bed>> bySite = beds.all().stream().collect(Collectors.groupingBy(Bed::siteId));
    return sites.all().stream().map(site -> of(site, bySite.getOrDefault(site.id(), List.of()), units, messages)).toList();
  }
}
