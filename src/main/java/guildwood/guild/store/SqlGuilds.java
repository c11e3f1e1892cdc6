package guildwood.guild.store;

import guildwood.guild.Guild;
import guildwood.guild.Guilds;
import guildwood.guild.Rules;
import guildwood.guild.SavedGuild;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.store.Database;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Wishes, rules and guilds in the database. */
public final class SqlGuilds implements Guilds {
  private static final Comparator<Wish> IN_ORDER = Comparator.comparing(Wish::kind)
      .thenComparing(wish -> wish.kind().items().indexOf(wish.item()));

  private final Database database;

  public SqlGuilds(Database database) {
    this.database = database;
  }

  @Override
  public List<Wish> wishes(long bedId) {
    return database.read(h -> h.createQuery("select * from wish where bed_id = :bed").bind("bed", bedId)
        .map((row, ctx) -> new Wish(WishKind.ofKey(row.getString("kind")), row.getString("item"),
            row.getBoolean("must"), row.getInt("weight")))
        .list()).stream().sorted(IN_ORDER).toList();
  }

  @Override
  public Optional<Rules> rules(long bedId) {
    return database.read(h -> RulesRows.find(h, bedId));
  }

  @Override
  public void keep(long bedId, List<Wish> wishes, Rules rules) {
    database.change(h -> {
      h.createUpdate("delete from wish where bed_id = :bed").bind("bed", bedId).execute();
      if (!wishes.isEmpty()) {
        PreparedBatch batch = h.prepareBatch(
            "insert into wish (bed_id, kind, item, must, weight) values (:bed, :kind, :item, :must, :weight)");
        wishes.forEach(wish -> batch.bind("bed", bedId).bind("kind", wish.kind().key()).bind("item", wish.item())
            .bind("must", wish.must()).bind("weight", wish.weight()).add());
        batch.execute();
      }
      RulesRows.replace(h, bedId, rules);
      return null;
    });
  }

  @Override
  public Optional<SavedGuild> saved(long bedId) {
    return database.read(h -> find(h, "bed_id", bedId));
  }

  @Override
  public Optional<SavedGuild> find(long guildId) {
    return database.read(h -> find(h, "id", guildId));
  }

  @Override
  public SavedGuild save(long bedId, String name, Guild guild, Instant now) {
    return database.change(h -> {
      OffsetDateTime at = now.atOffset(ZoneOffset.UTC);
      int updated = h.createUpdate("update guild set name = :name, saved_at = :at where bed_id = :bed")
          .bind("name", name).bind("at", at).bind("bed", bedId).execute();
      if (updated == 0) {
        h.createUpdate("insert into guild (bed_id, name, saved_at) values (:bed, :name, :at)")
            .bind("bed", bedId).bind("name", name).bind("at", at).execute();
      }
      long id = h.createQuery("select id from guild where bed_id = :bed").bind("bed", bedId).mapTo(Long.class).one();
      h.createUpdate("delete from guild_member where guild_id = :id").bind("id", id).execute();
      if (!guild.counts().isEmpty()) {
        PreparedBatch batch =
            h.prepareBatch("insert into guild_member (guild_id, species_id, plants) values (:id, :species, :plants)");
        guild.counts().forEach((species, plants) ->
            batch.bind("id", id).bind("species", species).bind("plants", plants).add());
        batch.execute();
      }
      return find(h, "id", id).orElseThrow();
    });
  }

  @Override
  public boolean remove(long bedId) {
    return database.change(h -> h.createUpdate("delete from guild where bed_id = :bed").bind("bed", bedId).execute() > 0);
  }

  /** @param column one of our own names, never input */
  private static Optional<SavedGuild> find(Handle h, String column, long value) {
    return h.createQuery("select * from guild where " + column + " = :value").bind("value", value)
        .map((row, ctx) -> new SavedGuild(row.getLong("id"), row.getLong("bed_id"), row.getString("name"),
            members(h, row.getLong("id")), row.getObject("saved_at", OffsetDateTime.class).toInstant()))
        .findOne();
  }

  private static Guild members(Handle h, long guildId) {
    TreeMap<String, Integer> counts = new TreeMap<>();
    h.createQuery("select species_id, plants from guild_member where guild_id = :id").bind("id", guildId)
        .map((row, ctx) -> counts.put(row.getString("species_id"), row.getInt("plants"))).list();
    return new Guild(counts);
  }
}
