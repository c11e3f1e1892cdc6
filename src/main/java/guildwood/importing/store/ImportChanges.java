package guildwood.importing.store;

import guildwood.importing.ReadValue;
import guildwood.species.Holding;
import guildwood.species.SpeciesNames;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.OptionalInt;

/** Changes an import makes to entries that were there before it, each kept with what it was. */
final class ImportChanges {
  static final String NAMES = "NAMES";
  static final String HOLDING = "HOLDING";
  static final String CHOSEN = "CHOSEN";

  /** A holding in one text: plants at hand, price in cents, plants to propagate. */
  static final String HOLDING_WRITTEN = "plants_on_hand || ' ' || coalesce(cast(price_cents as varchar), '') || ' ' || plants_to_propagate";

  private final Connection connection;
  private final long importId;

  ImportChanges(Connection connection, long importId) {
    this.connection = connection;
    this.importId = importId;
  }

  static String written(Holding holding) {
    String price = holding.priceCents().isPresent() ? String.valueOf(holding.priceCents().getAsInt()) : "";
    return holding.plantsOnHand() + " " + price + " " + holding.plantsToPropagate();
  }

  void names(String speciesId, SpeciesNames names, boolean known) throws SQLException {
    String common = String.join("; ", names.commonNames());
    String synonyms = String.join("; ", names.synonyms());
    if (known) {
      String was = one("select common_names || chr(10) || family || chr(10) || synonyms from species where id = ?", speciesId);
      remember(speciesId, NAMES, 0, was, common + "\n" + names.family() + "\n" + synonyms);
    }
    run("update species set common_names = ?, family = ?, synonyms = ? where id = ?", common, names.family(), synonyms, speciesId);
  }

  /** What is at hand is written where the library has nothing about it; otherwise the library's stays. */
  void holding(String speciesId, OptionalInt plants, OptionalInt cents) throws SQLException {
    String was = one("select " + HOLDING_WRITTEN + " from holding where species_id = ?", speciesId);
    String[] before = was == null ? new String[] {"0", "", "0"} : was.split(" ", -1);
    int onHand = before[0].equals("0") ? plants.orElse(0) : Integer.parseInt(before[0]);
    String price = before[1].isEmpty() ? cents.isPresent() ? String.valueOf(cents.getAsInt()) : "" : before[1];
    String became = onHand + " " + price + " " + before[2];
    if (!became.equals(was)) {
      run("merge into holding (species_id, plants_on_hand, price_cents) key (species_id) values (?, ?, ?)",
          speciesId, onHand, price.isEmpty() ? null : Integer.valueOf(price));
      remember(speciesId, HOLDING, 0, was, became);
    }
  }

  /** The value just written rules over the others about its topic. */
  void letRule(String speciesId, ReadValue value) throws SQLException {
    String topic = "species_id = ? and trait = ? and item = ?";
    String chosen = one("select max(id) from statement where chosen and not removed and " + topic, speciesId, value.trait().key(), value.item());
    if (chosen != null) {
      remember(speciesId, CHOSEN, Long.parseLong(chosen), null, null);
    }
    run("update statement set chosen = (id = (select max(id) from statement where import_id = " + importId + " and " + topic + ")) where " + topic,
        speciesId, value.trait().key(), value.item(), speciesId, value.trait().key(), value.item());
  }

  /** What it was is what it was before the import, however often the import changes it. */
  private void remember(String speciesId, String kind, long statementId, String was, String became) throws SQLException {
    String known = one("select count(*) from import_change where import_id = ? and species_id = ? and kind = ? and statement_id = ?",
        importId, speciesId, kind, statementId);
    if (known.equals("0")) {
      run("insert into import_change (import_id, species_id, kind, statement_id, was, became) values (?, ?, ?, ?, ?, ?)",
          importId, speciesId, kind, statementId, was, became);
    } else {
      run("update import_change set became = ? where import_id = ? and species_id = ? and kind = ? and statement_id = ?",
          became, importId, speciesId, kind, statementId);
    }
  }

  private String one(String sql, Object... values) throws SQLException {
    try (PreparedStatement query = bound(sql, values); ResultSet row = query.executeQuery()) {
      return row.next() ? row.getString(1) : null;
    }
  }

  private void run(String sql, Object... values) throws SQLException {
    try (PreparedStatement update = bound(sql, values)) {
      update.executeUpdate();
    }
  }

  private PreparedStatement bound(String sql, Object... values) throws SQLException {
    PreparedStatement made = connection.prepareStatement(sql);
    for (int i = 0; i < values.length; i++) {
      made.setObject(i + 1, values[i]);
    }
    return made;
  }
}
