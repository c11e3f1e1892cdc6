package guildwood.species.store;

import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.SpeciesNames;
import guildwood.species.WrittenStatement;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.Update;

/** The statements of SQL that change the library, inside a transaction somebody else holds. */
final class LibraryChanges {
  private static final String INSERT_SOURCE = "insert into source (id, kind, author, title, published_year, locator) "
      + "values (:id, :kind, :author, :title, :year, :locator)";
  private static final String INSERT_SPECIES = "insert into species (id, scientific_name, common_names, family, synonyms) "
      + "values (:id, :name, :common, :family, :synonyms)";
  private static final String INSERT_STATEMENT =
      "insert into statement (species_id, trait, item, entered, source_id, evidence, chosen, note) "
          + "values (:species, :trait, :item, :entered, :source, :evidence, :chosen, :note)";

  private final Handle handle;

  LibraryChanges(Handle handle) {
    this.handle = handle;
  }

  void addSource(Source source) {
    bind(handle.createUpdate(INSERT_SOURCE), source).execute();
  }

  void changeSource(Source source) {
    one(bind(handle.createUpdate("update source set kind = :kind, author = :author, title = :title, "
        + "published_year = :year, locator = :locator where id = :id"), source), source.id());
  }

  void addSpecies(String id, SpeciesNames names) {
    bind(handle.createUpdate(INSERT_SPECIES), id, names).execute();
  }

  void rename(String id, SpeciesNames names) {
    one(bind(handle.createUpdate("update species set scientific_name = :name, common_names = :common, "
        + "family = :family, synonyms = :synonyms, edited = true where id = :id"), id, names), id);
  }

  void setRemoved(String speciesId, boolean removed) {
    one(handle.createUpdate("update species set removed = :removed where id = :id")
        .bind("removed", removed).bind("id", speciesId), speciesId);
  }

  long addStatement(WrittenStatement statement) {
    return bind(handle.createUpdate(INSERT_STATEMENT), statement)
        .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
  }

  void changeStatement(WrittenStatement s) {
    one(bind(handle.createUpdate("update statement set chosen = chosen and item = :item, item = :item, "
        + "entered = :entered, source_id = :source, evidence = :evidence, note = :note, edited = true "
        + "where id = :id and species_id = :species and trait = :trait"), s).bind("id", s.id()), s.id());
  }

  /** One that lies in the bin no longer rules, also when it comes back. */
  void setStatementRemoved(long id, boolean removed) {
    one(handle.createUpdate("update statement set removed = :removed, chosen = false where id = :id")
        .bind("removed", removed).bind("id", id), id);
  }

  void letRule(long id) {
    int topic = handle.createUpdate("update statement s set chosen = (s.id = :id) where exists (select 1 from statement r "
            + "where r.id = :id and not r.removed and r.species_id = s.species_id and r.trait = s.trait and r.item = s.item)")
        .bind("id", id).execute();
    if (topic == 0) {
      throw new IllegalArgumentException("no statement " + id + " in use");
    }
  }

  void addAll(LibraryContents contents) {
    PreparedBatch sources = handle.prepareBatch(INSERT_SOURCE);
    contents.sources().forEach(source -> bind(sources, source).add());
    execute(sources, contents.sources());
    PreparedBatch species = handle.prepareBatch(INSERT_SPECIES);
    for (Map.Entry<String, SpeciesNames> entry : contents.species().entrySet()) {
      bind(species, entry.getKey(), entry.getValue()).add();
    }
    execute(species, contents.species().keySet());
    PreparedBatch statements = handle.prepareBatch(INSERT_STATEMENT);
    contents.statements().forEach(statement -> bind(statements, statement).add());
    execute(statements, contents.statements());
    contents.holdings().forEach(this::keep);
    PreparedBatch notes = handle.prepareBatch("insert into species_note (species_id, text, source_id) values (:species, :text, :source)");
    contents.notes().forEach(note ->
        notes.bind("species", note.speciesId()).bind("text", note.text()).bind("source", note.sourceId()).add());
    execute(notes, contents.notes());
  }

  int keep(Holding holding) {
    Integer cents = holding.priceCents().isPresent() ? holding.priceCents().getAsInt() : null;
    return handle.createUpdate(
            "merge into holding (species_id, plants_on_hand, plants_to_propagate, price_cents) key (species_id)"
                + " values (:id, :plants, :propagate, :cents)")
        .bind("id", holding.speciesId()).bind("plants", holding.plantsOnHand())
        .bind("propagate", holding.plantsToPropagate()).bind("cents", cents).execute();
  }

  void nextRevision() {
    handle.execute("update library_state set revision = revision + 1");
  }

  private static void execute(PreparedBatch batch, Collection<?> rows) {
    if (!rows.isEmpty()) {
      batch.execute();
    }
  }

  private static void one(Update update, Object id) {
    int rows = update.execute();
    if (rows != 1) {
      throw new IllegalArgumentException(rows + " rows for " + id);
    }
  }

  private static <T extends SqlStatement<T>> T bind(T sql, Source source) {
    return sql.bind("id", source.id()).bind("kind", source.kind().name()).bind("author", source.author())
        .bind("title", source.title()).bind("locator", source.locator())
        .bind("year", source.year().isPresent() ? source.year().getAsInt() : null);
  }

  private static <T extends SqlStatement<T>> T bind(T sql, String id, SpeciesNames names) {
    return sql.bind("id", id).bind("name", names.scientificName()).bind("common", LibraryRows.join(names.commonNames()))
        .bind("family", names.family()).bind("synonyms", LibraryRows.join(names.synonyms()));
  }

  private static <T extends SqlStatement<T>> T bind(T sql, WrittenStatement s) {
    return sql.bindMap(Map.of("species", s.speciesId(), "trait", s.trait(), "item", s.item(), "entered", s.entered(),
            "source", s.sourceId(), "chosen", s.chosen(), "note", s.note()))
        .bind("evidence", s.evidence().isEmpty() ? null : s.evidence());
  }

  List<WrittenStatement> binned() {
    return handle.createQuery("select s.* from statement s join species p on p.id = s.species_id "
        + "where s.removed and not p.removed order by s.id").map(LibraryRows.STATEMENT).list();
  }
}
