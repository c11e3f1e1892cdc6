package guildwood.sharing.store;

import guildwood.sharing.ShareLink;
import guildwood.sharing.ShareLinks;
import guildwood.store.Database;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;

/** Share links in the database, by the hash of their token. */
public final class SqlShareLinks implements ShareLinks {
  private static final RowMapper<ShareLink> LINK = (row, ctx) -> new ShareLink(row.getLong("id"), row.getLong("guild_id"),
      row.getString("label"), row.getObject("created_at", OffsetDateTime.class).toInstant(),
      Optional.ofNullable(row.getObject("expires_at", OffsetDateTime.class)).map(OffsetDateTime::toInstant),
      row.getBoolean("revoked"));

  private final Database database;

  public SqlShareLinks(Database database) {
    this.database = database;
  }

  @Override
  public List<ShareLink> ofGuild(long guildId) {
    return database.read(h -> h.createQuery("select * from share_link where guild_id = :guild order by id desc")
        .bind("guild", guildId).map(LINK).list());
  }

  @Override
  public ShareLink add(long guildId, String tokenHash, String label, Instant now, Optional<Instant> expiresAt) {
    return database.change(h -> {
      h.createUpdate("""
          insert into share_link (guild_id, token_hash, label, created_at, expires_at)
          values (:guild, :hash, :label, :now, :expires)""")
          .bind("guild", guildId).bind("hash", tokenHash).bind("label", label).bind("now", now.atOffset(ZoneOffset.UTC))
          .bind("expires", expiresAt.map(at -> at.atOffset(ZoneOffset.UTC)).orElse(null)).execute();
      return h.createQuery("select * from share_link where token_hash = :hash").bind("hash", tokenHash).map(LINK).one();
    });
  }

  @Override
  public Optional<ShareLink> find(String tokenHash) {
    return database.read(h -> h.createQuery("select * from share_link where token_hash = :hash")
        .bind("hash", tokenHash).map(LINK).findOne());
  }

  @Override
  public boolean revoke(long guildId, long linkId) {
    return database.change(h -> h.createUpdate("update share_link set revoked = true where id = :id and guild_id = :guild")
        .bind("id", linkId).bind("guild", guildId).execute() == 1);
  }
}
