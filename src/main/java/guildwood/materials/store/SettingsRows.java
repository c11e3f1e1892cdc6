package guildwood.materials.store;

import guildwood.materials.CardSheet;
import guildwood.materials.Covering;
import guildwood.materials.Material;
import guildwood.materials.MaterialSettings;
import guildwood.materials.TrunkGap;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.statement.SqlStatement;

/** Settings and coverings as rows. */
final class SettingsRows {
  static final String KEEP = "merge into material_settings (site_id, bed_material, bed_depth_m, bed_card, path_material, path_depth_m,"
      + " path_card, settling_percent, load_m3, barrow_litres, m3_an_hour, gap_m, trunk_m, sheet_length_m, sheet_width_m,"
      + " sheet_overlap_m, sheets_an_hour) key (site_id) values (:site, :bedMaterial, :bedDepth, :bedCard, :pathMaterial, :pathDepth,"
      + " :pathCard, :settling, :load, :barrow, :pace, :gap, :trunk, :length, :width, :overlap, :sheets)";

  private SettingsRows() {}

  static MaterialSettings read(ResultSet row) throws SQLException {
    return new MaterialSettings(
        new Covering(material(row.getString("bed_material")), row.getDouble("bed_depth_m"), row.getBoolean("bed_card"), true),
        new Covering(material(row.getString("path_material")), row.getDouble("path_depth_m"), row.getBoolean("path_card"), true),
        row.getDouble("settling_percent"), row.getDouble("load_m3"), row.getDouble("barrow_litres"), row.getDouble("m3_an_hour"),
        new TrunkGap(row.getDouble("gap_m"), row.getDouble("trunk_m")),
        new CardSheet(row.getDouble("sheet_length_m"), row.getDouble("sheet_width_m"), row.getDouble("sheet_overlap_m")),
        row.getDouble("sheets_an_hour"));
  }

  static <S extends SqlStatement<S>> S bind(S statement, MaterialSettings settings) {
    return statement
        .bind("bedMaterial", settings.beds().material().key()).bind("bedDepth", settings.beds().depthM())
        .bind("bedCard", settings.beds().card())
        .bind("pathMaterial", settings.paths().material().key()).bind("pathDepth", settings.paths().depthM())
        .bind("pathCard", settings.paths().card())
        .bind("settling", settings.settlingPercent()).bind("load", settings.loadM3()).bind("barrow", settings.barrowLitres())
        .bind("pace", settings.m3AnHour()).bind("gap", settings.gap().gapM()).bind("trunk", settings.gap().trunkM())
        .bind("length", settings.sheet().lengthM()).bind("width", settings.sheet().widthM())
        .bind("overlap", settings.sheet().overlapM()).bind("sheets", settings.sheetsAnHour());
  }

  static Covering covering(ResultSet row) throws SQLException {
    return new Covering(material(row.getString("material")), row.getDouble("depth_m"), row.getBoolean("card"), row.getBoolean("wanted"));
  }

  static Material material(String key) {
    return Material.ofKey(key).orElseThrow(() -> new IllegalStateException("no material " + key));
  }
}
