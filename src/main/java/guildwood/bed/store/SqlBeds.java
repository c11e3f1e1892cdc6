package guildwood.bed.store;

import guildwood.bed.Bed;
import guildwood.bed.Bed.Standing;
import guildwood.bed.Beds;
import guildwood.site.Condition;
import guildwood.site.store.SqlConditions;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.species.Axis;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;

/** Beds in the database; what belongs to them goes with them by the schema's cascades. */
public final class SqlBeds implements Beds {
  private static final SqlConditions CONDITIONS = new SqlConditions("bed_condition", "bed_id");
  private static final String IN_ORDER = " order by lower(name), id";

  private final Database database;

  public SqlBeds(Database database) {
    this.database = database;
  }

  @Override
  public List<Bed> all() {
    return database.read(h -> {
      Map<Long, Map<Axis, Condition>> conditions = CONDITIONS.all(h);
      Map<Long, List<Standing>> standing = standing(h);
      return h.createQuery("select * from bed" + IN_ORDER).map((row, ctx) -> {
        long id = row.getLong("id");
        return bed(row, conditions.getOrDefault(id, Map.of()), standing.getOrDefault(id, List.of()));
      }).list();
    });
  }

  @Override
  public List<Bed> ofSite(long siteId) {
    return all().stream().filter(bed -> bed.siteId() == siteId).toList();
  }

  @Override
  public Optional<Bed> find(long id) {
    return database.read(h -> find(h, id));
  }

  @Override
  public OptionalLong add(Bed bed) {
    return database.change(h -> {
      Optional<Long> site = h.createQuery("select id from site where id = :id for update").bind("id", bed.siteId())
          .mapTo(Long.class).findOne();
      if (site.isEmpty()) {
        return OptionalLong.empty();
      }
      long id = bind(h.createUpdate("insert into bed (site_id, name, area_m2, length_m, width_m, turn_degrees, east_m, north_m, note)"
          + " values (:site, :name, :area, :length, :width, :turn, :east, :north, :note)"), bed).bind("site", bed.siteId())
          .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
      writeParts(h, id, bed);
      return OptionalLong.of(id);
    });
  }

  @Override
  public Optional<Bed> change(long id, UnaryOperator<Bed> change) {
    return database.change(h -> locked(h, id).map(before -> {
      Bed after = change.apply(before);
      bind(h.createUpdate("update bed set name = :name, area_m2 = :area, length_m = :length, width_m = :width, turn_degrees = :turn,"
          + " east_m = :east, north_m = :north, note = :note where id = :id"), after).bind("id", id).execute();
      boolean outlined = after.areaM2() == before.areaM2() && after.size().equals(before.size()) && after.middle().isPresent();
      if (!outlined) {
        h.createUpdate("delete from bed_outline where bed_id = :id").bind("id", id).execute();
      }
      writeParts(h, id, after);
      return find(h, id).orElseThrow();
    }));
  }

  @Override
  public boolean remove(long id) {
    return database.change(h -> {
      // What was measured from this bed still stands there, as long as the bed's own place tells where that is.
      h.createUpdate("update nearby set bed_id = null, east_m = east_m + (select b.east_m from bed b where b.id = :id),"
          + " north_m = north_m + (select b.north_m from bed b where b.id = :id)"
          + " where bed_id = :id and exists (select 1 from bed b where b.id = :id and b.east_m is not null)")
          .bind("id", id).execute();
      return h.createUpdate("delete from bed where id = :id").bind("id", id).execute() == 1;
    });
  }

  @Override
  public Belongings belongings(long bedId) {
    return database.read(h -> new Belongings(
        count(h, "select count(*) from wish where bed_id = :bed", bedId),
        count(h, "select count(*) from guild where bed_id = :bed", bedId),
        count(h, "select count(*) from share_link l join guild g on g.id = l.guild_id where g.bed_id = :bed", bedId),
        count(h, "select count(*) from bed_near where bed_id = :bed", bedId)));
  }

  private static int count(Handle handle, String query, long bedId) {
    return handle.createQuery(query).bind("bed", bedId).mapTo(Integer.class).one();
  }

  private static void writeParts(Handle handle, long id, Bed bed) {
    CONDITIONS.replace(handle, id, bed.conditions().values());
    handle.createUpdate("delete from bed_standing where bed_id = :id").bind("id", id).execute();
    for (Standing plants : bed.standing()) {
      handle.createUpdate("insert into bed_standing (bed_id, species_id, plants) values (:id, :species, :plants)")
          .bind("id", id).bind("species", plants.speciesId()).bind("plants", plants.count()).execute();
    }
  }

  /** Locks the row before its parts are read, so that two changes at once follow one another. */
  private static Optional<Bed> locked(Handle handle, long id) {
    return handle.createQuery("select id from bed where id = :id for update").bind("id", id)
        .mapTo(Long.class).findOne().flatMap(found -> find(handle, found));
  }

  private static Optional<Bed> find(Handle handle, long id) {
    Map<Axis, Condition> conditions = CONDITIONS.of(handle, id);
    List<Standing> standing = handle.createQuery("select * from bed_standing where bed_id = :id order by species_id")
        .bind("id", id).map((row, ctx) -> new Standing(row.getString("species_id"), row.getInt("plants"))).list();
    return handle.createQuery("select * from bed where id = :id").bind("id", id)
        .map((row, ctx) -> bed(row, conditions, standing)).findOne();
  }

  private static Map<Long, List<Standing>> standing(Handle handle) {
    Map<Long, List<Standing>> all = new HashMap<>();
    handle.createQuery("select * from bed_standing order by species_id")
        .map((row, ctx) -> Map.entry(row.getLong("bed_id"), new Standing(row.getString("species_id"), row.getInt("plants"))))
        .forEach(e -> all.computeIfAbsent(e.getKey(), k -> new ArrayList<>()).add(e.getValue()));
    return all;
  }

  private static <S extends SqlStatement<S>> S bind(S statement, Bed bed) {
    return statement.bind("name", bed.name()).bind("area", bed.areaM2()).bind("note", bed.note())
        .bind("length", bed.size().map(Rectangle::lengthM).orElse(null))
        .bind("width", bed.size().map(Rectangle::widthM).orElse(null))
        .bind("turn", bed.size().map(Rectangle::turnDegrees).orElse(null))
        .bind("east", bed.middle().map(GroundPoint::xM).orElse(null))
        .bind("north", bed.middle().map(GroundPoint::yM).orElse(null));
  }

  private static Bed bed(ResultSet row, Map<Axis, Condition> conditions, List<Standing> standing) throws SQLException {
    Optional<Rectangle> size = row.getObject("length_m") == null ? Optional.empty()
        : Optional.of(new Rectangle(row.getDouble("length_m"), row.getDouble("width_m"), row.getDouble("turn_degrees")));
    Optional<GroundPoint> middle = row.getObject("east_m") == null ? Optional.empty()
        : Optional.of(new GroundPoint(row.getDouble("east_m"), row.getDouble("north_m")));
    return new Bed(row.getLong("id"), row.getLong("site_id"), row.getString("name"), row.getDouble("area_m2"), size, middle,
        conditions, standing, row.getString("note"));
  }
}
