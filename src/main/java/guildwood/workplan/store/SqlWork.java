package guildwood.workplan.store;

import guildwood.bed.Bed;
import guildwood.species.Holding;
import guildwood.store.Database;
import guildwood.workplan.Done;
import guildwood.workplan.Raising;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkRecords;
import guildwood.workplan.WorkSettings;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;

/** Work in the database. What is done moves plants between the stock and the beds in the same transaction. */
public final class SqlWork implements WorkRecords {
  private final Database database;

  public SqlWork(Database database) {
    this.database = database;
  }

  @Override
  public WorkSettings settings(long siteId) {
    return database.read(h -> {
      Map<Raising, Integer> take = new EnumMap<>(Raising.class);
      h.createQuery("select way, percent from work_take where site_id = :site").bind("site", siteId)
          .map((row, ctx) -> take.put(Raising.ofKey(row.getString("way")).orElseThrow(), row.getInt("percent"))).list();
      return h.createQuery("select * from work_settings where site_id = :site").bind("site", siteId)
          .map((row, ctx) -> new WorkSettings(row.getDouble("session_hours"), row.getInt("people"), DayOfWeek.of(row.getInt("session_day")),
              row.getInt("tree_minutes"), row.getInt("shrub_minutes"), row.getInt("herb_minutes"), row.getInt("cover_minutes"), take))
          .findOne().orElse(WorkSettings.USUAL);
    });
  }

  @Override
  public boolean keep(long siteId, WorkSettings settings) {
    return database.change(h -> {
      if (isGone(h, "site", siteId)) {
        return false;
      }
      h.createUpdate("merge into work_settings (site_id, session_hours, people, session_day, tree_minutes, shrub_minutes, herb_minutes,"
              + " cover_minutes) key (site_id) values (:site, :hours, :people, :day, :tree, :shrub, :herb, :cover)")
          .bind("site", siteId).bind("hours", settings.sessionHours()).bind("people", settings.people())
          .bind("day", settings.day().getValue()).bind("tree", settings.treeMinutes()).bind("shrub", settings.shrubMinutes())
          .bind("herb", settings.herbMinutes()).bind("cover", settings.coverMinutes()).execute();
      h.createUpdate("delete from work_take where site_id = :site").bind("site", siteId).execute();
      settings.takePercent().forEach((way, percent) ->
          h.createUpdate("insert into work_take (site_id, way, percent) values (:site, :way, :percent)")
              .bind("site", siteId).bind("way", way.key()).bind("percent", percent).execute());
      return true;
    });
  }

  @Override
  public List<Done> done(long siteId) {
    return database.read(h -> h.createQuery("select * from work_done where site_id = :site order by done_on desc, id desc")
        .bind("site", siteId).map((row, ctx) -> new Done(row.getLong("id"), siteId, row.getString("task_key"),
            WorkKind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT).replace('-', '_')), row.getString("words"),
            row.getDouble("amount"), row.getObject("done_on", LocalDate.class),
            row.getString("species_id") == null ? "" : row.getString("species_id"), row.getLong("bed_id"))).list());
  }

  @Override
  public Optional<Done> finish(Done done) {
    return changed(h -> {
      if (isGone(h, "site", done.siteId()) || (done.bedId() != 0 && isGone(h, "bed", done.bedId()))) {
        throw new NothingKept();
      }
      move(h, done, 1);
      long id = h.createUpdate("insert into work_done (site_id, task_key, kind, words, amount, done_on, species_id, bed_id)"
              + " values (:site, :task, :kind, :words, :amount, :on, :species, :bed)")
          .bind("site", done.siteId()).bind("task", done.taskKey()).bind("kind", done.kind().key()).bind("words", done.words())
          .bind("amount", done.amount()).bind("on", done.on()).bind("species", done.speciesId().isEmpty() ? null : done.speciesId())
          .bind("bed", done.bedId() == 0 ? null : done.bedId()).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
      return new Done(id, done.siteId(), done.taskKey(), done.kind(), done.words(), done.amount(), done.on(), done.speciesId(),
          done.bedId());
    });
  }

  @Override
  public TakenBack takeBack(long siteId, long doneId) {
    Optional<Done> found = done(siteId).stream().filter(d -> d.id() == doneId).findFirst();
    if (found.isEmpty()) {
      return TakenBack.NOT_THERE;
    }
    return changed(h -> {
      if (h.createUpdate("delete from work_done where id = :id").bind("id", doneId).execute() == 0) {
        return TakenBack.NOT_THERE;
      }
      move(h, found.get(), -1);
      return TakenBack.TAKEN_BACK;
    }).orElse(TakenBack.USED_SINCE);
  }

  /** Runs a change that may find on its way that nothing of it can be kept. */
  private <R> Optional<R> changed(HandleCallback<R, RuntimeException> work) {
    try {
      return Optional.of(database.change(work));
    } catch (NothingKept e) {
      return Optional.empty();
    }
  }

  /** Ends a transaction without keeping anything. */
  private static final class NothingKept extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  /** Moves the plants, forwards or back; nothing is kept where there are not so many. */
  private static void move(Handle h, Done done, int way) {
    int toHand = way * done.broughtToHand();
    int toPropagate = -way * done.noLongerToPropagate();
    int standing = way * done.standing();
    if (toHand != 0 || toPropagate != 0) {
      h.createUpdate("insert into holding (species_id, plants_on_hand) select id, 0 from species where id = :id"
          + " and not exists (select 1 from holding where species_id = :id)").bind("id", done.speciesId()).execute();
      int changed = h.createUpdate("update holding set plants_on_hand = plants_on_hand + :hand,"
              + " plants_to_propagate = plants_to_propagate + :propagate where species_id = :id"
              + " and plants_on_hand + :hand between 0 and :most and plants_to_propagate + :propagate between 0 and :most")
          .bind("hand", toHand).bind("propagate", toPropagate).bind("id", done.speciesId()).bind("most", Holding.MOST_PLANTS).execute();
      if (changed == 0) {
        throw new NothingKept();
      }
    }
    if (standing != 0) {
      stand(h, done.bedId(), done.speciesId(), standing);
    }
  }

  private static void stand(Handle h, long bedId, String speciesId, int more) {
    int now = h.createQuery("select plants from bed_standing where bed_id = :bed and species_id = :species")
        .bind("bed", bedId).bind("species", speciesId).mapTo(Integer.class).findOne().orElse(0);
    int then = now + more;
    if (then < 0 || then > Bed.Standing.MOST || isGone(h, "bed", bedId)) {
      throw new NothingKept();
    }
    if (then == 0) {
      h.createUpdate("delete from bed_standing where bed_id = :bed and species_id = :species").bind("bed", bedId).bind("species", speciesId).execute();
    } else {
      h.createUpdate("merge into bed_standing (bed_id, species_id, plants) key (bed_id, species_id) values (:bed, :species, :plants)")
          .bind("bed", bedId).bind("species", speciesId).bind("plants", then).execute();
    }
  }

  /** @param table one of our own names, never input */
  private static boolean isGone(Handle h, String table, long id) {
    return h.createQuery("select id from " + table + " where id = :id for update").bind("id", id).mapTo(Long.class).findOne().isEmpty();
  }
}
