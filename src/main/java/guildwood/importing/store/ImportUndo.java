package guildwood.importing.store;

import guildwood.importing.UndoReport;
import guildwood.importing.UndoReport.Kept;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * Takes out what one import brought, inside a transaction somebody else holds. What was edited by hand since stays, and so
 * does a species that a bed or guild rests upon or that has values of others by now.
 */
final class ImportUndo {
  private static final int MOST_KEPT = 1_000;

  private final Handle handle;
  private final long id;
  private final List<Kept> kept = new ArrayList<>();

  ImportUndo(Handle handle, long id) {
    this.handle = handle;
    this.id = id;
  }

  UndoReport undo() {
    keep("value-edited", "select species_id, entered from statement where import_id = :id and edited order by id limit " + MOST_KEPT);
    long values = run("delete from statement where import_id = :id and not edited");
    chosenAgain();
    long notes = run("delete from species_note where import_id = :id");
    long holdings = holdings();
    long names = names();
    long species = species();
    long sources = run("delete from source s where import_id = :id and not exists (select 1 from statement t where t.source_id = s.id) "
        + "and not exists (select 1 from species_note n where n.source_id = s.id)");
    return new UndoReport(species, values, notes, names, holdings, sources, kept);
  }

  private long run(String sql) {
    return handle.createUpdate(sql).bind("id", id).execute();
  }

  private void keep(String reason, String sql) {
    handle.createQuery(sql).bind("id", id).map((row, ctx) -> new Kept(row.getString(1), reason, row.getString(2))).forEach(kept::add);
  }

  /** Values that ruled before rule again, where no other was chosen meanwhile. */
  private void chosenAgain() {
    run("update statement s set chosen = true where not removed and exists (select 1 from import_change c where c.import_id = :id "
        + "and c.kind = 'CHOSEN' and c.statement_id = s.id) and not exists (select 1 from statement o where o.species_id = s.species_id "
        + "and o.trait = s.trait and o.item = s.item and o.chosen)");
  }

  private record Change(String speciesId, Optional<String> was, String became) {}

  private List<Change> changes(String kind) {
    return handle.createQuery("select species_id, was, became from import_change where import_id = :id and kind = :kind order by species_id")
        .bind("id", id).bind("kind", kind)
        .map((row, ctx) -> new Change(row.getString(1), Optional.ofNullable(row.getString(2)), row.getString(3))).list();
  }

  private long names() {
    long back = 0;
    for (Change change : changes(ImportChanges.NAMES)) {
      String[] was = change.was().orElseThrow().split("\n", -1);
      int done = handle.createUpdate("update species set common_names = :common, family = :family, synonyms = :synonyms "
              + "where id = :species and common_names || chr(10) || family || chr(10) || synonyms = :became")
          .bind("common", was[0]).bind("family", was[1]).bind("synonyms", was[2]).bind("species", change.speciesId())
          .bind("became", change.became()).execute();
      back += done;
      if (done == 0) {
        kept.add(new Kept(change.speciesId(), "names-edited", ""));
      }
    }
    return back;
  }

  private long holdings() {
    long back = 0;
    for (Change change : changes(ImportChanges.HOLDING)) {
      String now = "species_id = :species and " + ImportChanges.HOLDING_WRITTEN + " = :became";
      String[] was = change.was().orElse("0  0").split(" ", -1);
      String sql = change.was().isEmpty()
          ? "delete from holding where " + now
          : "update holding set plants_on_hand = :plants, price_cents = :cents where " + now;
      int done = handle.createUpdate(sql).bind("species", change.speciesId()).bind("became", change.became())
          .bind("plants", Integer.parseInt(was[0])).bind("cents", was[1].isEmpty() ? null : Integer.valueOf(was[1])).execute();
      back += done;
      if (done == 0) {
        kept.add(new Kept(change.speciesId(), "holding-edited", change.became()));
      }
    }
    return back;
  }

  /** Species of the import that nothing else speaks of or rests upon. */
  private long species() {
    String own = "s.import_id = :id and not s.edited and not exists (select 1 from statement t where t.species_id = s.id) ";
    String free = own + dependents().stream().map(d -> "and not exists (select 1 from " + d.table() + " d where d." + d.column() + " = s.id) ")
        .collect(Collectors.joining());
    // One that was written with the species and edited since has been kept above.
    run("delete from holding h where plants_to_propagate = 0 and exists (select 1 from species s where s.id = h.species_id and " + free + ") "
        + "and not exists (select 1 from import_change c where c.import_id = :id and c.kind = 'HOLDING' and c.species_id = h.species_id)");
    long gone = run("delete from species s where " + free + "and not exists (select 1 from holding h where h.species_id = s.id)");
    keep("species-edited", "select id, scientific_name from species s where import_id = :id order by id limit " + MOST_KEPT);
    return gone;
  }

  private record Dependent(String table, String column) {}

  /** Every table that refers to species, whatever feature it belongs to; statements, notes and holdings are the library's own. */
  private List<Dependent> dependents() {
    return handle.createQuery("select k.table_name, k.column_name from information_schema.referential_constraints r "
            + "join information_schema.key_column_usage k on k.constraint_schema = r.constraint_schema and k.constraint_name = r.constraint_name "
            + "join information_schema.table_constraints u on u.constraint_schema = r.unique_constraint_schema "
            + "and u.constraint_name = r.unique_constraint_name where u.table_name = 'SPECIES' and k.table_name not in "
            + "('STATEMENT', 'SPECIES_NOTE', 'HOLDING')")
        .map((row, ctx) -> new Dependent(row.getString(1), row.getString(2))).list();
  }
}
