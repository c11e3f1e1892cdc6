package guildwood.site.store;

import guildwood.site.survey.CoverScale;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.site.survey.SurveyStore;
import guildwood.species.WetlandRegion;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;

/** Surveys in the database; they go with their site or bed by the schema's cascades. */
public final class SqlSurveys implements SurveyStore {
  private static final String LATEST_FIRST = " order by surveyed_on desc nulls last, id desc";

  private final Database database;

  public SqlSurveys(Database database) {
    this.database = database;
  }

  @Override
  public List<SurveySheet> ofSite(long siteId) {
    return database.read(h -> sheets(h, "site_id", siteId));
  }

  @Override
  public List<SurveySheet> ofBed(long bedId) {
    return database.read(h -> sheets(h, "bed_id", bedId));
  }

  @Override
  public Optional<SurveySheet> find(long id) {
    return database.read(h -> find(h, id));
  }

  @Override
  public OptionalLong add(SurveySheet sheet) {
    return database.change(h -> {
      if (!ownerStands(h, sheet)) {
        return OptionalLong.empty();
      }
      long id = bind(h.createUpdate("insert into survey (site_id, bed_id, name, surveyed_on, plot_size_m2, cover_scale, wetland_region,"
          + " note) values (:site, :bed, :name, :date, :plot, :scale, :region, :note)"), sheet)
          .bind("site", sheet.siteId()).bind("bed", sheet.bedId().isPresent() ? (Long) sheet.bedId().getAsLong() : null)
          .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
      replaceRows(h, id, sheet.rows());
      return OptionalLong.of(id);
    });
  }

  @Override
  public Optional<SurveySheet> change(long id, UnaryOperator<SurveySheet> change) {
    return database.change(h -> locked(h, id).map(before -> {
      SurveySheet after = change.apply(before);
      bind(h.createUpdate("update survey set name = :name, surveyed_on = :date, plot_size_m2 = :plot, cover_scale = :scale,"
          + " wetland_region = :region, note = :note where id = :id"), after).bind("id", id).execute();
      replaceRows(h, id, after.rows());
      return find(h, id).orElseThrow();
    }));
  }

  @Override
  public boolean remove(long id) {
    return database.change(h -> h.createUpdate("delete from survey where id = :id").bind("id", id).execute() == 1);
  }

  /** A bed counts only on the site it belongs to; the row is locked so that it cannot go in between. */
  private static boolean ownerStands(Handle handle, SurveySheet sheet) {
    return sheet.bedId().isPresent()
        ? handle.createQuery("select id from bed where id = :bed and site_id = :site for update")
            .bind("bed", sheet.bedId().getAsLong()).bind("site", sheet.siteId()).mapTo(Long.class).findOne().isPresent()
        : handle.createQuery("select id from site where id = :site for update")
            .bind("site", sheet.siteId()).mapTo(Long.class).findOne().isPresent();
  }

  private static Optional<SurveySheet> locked(Handle handle, long id) {
    return handle.createQuery("select id from survey where id = :id for update").bind("id", id)
        .mapTo(Long.class).findOne().flatMap(found -> find(handle, found));
  }

  private static Optional<SurveySheet> find(Handle handle, long id) {
    return sheets(handle, "id", id).stream().findFirst();
  }

  /** @param column a name from this class, never from outside */
  private static List<SurveySheet> sheets(Handle handle, String column, long value) {
    Map<Long, List<Row>> rows = new HashMap<>();
    handle.createQuery("select * from survey_plant where survey_id in (select id from survey where " + column + " = :value)"
            + " order by survey_id, position").bind("value", value)
        .map((row, ctx) -> Map.entry(row.getLong("survey_id"), plant(row)))
        .forEach(e -> rows.computeIfAbsent(e.getKey(), k -> new ArrayList<>()).add(e.getValue()));
    return handle.createQuery("select * from survey where " + column + " = :value" + LATEST_FIRST).bind("value", value)
        .map((row, ctx) -> sheet(row, rows.getOrDefault(row.getLong("id"), List.of()))).list();
  }

  private static void replaceRows(Handle handle, long id, List<Row> rows) {
    handle.createUpdate("delete from survey_plant where survey_id = :id").bind("id", id).execute();
    if (rows.isEmpty()) {
      return;
    }
    PreparedBatch batch = handle.prepareBatch("insert into survey_plant (survey_id, position, written, taken, cover, origin, stage)"
        + " values (:id, :position, :written, :taken, :cover, :origin, :stage)");
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      batch.bind("id", id).bind("position", i).bind("written", row.written()).bind("taken", row.taken().orElse(null))
          .bind("cover", row.cover()).bind("origin", row.origin().name()).bind("stage", row.stage().name()).add();
    }
    batch.execute();
  }

  private static Row plant(ResultSet row) throws SQLException {
    return new Row(row.getString("written"), Optional.ofNullable(row.getString("taken")), row.getString("cover"),
        Origin.valueOf(row.getString("origin")), Stage.valueOf(row.getString("stage")));
  }

  private static SurveySheet sheet(ResultSet row, List<Row> plants) throws SQLException {
    long bed = row.getLong("bed_id");
    OptionalLong bedId = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(bed);
    double plot = row.getDouble("plot_size_m2");
    OptionalDouble plotSizeM2 = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(plot);
    return new SurveySheet(row.getLong("id"), row.getLong("site_id"), bedId, row.getString("name"),
        Optional.ofNullable(row.getObject("surveyed_on", LocalDate.class)), plotSizeM2,
        CoverScale.valueOf(row.getString("cover_scale")),
        Optional.ofNullable(row.getString("wetland_region")).map(WetlandRegion::valueOf), row.getString("note"), plants);
  }

  private static <S extends SqlStatement<S>> S bind(S statement, SurveySheet sheet) {
    return statement.bind("name", sheet.name()).bind("date", sheet.date().orElse(null))
        .bind("plot", sheet.plotSizeM2().isPresent() ? (Double) sheet.plotSizeM2().getAsDouble() : null)
        .bind("scale", sheet.scale().name()).bind("region", sheet.region().map(Enum::name).orElse(null)).bind("note", sheet.note());
  }
}
