package guildwood.materials.store;

import guildwood.materials.Covering;
import guildwood.materials.Delivery;
import guildwood.materials.Laid;
import guildwood.materials.MaterialRecords;
import guildwood.materials.MaterialSettings;
import guildwood.materials.Need;
import guildwood.materials.Stock;
import guildwood.materials.Target;
import guildwood.store.Database;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;

/** Materials in the database; all of it goes with its site by the schema's cascades. */
public final class SqlMaterialRecords implements MaterialRecords {
  private final Database database;

  public SqlMaterialRecords(Database database) {
    this.database = database;
  }

  @Override
  public MaterialSettings settings(long siteId) {
    return database.read(h -> h.createQuery("select * from material_settings where site_id = :site").bind("site", siteId)
        .map((row, ctx) -> SettingsRows.read(row)).findOne().orElse(MaterialSettings.USUAL));
  }

  @Override
  public boolean keep(long siteId, MaterialSettings settings) {
    return database.change(h -> locked(h, siteId)
        && SettingsRows.bind(h.createUpdate(SettingsRows.KEEP).bind("site", siteId), settings).execute() == 1);
  }

  @Override
  public Map<Target, Covering> coverings(long siteId) {
    Map<Target, Covering> coverings = new LinkedHashMap<>();
    database.read(h -> h.createQuery("select * from material_covering where site_id = :site order by target").bind("site", siteId)
            .map((row, ctx) -> Map.entry(target(row), SettingsRows.covering(row))).list())
        .forEach(entry -> coverings.put(entry.getKey(), entry.getValue()));
    return coverings;
  }

  @Override
  public boolean keep(long siteId, Target target, Optional<Covering> covering) {
    return database.change(h -> {
      if (!locked(h, siteId)) {
        return false;
      }
      h.createUpdate("delete from material_covering where site_id = :site and target = :target")
          .bind("site", siteId).bind("target", target.key()).execute();
      covering.ifPresent(c -> h.createUpdate("insert into material_covering (site_id, target, material, depth_m, card, wanted)"
              + " values (:site, :target, :material, :depth, :card, :wanted)")
          .bind("site", siteId).bind("target", target.key()).bind("material", c.material().key())
          .bind("depth", c.depthM()).bind("card", c.card()).bind("wanted", c.wanted()).execute());
      return true;
    });
  }

  @Override
  public List<Target> order(long siteId) {
    return database.read(h -> h.createQuery("select target from material_order where site_id = :site order by position")
        .bind("site", siteId).map((row, ctx) -> target(row)).list());
  }

  @Override
  public boolean keep(long siteId, List<Target> order) {
    return database.change(h -> {
      if (!locked(h, siteId)) {
        return false;
      }
      h.createUpdate("delete from material_order where site_id = :site").bind("site", siteId).execute();
      for (int i = 0; i < order.size(); i++) {
        h.createUpdate("insert into material_order (site_id, position, target) values (:site, :position, :target)")
            .bind("site", siteId).bind("position", i).bind("target", order.get(i).key()).execute();
      }
      return true;
    });
  }

  @Override
  public List<Delivery> deliveries(long siteId) {
    return database.read(h -> deliveries(h, siteId));
  }

  @Override
  public OptionalLong add(Delivery delivery) {
    return database.change(h -> !locked(h, delivery.siteId()) ? OptionalLong.empty()
        : OptionalLong.of(h.createUpdate("insert into material_delivery (site_id, material, amount, delivered_on, note)"
                + " values (:site, :material, :amount, :on, :note)")
            .bind("site", delivery.siteId()).bind("material", delivery.material().key()).bind("amount", delivery.amount())
            .bind("on", delivery.on()).bind("note", delivery.note())
            .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one()));
  }

  @Override
  public Removal removeDelivery(long siteId, long id) {
    return database.change(h -> {
      locked(h, siteId);
      Optional<Delivery> going = deliveries(h, siteId).stream().filter(d -> d.id() == id).findFirst();
      if (going.isEmpty()) {
        return Removal.NOT_THERE;
      }
      if (stock(h, siteId).of(going.get().material()) < going.get().amount() - 1e-9) {
        return Removal.LAID_ALREADY;
      }
      h.createUpdate("delete from material_delivery where id = :id").bind("id", id).execute();
      return Removal.REMOVED;
    });
  }

  @Override
  public List<Laid> laid(long siteId) {
    return database.read(h -> laid(h, siteId));
  }

  @Override
  public Optional<Laid> lay(long siteId, Need need, double amount, LocalDate on, boolean finished) {
    return database.change(h -> {
      if (!locked(h, siteId)) {
        return Optional.empty();
      }
      double fromStock = Math.min(amount, stock(h, siteId).of(need.material()));
      long id = h.createUpdate("insert into material_laid (site_id, target, name, material, amount, from_stock, laid_on, finished)"
              + " values (:site, :target, :name, :material, :amount, :stock, :on, :finished)")
          .bind("site", siteId).bind("target", need.target().key()).bind("name", need.name()).bind("material", need.material().key())
          .bind("amount", amount).bind("stock", fromStock).bind("on", on).bind("finished", finished)
          .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
      return Optional.of(new Laid(id, siteId, need.target(), need.name(), need.material(), amount, fromStock, on, finished));
    });
  }

  @Override
  public boolean takeBack(long siteId, long laidId) {
    return database.change(h -> h.createUpdate("delete from material_laid where id = :id and site_id = :site")
        .bind("id", laidId).bind("site", siteId).execute() == 1);
  }

  private static Stock stock(Handle handle, long siteId) {
    return Stock.of(deliveries(handle, siteId), laid(handle, siteId));
  }

  private static List<Delivery> deliveries(Handle handle, long siteId) {
    return handle.createQuery("select * from material_delivery where site_id = :site order by delivered_on desc, id desc")
        .bind("site", siteId)
        .map((row, ctx) -> new Delivery(row.getLong("id"), siteId, SettingsRows.material(row.getString("material")),
            row.getDouble("amount"), row.getObject("delivered_on", LocalDate.class), row.getString("note"))).list();
  }

  private static List<Laid> laid(Handle handle, long siteId) {
    return handle.createQuery("select * from material_laid where site_id = :site order by laid_on desc, id desc").bind("site", siteId)
        .map((row, ctx) -> new Laid(row.getLong("id"), siteId, target(row), row.getString("name"),
            SettingsRows.material(row.getString("material")), row.getDouble("amount"), row.getDouble("from_stock"),
            row.getObject("laid_on", LocalDate.class), row.getBoolean("finished"))).list();
  }

  private static Target target(ResultSet row) throws SQLException {
    String key = row.getString("target");
    return Target.ofKey(key).orElseThrow(() -> new IllegalStateException("no bed or path " + key));
  }

  /** Locks the site's row, so that two changes at once follow one another; false where the site is gone. */
  private static boolean locked(Handle handle, long siteId) {
    return handle.createQuery("select id from site where id = :id for update").bind("id", siteId).mapTo(Long.class).findOne().isPresent();
  }
}
