package guildwood.importing.store;

import guildwood.importing.ImportPlan;
import guildwood.importing.ReadValue;
import guildwood.importing.RowFate;
import guildwood.importing.RowOutcome;
import guildwood.importing.RowReading.Note;
import guildwood.importing.ValueOutcome;
import guildwood.species.Evidence;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.Statement;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Writes what an import brings, row by row, in batches, inside a transaction somebody else holds. */
final class ImportWriter implements AutoCloseable {
  private static final int BATCH = 1_000;
  private static final int LONGEST_NOTE = 900_000;

  private final boolean importRules;
  private final ImportSources sources;
  private final ImportChanges changes;
  private final List<PreparedStatement> prepared = new ArrayList<>();
  private final PreparedStatement species;
  private final PreparedStatement statement;
  private final PreparedStatement note;
  private final PreparedStatement holding;
  private int waiting;

  ImportWriter(Connection connection, long importId, ImportPlan plan, SpeciesLibrary library) throws SQLException {
    this.importRules = plan.decisions().importRules();
    this.sources = new ImportSources(connection, importId, plan, library);
    this.changes = new ImportChanges(connection, importId);
    this.species = prepare(connection, "insert into species (id, scientific_name, common_names, family, synonyms, import_id) "
        + "values (?, ?, ?, ?, ?, " + importId + ")");
    this.statement = prepare(connection, "insert into statement (species_id, trait, item, entered, source_id, evidence, note, import_id) "
        + "values (?, ?, ?, ?, ?, ?, ?, " + importId + ")");
    this.holding = prepare(connection, "insert into holding (species_id, plants_on_hand, price_cents) values (?, ?, ?)");
    this.note = prepare(connection, "insert into species_note (species_id, text, source_id, import_id) values (?, ?, ?, " + importId + ")");
  }

  private PreparedStatement prepare(Connection connection, String sql) throws SQLException {
    PreparedStatement made = connection.prepareStatement(sql);
    prepared.add(made);
    return made;
  }

  void write(RowOutcome row) throws SQLException {
    if (!row.fate().isBrought()) {
      return;
    }
    names(row);
    String source = sources.of(row.reading().source());
    String place = sources.placeOf(row.reading().source());
    for (ValueOutcome value : row.values()) {
      if (value.fate() != ValueOutcome.Fate.SAME) {
        statement(row.speciesId(), value.value(), source, place);
        if (importRules && value.fate() == ValueOutcome.Fate.CONFLICT && !value.existing().isEmpty()) {
          flush();
          changes.letRule(row.speciesId(), value.value());
        }
      }
    }
    notes(row, source);
    holding(row);
    if (waiting >= BATCH) {
      flush();
    }
  }

  private void holding(RowOutcome row) throws SQLException {
    OptionalInt plants = row.reading().plantsOnHand();
    OptionalInt cents = row.reading().priceCents();
    if (plants.isEmpty() && cents.isEmpty()) {
      return;
    }
    if (isNew(row)) {
      holding.setString(1, row.speciesId());
      holding.setInt(2, plants.orElse(0));
      holding.setObject(3, cents.isPresent() ? cents.getAsInt() : null, Types.INTEGER);
      holding.addBatch();
      waiting++;
    } else {
      flush();
      changes.holding(row.speciesId(), plants, cents);
    }
  }

  private static boolean isNew(RowOutcome row) {
    return row.fate() == RowFate.NEW || row.fate() == RowFate.NEAR;
  }

  private void names(RowOutcome row) throws SQLException {
    SpeciesNames names = row.names();
    if (isNew(row)) {
      species.setString(1, row.speciesId());
      species.setString(2, names.scientificName());
      species.setString(3, String.join("; ", names.commonNames()));
      species.setString(4, names.family());
      species.setString(5, String.join("; ", names.synonyms()));
      species.addBatch();
      waiting++;
    } else if (row.namesChange()) {
      flush();
      changes.names(row.speciesId(), names, row.fate() == RowFate.KNOWN);
    }
  }

  private void statement(String speciesId, ReadValue value, String source, String place) throws SQLException {
    String remark = place.isEmpty() ? value.note() : value.note().isEmpty() ? place : value.note() + "; " + place;
    statement.setString(1, speciesId);
    statement.setString(2, value.trait().key());
    statement.setString(3, value.item());
    statement.setString(4, value.entered());
    statement.setString(5, source);
    statement.setString(6, value.evidence().map(Evidence::key).orElse(null));
    statement.setString(7, remark.length() > Statement.MOST_NOTE ? remark.substring(0, Statement.MOST_NOTE) : remark);
    statement.addBatch();
    waiting++;
  }

  private void notes(RowOutcome row, String source) throws SQLException {
    StringBuilder text = new StringBuilder();
    for (Note each : row.notes()) {
      String line = (each.header().isEmpty() ? "" : each.header() + ": ") + each.text();
      if (text.length() > 0 && text.length() + line.length() > LONGEST_NOTE) {
        note(row.speciesId(), text, source);
      }
      text.append(text.isEmpty() ? "" : "\n").append(line);
    }
    if (!text.isEmpty()) {
      note(row.speciesId(), text, source);
    }
  }

  private void note(String speciesId, StringBuilder text, String source) throws SQLException {
    note.setString(1, speciesId);
    note.setString(2, text.toString());
    note.setString(3, source);
    note.addBatch();
    text.setLength(0);
    waiting++;
  }

  /** Species first: statements and notes rest upon them. */
  void flush() throws SQLException {
    if (waiting > 0) {
      species.executeBatch();
      statement.executeBatch();
      note.executeBatch();
      holding.executeBatch();
      waiting = 0;
    }
  }

  @Override
  public void close() throws SQLException {
    sources.close();
    for (PreparedStatement each : prepared) {
      each.close();
    }
  }
}
