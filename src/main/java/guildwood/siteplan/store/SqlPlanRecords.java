package guildwood.siteplan.store;

import guildwood.bed.Outlines;
import guildwood.site.store.PointText;
import guildwood.site.sun.Footprint;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanPath.EndHeights;
import guildwood.siteplan.PlanRecords;
import guildwood.siteplan.Water;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.Update;

/** Paths and water in the database; they go with their site by the schema's cascades. */
public final class SqlPlanRecords implements PlanRecords {
  private final Database database;
  private final Outlines outlines;

  public SqlPlanRecords(Database database, Outlines outlines) {
    this.database = database;
    this.outlines = outlines;
  }

  @Override
  public Optional<Footprint> outline(long bedId) {
    return outlines.ofBed(bedId);
  }

  @Override
  public List<PlanPath> paths(long siteId) {
    return database.read(h -> h.createQuery("select * from plan_path where site_id = :site order by id").bind("site", siteId)
        .map((row, ctx) -> path(row)).list());
  }

  @Override
  public Optional<PlanPath> findPath(long id) {
    return database.read(h -> h.createQuery("select * from plan_path where id = :id").bind("id", id).map((row, ctx) -> path(row)).findOne());
  }

  @Override
  public OptionalLong add(PlanPath path) {
    return database.change(h -> add(h, path.siteId(), bind(h.createUpdate(
        "insert into plan_path (site_id, name, line, width_m, depth_m, start_height_m, end_height_m)"
            + " values (:site, :name, :line, :width, :depth, :start, :end)"), path)));
  }

  @Override
  public boolean change(PlanPath path) {
    return database.change(h -> bind(h.createUpdate("update plan_path set name = :name, line = :line, width_m = :width, depth_m = :depth,"
        + " start_height_m = :start, end_height_m = :end where id = :id"), path).bind("id", path.id()).execute() == 1);
  }

  @Override
  public boolean removePath(long id) {
    return remove("delete from plan_path where id = :id", id);
  }

  @Override
  public List<Water> waters(long siteId) {
    return database.read(h -> h.createQuery("select * from plan_water where site_id = :site order by id").bind("site", siteId)
        .map((row, ctx) -> water(row)).list());
  }

  @Override
  public Optional<Water> findWater(long id) {
    return database.read(h -> h.createQuery("select * from plan_water where id = :id").bind("id", id).map((row, ctx) -> water(row)).findOne());
  }

  @Override
  public OptionalLong add(Water water) {
    return database.change(h -> add(h, water.siteId(),
        bind(h.createUpdate("insert into plan_water (site_id, name, corners) values (:site, :name, :corners)"), water)));
  }

  @Override
  public boolean change(Water water) {
    return database.change(h -> bind(h.createUpdate("update plan_water set name = :name, corners = :corners where id = :id"), water)
        .bind("id", water.id()).execute() == 1);
  }

  @Override
  public boolean removeWater(long id) {
    return remove("delete from plan_water where id = :id", id);
  }

  private boolean remove(String deletion, long id) {
    return database.change(h -> h.createUpdate(deletion).bind("id", id).execute() == 1);
  }

  private static OptionalLong add(Handle handle, long siteId, Update insertion) {
    boolean stands = handle.createQuery("select id from site where id = :site for update").bind("site", siteId)
        .mapTo(Long.class).findOne().isPresent();
    return stands ? OptionalLong.of(insertion.bind("site", siteId).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one())
        : OptionalLong.empty();
  }

  private static <S extends SqlStatement<S>> S bind(S statement, PlanPath path) {
    return statement.bind("name", path.name()).bind("line", PointText.of(path.line()))
        .bind("width", path.widthM()).bind("depth", path.depthM())
        .bind("start", path.heights().map(EndHeights::startM).orElse(null)).bind("end", path.heights().map(EndHeights::endM).orElse(null));
  }

  private static <S extends SqlStatement<S>> S bind(S statement, Water water) {
    return statement.bind("name", water.name()).bind("corners", PointText.of(water.outline()));
  }

  private static PlanPath path(ResultSet row) throws SQLException {
    Optional<EndHeights> heights = row.getObject("start_height_m") == null ? Optional.empty()
        : Optional.of(new EndHeights(row.getDouble("start_height_m"), row.getDouble("end_height_m")));
    return new PlanPath(row.getLong("id"), row.getLong("site_id"), row.getString("name"), PointText.points(row.getString("line")),
        row.getDouble("width_m"), row.getDouble("depth_m"), heights);
  }

  private static Water water(ResultSet row) throws SQLException {
    return new Water(row.getLong("id"), row.getLong("site_id"), row.getString("name"), PointText.outline(row.getString("corners")));
  }
}
