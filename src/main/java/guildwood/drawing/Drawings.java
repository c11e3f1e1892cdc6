package guildwood.drawing;

import guildwood.bed.sun.SunScenes;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.kernel.Range;
import guildwood.site.sun.Scene;
import guildwood.site.sun.Tree;
import guildwood.siteplan.SitePlans;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The drawings of the beds, always of the guild and the ground as they are now: kept spots stay, plants that came since
 * get theirs. What was worked out is kept for the next time; one bed is worked out at a time.
 */
public final class Drawings {
  private static final int MOST_KEPT = 24;
  private static final int MOST_YEARS_KEPT = 240;

  private final SunScenes scenes;
  private final BedGrounds grounds;
  private final BedSpots spots;
  private final Map<Object, Arrangement> arrangements = latest(MOST_KEPT);
  private final Map<Object, Grown.Cover> covers = latest(MOST_YEARS_KEPT);
  private final Map<Object, YearLight> lights = latest(MOST_YEARS_KEPT);
  private final Map<Object, LightReckoning> reckonings = latest(4);

  public Drawings(SunScenes scenes, SitePlans plans, BedSpots spots) {
    this.scenes = scenes;
    this.spots = spots;
    grounds = new BedGrounds(plans);
  }

  public BedSpots spots() {
    return spots;
  }

  /** A bed's guild arranged in it; empty where there is no such bed or nothing of the guild can be drawn. */
  public Optional<DrawnBed> of(long bedId, Guild guild, GuildProblem problem, SpeciesLibrary library) {
    Optional<BedScene> scene = scenes.find(bedId);
    List<PlantKind> kinds = PlantKinds.of(guild, problem, library);
    return kinds.isEmpty() ? Optional.empty() : scene.map(found -> of(found, kinds, guild, problem, library));
  }

  private DrawnBed of(BedScene scene, List<PlantKind> kinds, Guild guild, GuildProblem problem, SpeciesLibrary library) {
    DrawingSettings settings = spots.settings(scene.bed().id());
    Map<String, Spot> kept = new TreeMap<>();
    Set<String> there = new HashSet<>();
    recorded(scene, kinds, library, kept, there);
    spots.ofBed(scene.bed().id()).stream().filter(s -> isOf(kinds, s)).forEach(s -> kept.put(s.id(), s));
    BedGround ground = grounds.of(scene, there);
    List<Spot> stay = List.copyOf(kept.values());
    Arrangement arrangement = remembered(arrangements, List.of(ground, kinds, stay, settings.rules(), settings.seed()),
        () -> new Arranger(ground, settings.rules()).arrange(kinds, stay, settings.seed()));
    List<String> now = arrangement.spots().stream().map(Spot::id).filter(id -> !kept.containsKey(id)).toList();
    List<String> left = guild.counts().keySet().stream().filter(id -> kinds.stream().noneMatch(k -> k.speciesId().equals(id)))
        .map(id -> library.find(id).map(Species::name).orElse(id)).toList();
    Optional<Scene> sun = scene.scene().map(s -> new Scene(s.place(), s.year(), s.season(), s.inLeaf(), s.readingHeightM(), s.horizon(),
        s.obstacles().stream().filter(o -> !there.contains(o.label())).toList()));
    Optional<Range> stated = Optional.ofNullable(scene.bed().conditionsIn(scene.site()).get(Axis.LIGHT)).map(c -> c.range());
    return new DrawnBed(scene, guild, problem, library, arrangement, settings, now, left, sun, stated);
  }

  private static boolean isOf(List<PlantKind> kinds, Spot spot) {
    return kinds.stream().anyMatch(k -> k.speciesId().equals(spot.speciesId()) && spot.number() <= k.plants());
  }

  /** A tree recorded in the bed under the name of a standing plant is that plant: it stands there, and is not reckoned twice. */
  private void recorded(BedScene scene, List<PlantKind> kinds, SpeciesLibrary library, Map<String, Spot> kept, Set<String> there) {
    BedGround whole = grounds.of(scene, Set.of());
    for (PlantKind kind : kinds) {
      List<String> names = library.find(kind.speciesId()).stream().flatMap(s -> Stream.concat(Stream.of(s.scientificName()), s.commonNames().stream())).toList();
      int number = 1;
      for (Tree tree : whole.treesInside()) {
        if (number <= kind.standing() && names.stream().anyMatch(tree.label()::equalsIgnoreCase) && there.add(tree.label())) {
          Spot spot = new Spot(kind.speciesId(), number++, tree.foot(), true);
          kept.put(spot.id(), spot);
        }
      }
    }
  }

  /** Another arrangement of what is not locked; the drawing keeps it. False where the bed is gone. */
  public boolean arrangeAnew(DrawnBed drawn, boolean alsoLocked) {
    DrawingSettings next = drawn.settings().withSeed(drawn.settings().seed() + 1);
    List<Spot> stay = drawn.arrangement().spots().stream()
        .filter(s -> s.locked() && (!alsoLocked || drawn.arrangement().isStanding(s))).toList();
    Arrangement arrangement = new Arranger(drawn.arrangement().ground(), next.rules()).arrange(drawn.arrangement().kinds(), stay, next.seed());
    return spots.keep(drawn.scene().bed().id(), arrangement.spots(), next);
  }

  /** Keeps all spots, some of them changed. False where the bed is gone. */
  public boolean keep(DrawnBed drawn, List<Spot> changed) {
    return spots.keep(drawn.scene().bed().id(), drawn.arrangement().with(changed).spots(), drawn.settings());
  }

  /** How much of a bed lies under crowns in one year. */
  public Grown.Cover cover(DrawnBed drawn, int year) {
    return remembered(covers, List.of(drawn.arrangement(), drawn.settings().maturity(), year), () -> drawn.in(year).cover());
  }

  /** The light in a bed in one year; empty where the latitude is not known. */
  public Optional<YearLight> light(DrawnBed drawn, int year) {
    return drawn.sun().map(sun -> {
      LightReckoning reckoning = remembered(reckonings, List.of(sun, drawn.statedHours()), () -> new LightReckoning(sun, drawn.statedHours()));
      return remembered(lights, List.of(drawn.arrangement(), drawn.settings().maturity(), year, sun, drawn.statedHours()),
          () -> reckoning.of(drawn.in(year)));
    });
  }

  private <V> V remembered(Map<Object, V> kept, Object key, Supplier<V> make) {
    synchronized (kept) {
      V found = kept.get(key);
      if (found == null) {
        found = make.get();
        kept.put(key, found);
      }
      return found;
    }
  }

  private static <V> Map<Object, V> latest(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<Object, V> eldest) {
        return size() > most;
      }
    };
  }
}
