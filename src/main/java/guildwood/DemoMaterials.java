package guildwood;

import guildwood.bed.Beds;
import guildwood.materials.Covering;
import guildwood.materials.Delivery;
import guildwood.materials.Material;
import guildwood.materials.MaterialRecords;
import guildwood.materials.Need;
import guildwood.materials.Needs;
import guildwood.materials.Target;
import guildwood.site.Sites;
import guildwood.siteplan.PlanRecords;
import guildwood.species.exchange.CsvTable.Row;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Invented deliveries, and the order in which the demonstration's beds and paths are to be covered. */
final class DemoMaterials {
  private final Sites sites;
  private final Beds beds;
  private final PlanRecords plans;

  private DemoMaterials(Sites sites, Beds beds, PlanRecords plans) {
    this.sites = sites;
    this.beds = beds;
    this.plans = plans;
  }

  static void fill(Sites sites, Beds beds, PlanRecords plans, MaterialRecords materials, Needs needs) {
    DemoMaterials demo = new DemoMaterials(sites, beds, plans);
    demo.addDeliveries(materials);
    demo.addCoverings(materials);
    demo.addLaid(materials, needs);
  }

  private void addDeliveries(MaterialRecords materials) {
    for (Row row : DemoRows.of("deliveries", "site", "material", "amount", "delivered_on", "note")) {
      materials.add(new Delivery(0, siteId(row), material(row), DemoRows.number(row, "amount"), LocalDate.parse(row.cell("delivered_on")),
          row.cell("note"))).orElseThrow();
    }
  }

  /** The order of the rows is the order of the work. */
  private void addCoverings(MaterialRecords materials) {
    Map<Long, List<Target>> orders = new TreeMap<>();
    for (Row row : DemoRows.of("coverings", "site", "kind", "name", "material", "depth_m", "card")) {
      Covering covering = new Covering(material(row), DemoRows.number(row, "depth_m"), row.cell("card").equals("yes"), true);
      materials.keep(siteId(row), target(row), Optional.of(covering));
      orders.computeIfAbsent(siteId(row), site -> new ArrayList<>()).add(target(row));
    }
    orders.forEach(materials::keep);
  }

  private void addLaid(MaterialRecords materials, Needs needs) {
    for (Row row : DemoRows.of("laid", "site", "kind", "name", "material", "amount", "laid_on")) {
      Need need = Need.ofKey(needs.ofSite(siteId(row)).needs(), target(row).key() + "." + row.cell("material")).orElseThrow();
      materials.lay(siteId(row), need, DemoRows.number(row, "amount"), LocalDate.parse(row.cell("laid_on")), false).orElseThrow();
    }
  }

  private long siteId(Row row) {
    return sites.all().stream().filter(site -> site.name().equals(row.cell("site"))).findFirst().orElseThrow().id();
  }

  private static Material material(Row row) {
    return Material.ofKey(row.cell("material")).orElseThrow();
  }

  private Target target(Row row) {
    return row.cell("kind").equals("bed")
        ? Target.bed(beds.ofSite(siteId(row)).stream().filter(b -> b.name().equals(row.cell("name"))).findFirst().orElseThrow().id())
        : Target.path(plans.paths(siteId(row)).stream().filter(p -> p.name().equals(row.cell("name"))).findFirst().orElseThrow().id());
  }
}
