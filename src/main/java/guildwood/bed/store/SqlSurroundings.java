package guildwood.bed.store;

import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Skyline;
import guildwood.bed.sun.Surroundings;
import guildwood.store.Database;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** What stands around the beds, in the database; it goes with its site or bed by the schema's cascades. */
public final class SqlSurroundings implements Surroundings {
  private final Database database;

  public SqlSurroundings(Database database) {
    this.database = database;
  }

  @Override
  public List<Nearby> ofSite(long siteId) {
    return database.read(h -> h.createQuery("select * from nearby where site_id = :site order by id").bind("site", siteId)
        .map((row, ctx) -> NearbyRows.read(row)).list());
  }

  @Override
  public Optional<Nearby> find(long id) {
    return database.read(h -> find(h, id));
  }

  @Override
  public OptionalLong add(Nearby nearby) {
    return database.change(h -> {
      boolean stands = exists(h, "select id from site where id = :id for update", nearby.siteId())
          && (nearby.fromBed().isEmpty() || isBedOf(h, nearby.siteId(), nearby.fromBed().getAsLong()));
      if (!stands) {
        return OptionalLong.empty();
      }
      return OptionalLong.of(NearbyRows.bind(h.createUpdate("insert into nearby (site_id, bed_id, name, east_m, north_m, height_m,"
              + " paced_distance_m, paced_angle_degrees, paced_eye_m, crown_base_m, crown_radius_m, light_in_leaf, light_bare, evergreen,"
              + " length_m, width_m, turn_degrees, corners)"
              + " values (:site, :bed, :name, :east, :north, :height, :distance, :angle, :eye, :base, :radius, :leaf, :bare, :evergreen,"
              + " :length, :width, :turn, :corners)"), nearby)
          .bind("site", nearby.siteId()).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one());
    });
  }

  @Override
  public Optional<Nearby> change(long id, UnaryOperator<Nearby> change) {
    return database.change(h -> locked(h, id).map(before -> {
      NearbyRows.bind(h.createUpdate("update nearby set bed_id = :bed, name = :name, east_m = :east, north_m = :north, height_m = :height,"
              + " paced_distance_m = :distance, paced_angle_degrees = :angle, paced_eye_m = :eye, crown_base_m = :base,"
              + " crown_radius_m = :radius, light_in_leaf = :leaf, light_bare = :bare, evergreen = :evergreen,"
              + " length_m = :length, width_m = :width, turn_degrees = :turn, corners = :corners where id = :id"), change.apply(before))
          .bind("id", id).execute();
      return find(h, id).orElseThrow();
    }));
  }

  @Override
  public boolean remove(long id) {
    return database.change(h -> h.createUpdate("delete from nearby where id = :id").bind("id", id).execute() == 1);
  }

  @Override
  public Optional<Skyline> skylineOfSite(long siteId) {
    return database.read(h -> skyline(h, "select degrees from site_skyline where site_id = :id", siteId));
  }

  @Override
  public Optional<Skyline> skylineOfBed(long bedId) {
    return database.read(h -> skyline(h, "select degrees from bed_skyline where bed_id = :id", bedId));
  }

  @Override
  public boolean keepForSite(long siteId, long bedId, Skyline skyline) {
    return database.change(h -> {
      if (!isBedOf(h, siteId, bedId)) {
        return false;
      }
      h.createUpdate("delete from bed_skyline where bed_id = :id").bind("id", bedId).execute();
      h.createUpdate("merge into site_skyline (site_id, degrees) key (site_id) values (:id, :degrees)")
          .bind("id", siteId).bind("degrees", text(skyline)).execute();
      return true;
    });
  }

  @Override
  public boolean keepForBed(long bedId, Skyline skyline) {
    return database.change(h -> {
      if (!exists(h, "select id from bed where id = :id for update", bedId)) {
        return false;
      }
      h.createUpdate("merge into bed_skyline (bed_id, degrees) key (bed_id) values (:id, :degrees)")
          .bind("id", bedId).bind("degrees", text(skyline)).execute();
      return true;
    });
  }

  private static boolean isBedOf(Handle handle, long siteId, long bedId) {
    return handle.createQuery("select id from bed where id = :id and site_id = :site for update").bind("id", bedId).bind("site", siteId)
        .mapTo(Long.class).findOne().isPresent();
  }

  private static boolean exists(Handle handle, String query, long id) {
    return handle.createQuery(query).bind("id", id).mapTo(Long.class).findOne().isPresent();
  }

  /** Locks the row before it is read, so that two changes at once follow one another. */
  private static Optional<Nearby> locked(Handle handle, long id) {
    return exists(handle, "select id from nearby where id = :id for update", id) ? find(handle, id) : Optional.empty();
  }

  private static Optional<Nearby> find(Handle handle, long id) {
    return handle.createQuery("select * from nearby where id = :id").bind("id", id).map((row, ctx) -> NearbyRows.read(row)).findOne();
  }

  private static Optional<Skyline> skyline(Handle handle, String query, long id) {
    return handle.createQuery(query).bind("id", id).mapTo(String.class).findOne()
        .map(text -> new Skyline(Arrays.stream(text.split(" ")).map(Double::valueOf).toList()));
  }

  private static String text(Skyline skyline) {
    return skyline.degrees().stream().map(String::valueOf).collect(Collectors.joining(" "));
  }
}
