package guildwood.site.store;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.species.Axis;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Conditions in the table of whatever they belong to: the same columns beside one owner's key. */
public final class SqlConditions {
  private final String table;
  private final String owner;

  /** @param owner name of the column with the owner's key */
  public SqlConditions(String table, String owner) {
    this.table = table;
    this.owner = owner;
  }

  /** All conditions, by owner and axis. */
  public Map<Long, Map<Axis, Condition>> all(Handle handle) {
    Map<Long, Map<Axis, Condition>> all = new HashMap<>();
    handle.createQuery("select * from " + table)
        .map((row, ctx) -> Map.entry(row.getLong(owner), condition(row)))
        .forEach(e -> all.computeIfAbsent(e.getKey(), k -> new EnumMap<>(Axis.class)).put(e.getValue().axis(), e.getValue()));
    return all;
  }

  /** The conditions of one owner. */
  public Map<Axis, Condition> of(Handle handle, long id) {
    Map<Axis, Condition> conditions = new EnumMap<>(Axis.class);
    handle.createQuery("select * from " + table + " where " + owner + " = :id").bind("id", id)
        .map((row, ctx) -> condition(row))
        .forEach(c -> conditions.put(c.axis(), c));
    return conditions;
  }

  /** Puts conditions in the place of those kept so far. */
  public void replace(Handle handle, long id, Collection<Condition> conditions) {
    handle.createUpdate("delete from " + table + " where " + owner + " = :id").bind("id", id).execute();
    for (Condition condition : conditions) {
      handle.createUpdate("insert into " + table + " (" + owner + ", axis, low, high, basis, entered)"
              + " values (:id, :axis, :low, :high, :basis, :entered)")
          .bind("id", id).bind("axis", condition.axis().key())
          .bind("low", condition.range().min()).bind("high", condition.range().max())
          .bind("basis", condition.basis().key()).bind("entered", condition.entered()).execute();
    }
  }

  private static Condition condition(ResultSet row) throws SQLException {
    return new Condition(Axis.ofKey(row.getString("axis")), new Range(row.getDouble("low"), row.getDouble("high")),
        Basis.valueOf(row.getString("basis").toUpperCase(Locale.ROOT)), row.getString("entered"));
  }
}
