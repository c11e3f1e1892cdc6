package guildwood.siteplan.store;

import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.Paper;
import guildwood.siteplan.PicturePlace;
import guildwood.siteplan.PlanPicture;
import guildwood.siteplan.PlanSheets;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;

/**
 * Paper and pictures in the database: a picture is at most a few megabytes once it is written anew, and this way it is
 * saved and goes together with its site.
 */
public final class SqlPlanSheets implements PlanSheets {
  private final Database database;

  public SqlPlanSheets(Database database) {
    this.database = database;
  }

  @Override
  public Optional<Paper> paper(long siteId) {
    return database.read(h -> h.createQuery("select * from plan_paper where site_id = :site").bind("site", siteId)
        .map((row, ctx) -> new Paper(point(row), row.getDouble("width_m"), row.getDouble("depth_m"))).findOne());
  }

  @Override
  public boolean keep(long siteId, Paper paper) {
    return database.change(h -> stands(h, siteId) && h.createUpdate("merge into plan_paper (site_id, east_m, north_m, width_m, depth_m)"
            + " key (site_id) values (:site, :east, :north, :width, :depth)").bind("site", siteId)
        .bind("east", paper.middle().xM()).bind("north", paper.middle().yM())
        .bind("width", paper.widthM()).bind("depth", paper.depthM()).execute() == 1);
  }

  @Override
  public Optional<PicturePlace> picturePlace(long siteId) {
    return database.read(h -> h.createQuery("select width_px, height_px, east_m, north_m, metres_per_px, turn_degrees"
            + " from plan_picture where site_id = :site").bind("site", siteId)
        .map((row, ctx) -> new PicturePlace(row.getInt("width_px"), row.getInt("height_px"), point(row), row.getDouble("metres_per_px"),
            row.getDouble("turn_degrees"))).findOne());
  }

  @Override
  public Optional<PlanPicture> picture(long siteId) {
    return database.read(h -> h.createQuery("select kind, width_px, height_px, content from plan_picture where site_id = :site")
        .bind("site", siteId).map((row, ctx) -> new PlanPicture(PlanPicture.Kind.valueOf(row.getString("kind")), row.getInt("width_px"),
            row.getInt("height_px"), row.getBytes("content"))).findOne());
  }

  @Override
  public boolean keep(long siteId, PlanPicture picture, PicturePlace place) {
    return database.change(h -> stands(h, siteId) && bind(h.createUpdate("merge into plan_picture (site_id, kind, width_px, height_px,"
            + " east_m, north_m, metres_per_px, turn_degrees, content) key (site_id)"
            + " values (:site, :kind, :width, :height, :east, :north, :scale, :turn, :content)"), place).bind("site", siteId)
        .bind("kind", picture.kind().name()).bind("width", picture.widthPx()).bind("height", picture.heightPx())
        .bind("content", picture.content()).execute() == 1);
  }

  @Override
  public boolean place(long siteId, PicturePlace place) {
    return database.change(h -> bind(h.createUpdate("update plan_picture set east_m = :east, north_m = :north, metres_per_px = :scale,"
        + " turn_degrees = :turn where site_id = :site"), place).bind("site", siteId).execute() == 1);
  }

  @Override
  public boolean removePicture(long siteId) {
    return database.change(h -> h.createUpdate("delete from plan_picture where site_id = :site").bind("site", siteId).execute() == 1);
  }

  private static boolean stands(Handle handle, long siteId) {
    return handle.createQuery("select id from site where id = :site for update").bind("site", siteId).mapTo(Long.class).findOne().isPresent();
  }

  private static <S extends SqlStatement<S>> S bind(S statement, PicturePlace place) {
    return statement.bind("east", place.middle().xM()).bind("north", place.middle().yM())
        .bind("scale", place.metresPerPx()).bind("turn", place.turnDegrees());
  }

  private static GroundPoint point(ResultSet row) throws SQLException {
    return new GroundPoint(row.getDouble("east_m"), row.getDouble("north_m"));
  }
}
