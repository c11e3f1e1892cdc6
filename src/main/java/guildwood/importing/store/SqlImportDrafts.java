package guildwood.importing.store;

import guildwood.importing.ImportDraft;
import guildwood.importing.ImportDrafts;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.exchange.DraftJson;
import guildwood.importing.exchange.MappingFile;
import guildwood.store.Database;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.SqlStatement;

/** Imports in progress and saved mappings in the database; mappings and decisions are JSON texts. */
public final class SqlImportDrafts implements ImportDrafts {
  private static final RowMapper<ImportDraft> DRAFT = (row, ctx) -> new ImportDraft(row.getLong("id"), row.getString("file_name"),
      row.getString("stored_as"), row.getString("sheet"), row.getObject("started_at", OffsetDateTime.class).toInstant(),
      readMapping(row.getString("mapping")), source(row.getString("source")), DraftJson.decisions(row.getString("decisions")));

  private final Database database;

  public SqlImportDrafts(Database database) {
    this.database = database;
  }

  @Override
  public long add(ImportDraft draft) {
    return database.change(handle -> bind(handle.createUpdate("insert into import_draft (file_name, stored_as, sheet, started_at, mapping, "
        + "source, decisions) values (:file, :stored, :sheet, :started, :mapping, :source, :decisions)"), draft)
        .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one());
  }

  @Override
  public void change(ImportDraft draft) {
    int rows = database.change(handle -> bind(handle.createUpdate("update import_draft set file_name = :file, stored_as = :stored, "
        + "sheet = :sheet, started_at = :started, mapping = :mapping, source = :source, decisions = :decisions where id = :id")
        .bind("id", draft.id()), draft).execute());
    if (rows != 1) {
      throw new IllegalArgumentException("no import in progress " + draft.id());
    }
  }

  @Override
  public Optional<ImportDraft> find(long id) {
    return database.read(handle -> handle.createQuery("select * from import_draft where id = :id").bind("id", id).map(DRAFT).findOne());
  }

  @Override
  public List<ImportDraft> all() {
    return database.read(handle -> handle.createQuery("select * from import_draft order by id desc").map(DRAFT).list());
  }

  @Override
  public void remove(long id) {
    database.change(handle -> handle.createUpdate("delete from import_draft where id = :id").bind("id", id).execute());
  }

  @Override
  public List<String> mappingNames() {
    return database.read(handle -> handle.createQuery("select name from import_mapping order by lower(name), name").mapTo(String.class).list());
  }

  @Override
  public Optional<Mapping> mapping(String name) {
    return database.read(handle -> handle.createQuery("select content from import_mapping where name = :name").bind("name", name)
        .mapTo(String.class).findOne()).flatMap(SqlImportDrafts::readMapping);
  }

  @Override
  public void keepMapping(String name, Mapping mapping) {
    database.change(handle -> handle.createUpdate("merge into import_mapping (name, content) key (name) values (:name, :content)")
        .bind("name", name).bind("content", MappingFile.write(mapping)).execute());
  }

  @Override
  public void removeMapping(String name) {
    database.change(handle -> handle.createUpdate("delete from import_mapping where name = :name").bind("name", name).execute());
  }

  private static <T extends SqlStatement<T>> T bind(T sql, ImportDraft draft) {
    return sql.bind("file", draft.fileName()).bind("stored", draft.storedAs()).bind("sheet", draft.sheet())
        .bind("started", draft.startedAt().atOffset(ZoneOffset.UTC))
        .bind("mapping", draft.mapping().map(MappingFile::write).orElse(null))
        .bind("source", draft.source().map(DraftJson::write).orElse(null))
        .bind("decisions", DraftJson.write(draft.decisions()));
  }

  /** A mapping that this version can no longer read is mapped anew rather than in the way. */
  private static Optional<Mapping> readMapping(String json) {
    return json == null ? Optional.empty() : MappingFile.read(json.getBytes(StandardCharsets.UTF_8)).value();
  }

  private static Optional<ImportSource> source(String json) {
    return json == null ? Optional.empty() : Optional.of(DraftJson.source(json));
  }
}
