package guildwood;

import guildwood.bed.Bed;
import guildwood.bed.BedOutline;
import guildwood.bed.Beds;
import guildwood.bed.Outlines;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.sun.Footprint;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanPath.EndHeights;
import guildwood.siteplan.PlanRecords;
import guildwood.siteplan.Water;
import guildwood.species.exchange.CsvTable.Row;
import java.util.Optional;

/** The invented plan of the demonstration's site: two beds traced, two paths and a ditch. */
final class DemoPlan {
  private DemoPlan() {}

  static void fill(Sites sites, Beds beds, Outlines outlines, PlanRecords plans) {
    for (Row row : DemoRows.of("outlines", "bed", "corners_m")) {
      Bed bed = beds.all().stream().filter(b -> b.name().equals(row.cell("bed"))).findFirst().orElseThrow();
      outlines.keep(bed.id(), BedOutline.of(outline(row), "corners_m").orThrow());
    }
    for (Row row : DemoRows.of("paths", "site", "name", "width_m", "depth_m", "start_height_m", "end_height_m", "line_m")) {
      plans.add(new PlanPath(0, siteId(sites, row), row.cell("name"), DemoRows.points(row, "line_m"), DemoRows.number(row, "width_m"),
          DemoRows.number(row, "depth_m"),
          Optional.of(new EndHeights(DemoRows.number(row, "start_height_m"), DemoRows.number(row, "end_height_m"))))).orElseThrow();
    }
    for (Row row : DemoRows.of("water", "site", "name", "corners_m")) {
      plans.add(new Water(0, siteId(sites, row), row.cell("name"), outline(row))).orElseThrow();
    }
  }

  private static Footprint outline(Row row) {
    return Footprint.through("corners_m", DemoRows.points(row, "corners_m")).orThrow();
  }

  private static long siteId(Sites sites, Row row) {
    return sites.all().stream().filter(site -> site.name().equals(row.cell("site"))).findFirst().map(Site::id).orElseThrow();
  }
}
