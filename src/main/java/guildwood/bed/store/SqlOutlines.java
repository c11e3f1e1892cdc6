package guildwood.bed.store;

import guildwood.bed.Bed;
import guildwood.bed.BedOutline;
import guildwood.bed.Outlines;
import guildwood.site.store.PointText;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Outlines of beds in the database; they go with their bed by the schema's cascade. */
public final class SqlOutlines implements Outlines {
  private static final String WITH_MIDDLE =
      "select o.*, b.east_m, b.north_m from bed_outline o join bed b on b.id = o.bed_id where b.east_m is not null and ";

  private final Database database;

  public SqlOutlines(Database database) {
    this.database = database;
  }

  @Override
  public Optional<Footprint> ofBed(long bedId) {
    return database.read(h -> h.createQuery(WITH_MIDDLE + "b.id = :bed").bind("bed", bedId).map((row, ctx) -> onSite(row)).findOne());
  }

  @Override
  public Map<Long, Footprint> ofSite(long siteId) {
    return database.read(h -> {
      Map<Long, Footprint> all = new HashMap<>();
      h.createQuery(WITH_MIDDLE + "b.site_id = :site").bind("site", siteId)
          .map((row, ctx) -> Map.entry(row.getLong("bed_id"), onSite(row))).forEach(e -> all.put(e.getKey(), e.getValue()));
      return all;
    });
  }

  private static Footprint onSite(ResultSet row) throws SQLException {
    return PointText.outline(row.getString("corners")).moved(new GroundPoint(
        row.getDouble("east_m") - row.getDouble("middle_east_m"), row.getDouble("north_m") - row.getDouble("middle_north_m")));
  }

  @Override
  public boolean keep(long bedId, BedOutline outline) {
    return database.change(h -> {
      if (!tell(h, bedId, outline.areaM2(), Optional.of(outline.size()), Optional.of(outline.middle()))) {
        return false;
      }
      h.createUpdate("merge into bed_outline (bed_id, middle_east_m, middle_north_m, corners) key (bed_id) values (:bed, :east, :north, :corners)")
          .bind("bed", bedId).bind("east", outline.middle().xM()).bind("north", outline.middle().yM())
          .bind("corners", PointText.of(outline.corners())).execute();
      return true;
    });
  }

  private static boolean tell(Handle handle, long bedId, double areaM2, Optional<Rectangle> size, Optional<GroundPoint> middle) {
    if (handle.createQuery("select id from bed where id = :bed for update").bind("bed", bedId).mapTo(Long.class).findOne().isEmpty()) {
      return false;
    }
    middle.ifPresent(at -> holdNearbyInPlace(handle, bedId, at));
    handle.createUpdate("update bed set area_m2 = :area, length_m = :length, width_m = :width, turn_degrees = :turn,"
            + " east_m = :east, north_m = :north where id = :bed").bind("bed", bedId).bind("area", areaM2)
        .bind("length", size.map(Rectangle::lengthM).orElse(null)).bind("width", size.map(Rectangle::widthM).orElse(null))
        .bind("turn", size.map(Rectangle::turnDegrees).orElse(null))
        .bind("east", middle.map(GroundPoint::xM).orElse(null)).bind("north", middle.map(GroundPoint::yM).orElse(null)).execute();
    return true;
  }

  /** What was measured from the bed's middle stands where it stood, as far as it was known where that was. */
  private static void holdNearbyInPlace(Handle handle, long bedId, GroundPoint middle) {
    handle.createUpdate("update nearby set east_m = east_m + (select b.east_m from bed b where b.id = :bed) - :east,"
            + " north_m = north_m + (select b.north_m from bed b where b.id = :bed) - :north"
            + " where bed_id = :bed and exists (select 1 from bed b where b.id = :bed and b.east_m is not null)")
        .bind("bed", bedId).bind("east", middle.xM()).bind("north", middle.yM()).execute();
  }

  @Override
  public boolean remove(long bedId) {
    return database.change(h -> h.createUpdate("delete from bed_outline where bed_id = :bed").bind("bed", bedId).execute() == 1);
  }

  @Override
  public boolean restore(Bed before) {
    return database.change(h -> {
      h.createUpdate("delete from bed_outline where bed_id = :bed").bind("bed", before.id()).execute();
      return tell(h, before.id(), before.areaM2(), before.size(), before.middle());
    });
  }
}
