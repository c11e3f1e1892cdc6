package guildwood.bed.store;

import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Walls;
import guildwood.site.store.PointText;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.PacedHeight;
import guildwood.site.sun.Rectangle;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.statement.SqlStatement;

/** Trees and buildings as rows of one table: the columns of the other kind stay empty. */
final class NearbyRows {
  private NearbyRows() {}

  static Nearby read(ResultSet row) throws SQLException {
    long bed = row.getLong("bed_id");
    OptionalLong fromBed = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(bed);
    Optional<PacedHeight> paced = row.getObject("paced_distance_m") == null ? Optional.empty()
        : Optional.of(new PacedHeight(row.getDouble("paced_distance_m"), row.getDouble("paced_angle_degrees"), row.getDouble("paced_eye_m")));
    return new Nearby(row.getLong("id"), row.getLong("site_id"), fromBed, row.getString("name"),
        new GroundPoint(row.getDouble("east_m"), row.getDouble("north_m")), new Nearby.Height(row.getDouble("height_m"), paced), body(row));
  }

  private static Nearby.Body body(ResultSet row) throws SQLException {
    if (row.getObject("crown_base_m") != null) {
      return new Crown(row.getDouble("crown_base_m"), row.getDouble("crown_radius_m"),
          row.getDouble("light_in_leaf"), row.getDouble("light_bare"), row.getBoolean("evergreen"));
    }
    String corners = row.getString("corners");
    return new Walls(corners != null ? new Walls.Corners(PointText.outline(corners))
        : new Walls.Box(new Rectangle(row.getDouble("length_m"), row.getDouble("width_m"), row.getDouble("turn_degrees"))));
  }

  static <S extends SqlStatement<S>> S bind(S statement, Nearby nearby) {
    Optional<PacedHeight> paced = nearby.height().paced();
    Optional<Crown> crown = nearby.body() instanceof Crown c ? Optional.of(c) : Optional.empty();
    Optional<Walls.Plan> plan = nearby.body() instanceof Walls walls ? Optional.of(walls.plan()) : Optional.empty();
    Optional<Rectangle> box = plan.flatMap(p -> p instanceof Walls.Box b ? Optional.of(b.rectangle()) : Optional.empty());
    Optional<String> corners = plan.flatMap(p -> p instanceof Walls.Corners c ? Optional.of(PointText.of(c.outline())) : Optional.empty());
    return statement
        .bind("bed", nearby.fromBed().isPresent() ? (Long) nearby.fromBed().getAsLong() : null)
        .bind("name", nearby.name()).bind("east", nearby.at().xM()).bind("north", nearby.at().yM())
        .bind("height", nearby.height().metres())
        .bind("distance", paced.map(PacedHeight::distanceM).orElse(null))
        .bind("angle", paced.map(PacedHeight::angleDegrees).orElse(null))
        .bind("eye", paced.map(PacedHeight::eyeHeightM).orElse(null))
        .bind("base", crown.map(Crown::baseM).orElse(null)).bind("radius", crown.map(Crown::radiusM).orElse(null))
        .bind("leaf", crown.map(Crown::lightInLeaf).orElse(null)).bind("bare", crown.map(Crown::lightBare).orElse(null))
        .bind("evergreen", crown.map(Crown::evergreen).orElse(null))
        .bind("length", box.map(Rectangle::lengthM).orElse(null)).bind("width", box.map(Rectangle::widthM).orElse(null))
        .bind("turn", box.map(Rectangle::turnDegrees).orElse(null))
        .bind("corners", corners.orElse(null));
  }
}
