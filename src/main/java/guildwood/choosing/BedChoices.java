package guildwood.choosing;

import guildwood.bed.Beds;
import guildwood.site.Site;
import guildwood.site.Sites;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The beds there are to choose for, in the order to show them. */
public interface BedChoices {
  List<BedChoice> all();

  /** The beds as they are kept, with the conditions they inherit from their sites, site by site. */
  static BedChoices of(Sites sites, Beds beds) {
    return () -> {
      Map<Long, Site> byId = sites.all().stream().collect(Collectors.toMap(Site::id, site -> site));
      return beds.all().stream()
          .filter(bed -> byId.containsKey(bed.siteId()))
          .map(bed -> {
            Site site = byId.get(bed.siteId());
            return new BedChoice(bed.id(), bed.name(), site.name(), bed.conditionsIn(site));
          })
          .sorted(java.util.Comparator.comparing(BedChoice::siteName).thenComparing(BedChoice::name))
          .toList();
    };
  }
}
