package guildwood.importing.store;

import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import java.util.Collection;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * Marks what was written in one transaction as an import's, so that it can be taken out again. Values and notes are
 * numbered as they come: those above the last number of before are the import's.
 */
final class LibraryMarks {
  private final Handle handle;
  private final long importId;
  private final long lastStatement;
  private final long lastNote;

  private LibraryMarks(Handle handle, long importId, long lastStatement, long lastNote) {
    this.handle = handle;
    this.importId = importId;
    this.lastStatement = lastStatement;
    this.lastNote = lastNote;
  }

  static LibraryMarks before(Handle handle, long importId) {
    return new LibraryMarks(handle, importId, last(handle, "statement"), last(handle, "species_note"));
  }

  private static long last(Handle handle, String table) {
    return handle.createQuery("select coalesce(max(id), 0) from " + table).mapTo(Long.class).one();
  }

  void mark(LibraryContents additions) {
    numbered("statement", lastStatement);
    numbered("species_note", lastNote);
    named("species", additions.species().keySet(), id -> id);
    named("source", additions.sources(), source -> source.id());
    PreparedBatch holdings = handle.prepareBatch("insert into import_change (import_id, species_id, kind, was, became) "
        + "values (" + importId + ", :species, '" + ImportChanges.HOLDING + "', null, :became)");
    for (Holding holding : additions.holdings()) {
      holdings.bind("species", holding.speciesId()).bind("became", ImportChanges.written(holding)).add();
    }
    if (!additions.holdings().isEmpty()) {
      holdings.execute();
    }
  }

  private void numbered(String table, long last) {
    handle.createUpdate("update " + table + " set import_id = :import where id > :last")
        .bind("import", importId).bind("last", last).execute();
  }

  private <T> void named(String table, Collection<T> rows, Function<T, String> id) {
    PreparedBatch batch = handle.prepareBatch("update " + table + " set import_id = " + importId + " where id = :id");
    rows.forEach(row -> batch.bind("id", id.apply(row)).add());
    if (!rows.isEmpty()) {
      batch.execute();
    }
  }
}
