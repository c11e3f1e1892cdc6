package guildwood.drawing.store;

import guildwood.drawing.ArrangingRules;
import guildwood.drawing.BedSpots;
import guildwood.drawing.DrawingSettings;
import guildwood.drawing.GrowthRate;
import guildwood.drawing.Spot;
import guildwood.drawing.YearsToMaturity;
import guildwood.site.sun.GroundPoint;
import guildwood.species.Layer;
import guildwood.store.Database;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Spots and settings of the drawings in the database; they go with their bed by the schema's cascades. */
public final class SqlBedSpots implements BedSpots {
  private final Database database;

  public SqlBedSpots(Database database) {
    this.database = database;
  }

  @Override
  public List<Spot> ofBed(long bedId) {
    return database.read(h -> h.createQuery("select * from bed_spot where bed_id = :bed order by species_id, number").bind("bed", bedId)
        .map((row, ctx) -> new Spot(row.getString("species_id"), row.getInt("number"),
            new GroundPoint(row.getDouble("east_m"), row.getDouble("north_m")), row.getBoolean("locked"))).list());
  }

  @Override
  public DrawingSettings settings(long bedId) {
    return database.read(h -> {
      YearsToMaturity maturity = maturity(h, bedId);
      return h.createQuery("select * from bed_drawing where bed_id = :bed").bind("bed", bedId)
          .map((row, ctx) -> new DrawingSettings(
              new ArrangingRules(row.getDouble("reach_m"), row.getDouble("overhang_m"), row.getBoolean("walkable_edge")), maturity, row.getLong("seed")))
          .findOne().orElse(DrawingSettings.USUAL);
    });
  }

  private static YearsToMaturity maturity(Handle handle, long bedId) {
    Map<Layer, List<Integer>> years = new EnumMap<>(Layer.class);
    YearsToMaturity.USUAL.byLayer().forEach((layer, usual) -> years.put(layer, new ArrayList<>(usual)));
    handle.createQuery("select * from bed_growth where bed_id = :bed").bind("bed", bedId).map((row, ctx) ->
        years.get(Layer.ofKey(row.getString("layer"))).set(GrowthRate.ofKey(row.getString("rate")).ordinal(), row.getInt("years"))).list();
    return new YearsToMaturity(years);
  }

  @Override
  public boolean keep(long bedId, List<Spot> spots, DrawingSettings settings) {
    return database.change(h -> {
      if (h.createQuery("select id from bed where id = :id for update").bind("id", bedId).mapTo(Long.class).findOne().isEmpty()) {
        return false;
      }
      h.createUpdate("delete from bed_spot where bed_id = :bed").bind("bed", bedId).execute();
      insert(h, bedId, spots);
      h.createUpdate("merge into bed_drawing (bed_id, reach_m, overhang_m, walkable_edge, seed) key (bed_id)"
              + " values (:bed, :reach, :overhang, :walkable, :seed)")
          .bind("bed", bedId).bind("reach", settings.rules().reachM()).bind("overhang", settings.rules().overhangM())
          .bind("walkable", settings.rules().walkableEdge()).bind("seed", settings.seed()).execute();
      h.createUpdate("delete from bed_growth where bed_id = :bed").bind("bed", bedId).execute();
      insertOwn(h, bedId, settings.maturity());
      return true;
    });
  }

  private static void insert(Handle handle, long bedId, List<Spot> spots) {
    if (spots.isEmpty()) {
      return;
    }
    PreparedBatch batch = handle.prepareBatch("insert into bed_spot (bed_id, species_id, number, east_m, north_m, locked)"
        + " values (:bed, :species, :number, :east, :north, :locked)");
    spots.forEach(s -> batch.bind("bed", bedId).bind("species", s.speciesId()).bind("number", s.number())
        .bind("east", s.at().xM()).bind("north", s.at().yM()).bind("locked", s.locked()).add());
    batch.execute();
  }

  /** Only what differs from the usual numbers: those who set nothing get better ones when there are some. */
  private static void insertOwn(Handle handle, long bedId, YearsToMaturity maturity) {
    for (Layer layer : Layer.values()) {
      for (GrowthRate rate : GrowthRate.values()) {
        if (maturity.of(layer, rate) != YearsToMaturity.USUAL.of(layer, rate)) {
          handle.createUpdate("insert into bed_growth (bed_id, layer, rate, years) values (:bed, :layer, :rate, :years)")
              .bind("bed", bedId).bind("layer", layer.key()).bind("rate", rate.key()).bind("years", maturity.of(layer, rate)).execute();
        }
      }
    }
  }
}
