package guildwood.bed.store;

import guildwood.bed.Near;
import guildwood.bed.NearPlants;
import guildwood.store.Database;
import java.util.List;

/** What grows near the beds, in the database; it goes with its bed by the schema's cascade. */
public final class SqlNearPlants implements NearPlants {
  private final Database database;

  public SqlNearPlants(Database database) {
    this.database = database;
  }

  @Override
  public List<Near> ofBed(long bedId) {
    return database.read(h -> h.createQuery("select * from bed_near where bed_id = :bed order by distance_m, species_id")
        .bind("bed", bedId).map((row, ctx) -> new Near(row.getString("species_id"), row.getDouble("distance_m"))).list());
  }

  @Override
  public boolean keep(long bedId, Near near) {
    return database.change(h -> {
      if (h.createQuery("select id from bed where id = :id for update").bind("id", bedId).mapTo(Long.class).findOne().isEmpty()) {
        return false;
      }
      h.createUpdate("merge into bed_near (bed_id, species_id, distance_m) key (bed_id, species_id) values (:bed, :species, :distance)")
          .bind("bed", bedId).bind("species", near.speciesId()).bind("distance", near.distanceM()).execute();
      return true;
    });
  }

  @Override
  public boolean remove(long bedId, String speciesId) {
    return database.change(h -> h.createUpdate("delete from bed_near where bed_id = :bed and species_id = :species")
        .bind("bed", bedId).bind("species", speciesId).execute() == 1);
  }
}
