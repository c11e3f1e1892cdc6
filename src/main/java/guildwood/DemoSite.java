package guildwood;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Surroundings;
import guildwood.bed.sun.Walls;
import guildwood.guild.Composer;
import guildwood.guild.Effort;
import guildwood.guild.Guilds;
import guildwood.guild.Progress;
import guildwood.guild.Rules;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.guild.web.Desk;
import guildwood.site.Basis;
import guildwood.site.ClimateReader;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.species.Axis;
import guildwood.species.Holding;
import guildwood.species.SpeciesRecords;
import guildwood.species.exchange.CsvTable.Row;
import java.time.Clock;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The invented site of the demonstration, from {@code seed-data/demo}; its first guild is composed at the start. */
final class DemoSite {
  /** The bed whose guild is there from the start. */
  private static final String PLANNED_BED = "Orchard row";

  private final Sites sites;
  private final Beds beds;
  private final Surroundings surroundings;
  private final Guilds guilds;
  private final Map<String, Long> bedIds = new HashMap<>();

  private DemoSite(Sites sites, Beds beds, Surroundings surroundings, Guilds guilds) {
    this.sites = sites;
    this.beds = beds;
    this.surroundings = surroundings;
    this.guilds = guilds;
  }

  static void fill(Sites sites, Beds beds, Surroundings surroundings, SpeciesRecords species, Guilds guilds, Desk desk, Clock clock) {
    DemoSite demo = new DemoSite(sites, beds, surroundings, guilds);
    addHoldings(species);
    demo.addSites();
    demo.addWishes();
    demo.planOneBed(desk, clock);
  }

  private static void addHoldings(SpeciesRecords species) {
    for (Row row : DemoRows.of("holdings", "species", "on_hand", "to_propagate", "price_cents")) {
      String price = row.cell("price_cents");
      species.keep(new Holding(row.cell("species"), Integer.parseInt(row.cell("on_hand")), Integer.parseInt(row.cell("to_propagate")),
          price.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(price))));
    }
  }

  private void addSites() {
    List<Row> conditions = DemoRows.of("site-conditions", "site", "axis", "value", "basis");
    for (Row row : DemoRows.of("sites", "name", "place", "latitude_degrees", "longitude_degrees", "last_spring_frost", "first_autumn_frost", "note")) {
      Site site = new Site(0, row.cell("name"), row.cell("place"),
          OptionalDouble.of(DemoRows.number(row, "latitude_degrees")), OptionalDouble.of(DemoRows.number(row, "longitude_degrees")),
          Optional.of(MonthDay.parse("--" + row.cell("last_spring_frost"))),
          Optional.of(MonthDay.parse("--" + row.cell("first_autumn_frost"))),
          conditions(conditions, "site", row.cell("name")), row.cell("note"));
      addBeds(site.name(), sites.add(site));
    }
  }

  private void addBeds(String siteName, long siteId) {
    List<Row> conditions = DemoRows.of("bed-conditions", "bed", "axis", "value", "basis");
    List<Row> standing = DemoRows.of("standing", "bed", "species", "plants");
    for (Row row : DemoRows.of("beds", "site", "name", "area_m2", "length_m", "width_m", "turn_degrees",
        "east_m", "north_m", "note")) {
      if (!row.cell("site").equals(siteName)) {
        continue;
      }
      String name = row.cell("name");
      List<Bed.Standing> there = standing.stream().filter(s -> s.cell("bed").equals(name))
          .map(s -> new Bed.Standing(s.cell("species"), Integer.parseInt(s.cell("plants")))).toList();
      Optional<Rectangle> size = row.cell("length_m").isEmpty() ? Optional.empty()
          : Optional.of(new Rectangle(DemoRows.number(row, "length_m"), DemoRows.number(row, "width_m"), DemoRows.number(row, "turn_degrees")));
      long id = beds.add(new Bed(0, siteId, name, DemoRows.number(row, "area_m2"), size,
          Optional.of(new GroundPoint(DemoRows.number(row, "east_m"), DemoRows.number(row, "north_m"))),
          conditions(conditions, "bed", name), there, row.cell("note"))).orElseThrow();
      bedIds.put(name, id);
      addNearby(siteId, name, id);
    }
  }

  private void addNearby(long siteId, String bed, long bedId) {
    for (Row row : DemoRows.of("trees", "bed", "name", "east_m", "north_m", "height_m", "crown_base_m", "crown_radius_m",
        "light_in_leaf", "light_bare", "evergreen")) {
      if (row.cell("bed").equals(bed)) {
        add(row, siteId, bedId, new GroundPoint(DemoRows.number(row, "east_m"), DemoRows.number(row, "north_m")), new Crown(DemoRows.number(row, "crown_base_m"), DemoRows.number(row, "crown_radius_m"),
            DemoRows.number(row, "light_in_leaf"), DemoRows.number(row, "light_bare"), row.cell("evergreen").equals("yes")));
      }
    }
    for (Row row : DemoRows.of("buildings", "bed", "name", "height_m", "corners_m")) {
      if (row.cell("bed").equals(bed)) {
        Walls walls = new Walls(new Walls.Corners(Footprint.through("corners_m", DemoRows.points(row, "corners_m")).orThrow()));
        add(row, siteId, bedId, new GroundPoint(0, 0), walls);
      }
    }
  }

  private void add(Row row, long siteId, long bedId, GroundPoint at, Nearby.Body body) {
    surroundings.add(new Nearby(0, siteId, OptionalLong.of(bedId), row.cell("name"), at,
        Nearby.Height.told(DemoRows.number(row, "height_m")), body)).orElseThrow();
  }

  private static Map<Axis, Condition> conditions(List<Row> rows, String column, String name) {
    Map<Axis, Condition> conditions = new EnumMap<>(Axis.class);
    for (Row row : rows) {
      if (row.cell(column).equals(name)) {
        Axis axis = Axis.ofKey(row.cell("axis"));
        Optional<Condition> read = axis == Axis.WINTER_COLD
            ? ClimateReader.winter(row.cell("value"), Basis.PUBLISHED, column).orThrow()
            : ConditionReader.read(axis, new ConditionReader.Entry(row.cell("value"), "", row.cell("basis")), column).orThrow();
        conditions.put(axis, read.orElseThrow());
      }
    }
    return conditions;
  }

  private void addWishes() {
    Map<String, List<Wish>> wishes = new HashMap<>();
    for (Row row : DemoRows.of("wishes", "bed", "kind", "item", "must", "weight")) {
      Wish wish = new Wish(WishKind.ofKey(row.cell("kind")), row.cell("item"), row.cell("must").equals("must"),
          Integer.parseInt(row.cell("weight")));
      wishes.computeIfAbsent(row.cell("bed"), bed -> new ArrayList<>()).add(wish);
    }
    wishes.forEach((bed, list) -> {
      long id = bedIds.get(bed);
      guilds.keep(id, list, Rules.forArea(beds.find(id).orElseThrow().areaM2()));
    });
  }

  private void planOneBed(Desk desk, Clock clock) {
    long id = bedIds.get(PLANNED_BED);
    var found = new Composer(Effort.QUICK).compose(desk.problem(desk.plan(id)), 1, 1, Progress.UNWATCHED);
    guilds.save(id, "Round the old apple", found.best().guild(), clock.instant());
  }
}
