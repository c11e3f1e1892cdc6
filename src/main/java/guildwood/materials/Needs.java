package guildwood.materials;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.guild.Guild;
import guildwood.guild.Guilds;
import guildwood.guild.SavedGuild;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.SitePlans;
import guildwood.species.Layer;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Works out what the beds and paths of a site need, from what is kept about them. */
public final class Needs {
  private final Beds beds;
  private final SitePlans plans;
  private final Guilds guilds;
  private final Supplier<SpeciesLibrary> library;
  private final MaterialRecords records;

  public Needs(Beds beds, SitePlans plans, Guilds guilds, Supplier<SpeciesLibrary> library, MaterialRecords records) {
    this.beds = beds;
    this.plans = plans;
    this.guilds = guilds;
    this.library = library;
    this.records = records;
  }

  /** What a site needs now and how far its stock reaches. */
  public SiteNeeds ofSite(long siteId) {
    MaterialSettings settings = records.settings(siteId);
    Map<Target, Covering> own = records.coverings(siteId);
    List<Laid> laid = records.laid(siteId);
    List<SiteNeeds.Place> places = new ArrayList<>();
    List<Need> needs = new ArrayList<>();
    for (Surface surface : inOrder(siteId, settings)) {
      Covering covering = own.getOrDefault(surface.target(), surface.planned().orElse(settings.usual(surface.target().kind())));
      places.add(new SiteNeeds.Place(surface, covering, own.containsKey(surface.target())));
      if (covering.wanted() && surface.areaM2() > 0) {
        needs.addAll(needsOf(surface, covering, places.size(), settings, laid));
      }
    }
    Stock stock = Stock.of(records.deliveries(siteId), laid);
    return new SiteNeeds(settings, places, stock, stock.spentOn(needs));
  }

  private static List<Need> needsOf(Surface surface, Covering covering, int order, MaterialSettings settings, List<Laid> laid) {
    List<Need> needs = new ArrayList<>();
    if (covering.card()) {
      needs.add(need(surface, order, Material.CARD, 0, settings.sheet().sheets(surface.areaM2()), laid));
    }
    double looseM3 = Volume.looseM3(surface.areaM2(), covering.depthM(), settings.settlingPercent());
    needs.add(need(surface, order, covering.material(), covering.depthM(), looseM3, laid));
    return needs;
  }

  private static Need need(Surface surface, int order, Material material, double depthM, double amount, List<Laid> laid) {
    List<Laid> here = laid.stream().filter(l -> l.target().equals(surface.target()) && l.material() == material).toList();
    double sum = here.stream().mapToDouble(Laid::amount).sum();
    return new Need(surface.target(), surface.name(), order, material, surface.areaM2(), depthM, amount, sum,
        here.stream().anyMatch(Laid::finished));
  }

  /** Beds and paths as the owner put them; those never moved come last, paths before beds: one must get there first. */
  private List<Surface> inOrder(long siteId, MaterialSettings settings) {
    List<PlanPath> paths = plans.paths(siteId);
    List<Bed> ofSite = beds.ofSite(siteId);
    List<Target> all = new ArrayList<>();
    paths.forEach(path -> all.add(Target.path(path.id())));
    ofSite.forEach(bed -> all.add(Target.bed(bed.id())));
    Map<Target, Integer> place = new HashMap<>();
    records.order(siteId).forEach(target -> place.put(target, place.size()));
    all.sort(Comparator.comparingInt(target -> place.getOrDefault(target, Integer.MAX_VALUE)));
    Map<Target, Surface> surfaces = new LinkedHashMap<>();
    addPaths(surfaces, paths.stream().sorted(Comparator.comparingInt(p -> all.indexOf(Target.path(p.id())))).toList(), settings);
    ofSite.forEach(bed -> surfaces.put(Target.bed(bed.id()), surface(bed, settings)));
    return all.stream().map(surfaces::get).toList();
  }

  private static void addPaths(Map<Target, Surface> surfaces, List<PlanPath> inOrder, MaterialSettings settings) {
    List<Double> areas = PathAreas.inOrderM2(inOrder);
    for (int i = 0; i < inOrder.size(); i++) {
      PlanPath path = inOrder.get(i);
      surfaces.put(Target.path(path.id()),
          new Surface(Target.path(path.id()), path.name(), areas.get(i), 0, 0, Optional.of(planned(path, settings.paths()))));
    }
  }

  /** The plan's own depth holds; a path on which the plan lays nothing needs nothing. */
  private static Covering planned(PlanPath path, Covering usual) {
    return path.depthM() > 0
        ? usual.withDepth(Math.max(Covering.DEPTH_M.min(), Math.min(Covering.DEPTH_M.max(), path.depthM())))
        : usual.unwanted();
  }

  private Surface surface(Bed bed, MaterialSettings settings) {
    int trunks = trunks(bed);
    double free = Math.min(bed.areaM2(), trunks * settings.gap().areaM2());
    return new Surface(Target.bed(bed.id()), bed.name(), bed.areaM2(), free, trunks, Optional.empty());
  }

  /** Trees and shrubs that stand in the bed or belong to its saved guild, which counts standing ones in. */
  private int trunks(Bed bed) {
    Map<String, Integer> plants = new HashMap<>();
    bed.standing().forEach(s -> plants.put(s.speciesId(), s.count()));
    guilds.saved(bed.id()).map(SavedGuild::guild).orElse(Guild.EMPTY).counts()
        .forEach((species, count) -> plants.merge(species, count, Math::max));
    SpeciesLibrary now = library.get();
    return plants.entrySet().stream().filter(e -> isWoody(now, e.getKey())).mapToInt(Map.Entry::getValue).sum();
  }

  private static boolean isWoody(SpeciesLibrary library, String speciesId) {
    return library.find(speciesId).flatMap(species -> species.layers().stream().min(Layer::compareTo))
        .filter(layer -> layer.compareTo(Layer.SHRUB) <= 0).isPresent();
  }
}
