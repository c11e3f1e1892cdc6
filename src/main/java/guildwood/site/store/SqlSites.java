package guildwood.site.store;

import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.species.Axis;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;

/** Sites in the database; beds and what belongs to them go with their site by the schema's cascades. */
public final class SqlSites implements Sites {
  private static final SqlConditions CONDITIONS = new SqlConditions("site_condition", "site_id");

  private final Database database;

  public SqlSites(Database database) {
    this.database = database;
  }

  @Override
  public List<Site> all() {
    return database.read(h -> {
      Map<Long, Map<Axis, Condition>> conditions = CONDITIONS.all(h);
      return h.createQuery("select * from site order by lower(name), id")
          .map((row, ctx) -> site(row, conditions.getOrDefault(row.getLong("id"), Map.of()))).list();
    });
  }

  @Override
  public Optional<Site> find(long id) {
    return database.read(h -> find(h, id));
  }

  @Override
  public long add(Site site) {
    return database.change(h -> {
      long id = bind(h.createUpdate("insert into site (name, place, latitude_degrees, longitude_degrees, last_spring_frost, first_autumn_frost, note)"
          + " values (:name, :place, :latitude, :longitude, :spring, :autumn, :note)"), site)
          .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
      CONDITIONS.replace(h, id, site.conditions().values());
      return id;
    });
  }

  @Override
  public Optional<Site> change(long id, UnaryOperator<Site> change) {
    return database.change(h -> locked(h, id).map(before -> {
      Site after = change.apply(before);
      bind(h.createUpdate("update site set name = :name, place = :place, latitude_degrees = :latitude, longitude_degrees = :longitude,"
          + " last_spring_frost = :spring, first_autumn_frost = :autumn, note = :note where id = :id"), after)
          .bind("id", id).execute();
      CONDITIONS.replace(h, id, after.conditions().values());
      return find(h, id).orElseThrow();
    }));
  }

  @Override
  public boolean remove(long id) {
    return database.change(h -> h.createUpdate("delete from site where id = :id").bind("id", id).execute() == 1);
  }

  /** Locks the row before its parts are read, so that two changes at once follow one another. */
  private static Optional<Site> locked(Handle handle, long id) {
    return handle.createQuery("select id from site where id = :id for update").bind("id", id)
        .mapTo(Long.class).findOne().flatMap(found -> find(handle, found));
  }

  private static Optional<Site> find(Handle handle, long id) {
    Map<Axis, Condition> conditions = CONDITIONS.of(handle, id);
    return handle.createQuery("select * from site where id = :id").bind("id", id)
        .map((row, ctx) -> site(row, conditions)).findOne();
  }

  private static Site site(ResultSet row, Map<Axis, Condition> conditions) throws SQLException {
    return new Site(row.getLong("id"), row.getString("name"), row.getString("place"),
        degrees(row, "latitude_degrees"), degrees(row, "longitude_degrees"),
        date(row.getString("last_spring_frost")), date(row.getString("first_autumn_frost")), conditions, row.getString("note"));
  }

  private static OptionalDouble degrees(ResultSet row, String column) throws SQLException {
    double degrees = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(degrees);
  }

  private static <S extends SqlStatement<S>> S bind(S statement, Site site) {
    return statement.bind("name", site.name()).bind("place", site.place())
        .bind("latitude", orNull(site.latitudeDegrees())).bind("longitude", orNull(site.longitudeDegrees()))
        .bind("spring", site.lastSpringFrost().map(SqlSites::text).orElse(null))
        .bind("autumn", site.firstAutumnFrost().map(SqlSites::text).orElse(null))
        .bind("note", site.note());
  }

  private static Double orNull(OptionalDouble degrees) {
    return degrees.isPresent() ? degrees.getAsDouble() : null;
  }

  /** Kept as month-day, {@code 05-15}. */
  private static String text(MonthDay date) {
    return date.toString().substring(2);
  }

  private static Optional<MonthDay> date(String text) {
    return Optional.ofNullable(text).map(t -> MonthDay.parse("--" + t));
  }
}
