package guildwood.workplan;

import guildwood.bed.Bed;
import guildwood.guild.Guild;
import guildwood.kernel.Range;
import guildwood.materials.Covering;
import guildwood.materials.Material;
import guildwood.materials.MaterialSettings;
import guildwood.materials.Need;
import guildwood.materials.Share;
import guildwood.materials.SiteNeeds;
import guildwood.materials.Stock;
import guildwood.materials.Target;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.species.Holding;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.ShippedLibrary;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** An invented site with one path and two beds, for the tests of work. */
final class WorkBeds {
  static final SpeciesLibrary LIBRARY = ShippedLibrary.read("/seed-data").orThrow();
  static final LocalDate MARCH = LocalDate.of(2027, 3, 20);
  static final Site SITE = new Site(1, "Mill lane", "US-WI", OptionalDouble.of(44.5), Optional.of(MonthDay.of(5, 10)),
      Optional.of(MonthDay.of(9, 28)),
      Map.of(Axis.WINTER_COLD, new Condition(Axis.WINTER_COLD, Range.of(-29), Basis.PUBLISHED, "4b")), "");
  static final GardenYear YEAR = GardenYear.of(SITE);

  private WorkBeds() {}

  static Bed bed(long id, String name) {
    return new Bed(id, 1, name, 40, Map.of(), List.of(), "");
  }

  static List<PlantJob> jobs(Map<String, Integer> first, Map<String, Integer> second, Holding... holdings) {
    Map<String, Holding> all = new java.util.HashMap<>();
    for (Holding holding : holdings) {
      all.put(holding.speciesId(), holding);
    }
    GuildJobs jobs = new GuildJobs(SITE, LIBRARY, all);
    jobs.add(bed(3, "North"), Guild.of(first));
    jobs.add(bed(4, "South"), Guild.of(second));
    return jobs.jobs();
  }

  static Holding has(String species, int onHand, int toPropagate) {
    return new Holding(species, onHand, toPropagate, OptionalInt.empty());
  }

  static SiteNeeds nothingToLay() {
    return new SiteNeeds(MaterialSettings.USUAL, List.of(), new Stock(Map.of()), List.of());
  }

  /** A path, then a bed with card under its mulch, then one with mulch alone; so much of the chips lies there. */
  static SiteNeeds pathAndBeds(double chipsM3) {
    List<Need> needs = List.of(
        new Need(Target.path(9), "Gate path", 1, Material.WOOD_CHIPS, 27, 0.15, 4.05, 0, false),
        new Need(Target.bed(3), "North", 2, Material.CARD, 40, 0, 55, 0, false),
        new Need(Target.bed(3), "North", 2, Material.WOOD_CHIPS, 40, Covering.USUAL_BED.depthM(), 3, 0, false),
        new Need(Target.bed(4), "South", 3, Material.WOOD_CHIPS, 40, Covering.USUAL_BED.depthM(), 3, 0, false));
    Stock stock = new Stock(Map.of(Material.WOOD_CHIPS, chipsM3));
    List<Share> shares = stock.spentOn(needs);
    return new SiteNeeds(MaterialSettings.USUAL, List.of(), stock, shares);
  }
}
