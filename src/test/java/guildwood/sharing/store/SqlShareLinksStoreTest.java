package guildwood.sharing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.guild.Guild;
import guildwood.guild.store.SqlGuilds;
import guildwood.sharing.ShareLink;
import guildwood.store.Database;
import guildwood.web.Tokens;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.JdbiException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlShareLinksStoreTest {
  private static final Instant MAY = Instant.parse("2026-05-04T10:00:00.123456Z");

  private final Database database = Database.inMemory();
  private final SqlGuilds guilds = new SqlGuilds(database);
  private final SqlShareLinks links = new SqlShareLinks(database);
  private List<Long> beds;
  private long guild;
  private long otherGuild;

  @BeforeEach
  void twoBedsWithGuilds() {
    beds = database.change(h -> {
      h.execute("insert into site (name, place, note) values ('School', '', '')");
      h.execute("insert into bed (site_id, name, area_m2, note) select id, 'Bank', 40, '' from site");
      h.execute("insert into bed (site_id, name, area_m2, note) select id, 'Ditch', 20, '' from site");
      h.execute("insert into species (id, scientific_name, common_names, family, synonyms) values ('alnus-incana', 'Alnus incana', '', '', '')");
      return h.createQuery("select id from bed order by id").mapTo(Long.class).list();
    });
    guild = guilds.save(beds.get(0), "Bank", Guild.of(Map.of("alnus-incana", 2)), MAY).id();
    otherGuild = guilds.save(beds.get(1), "Ditch", Guild.of(Map.of("alnus-incana", 1)), MAY).id();
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void aLinkIsFoundByTheHashOfItsTokenAlone() {
    String token = Tokens.fresh();
    ShareLink kept = links.add(guild, Tokens.hash(token), "Saturday helpers", MAY, Optional.of(MAY.plusSeconds(60)));
    assertEquals(Optional.of(kept), links.find(Tokens.hash(token)));
    assertEquals(new ShareLink(kept.id(), guild, "Saturday helpers", MAY, Optional.of(MAY.plusSeconds(60)), false), kept);
    assertEquals(Optional.empty(), links.find(token));
    assertEquals(Optional.empty(), links.find(Tokens.hash(Tokens.fresh())));
  }

  @Test
  void theTokenItselfIsNowhereInTheDatabase() {
    String token = Tokens.fresh();
    links.add(guild, Tokens.hash(token), "Helpers", MAY, Optional.empty());
    List<Map<String, Object>> rows = database.read(h -> h.createQuery("select * from share_link").mapToMap().list());
    assertEquals(1, rows.size());
    assertEquals(Tokens.hash(token), rows.get(0).get("token_hash"));
    assertFalse(rows.toString().contains(token));
  }

  @Test
  void theNewestComesFirstAndEachGuildHasItsOwn() {
    ShareLink first = links.add(guild, "1", "First", MAY, Optional.empty());
    ShareLink others = links.add(otherGuild, "2", "Others", MAY, Optional.empty());
    ShareLink second = links.add(guild, "3", "Second", MAY.minusSeconds(60), Optional.empty());
    assertEquals(List.of(second, first), links.ofGuild(guild));
    assertEquals(List.of(others), links.ofGuild(otherGuild));
    assertEquals(List.of(), links.ofGuild(999));
  }

  @Test
  void aLinkIsWithdrawnThroughItsOwnGuildOnly() {
    ShareLink link = links.add(guild, "hash", "Helpers", MAY, Optional.empty());
    assertFalse(links.revoke(otherGuild, link.id()));
    assertFalse(links.revoke(guild, link.id() + 1));
    assertFalse(links.find("hash").orElseThrow().revoked());
    assertTrue(links.revoke(guild, link.id()));
    assertTrue(links.find("hash").orElseThrow().revoked());
    assertFalse(links.find("hash").orElseThrow().works(MAY));
  }

  @Test
  void aTokenIsGivenOnce() {
    links.add(guild, "hash", "First", MAY, Optional.empty());
    assertThrows(JdbiException.class, () -> links.add(otherGuild, "hash", "Second", MAY, Optional.empty()));
    assertEquals(List.of(), links.ofGuild(otherGuild));
  }

  @Test
  void linksFollowTheGuildWhenItIsSavedAnewAndGoWithIt() {
    links.add(guild, "hash", "Helpers", MAY, Optional.empty());
    guilds.save(beds.get(0), "Changed", Guild.of(Map.of("alnus-incana", 5)), MAY.plusSeconds(60));
    assertEquals("Changed", guilds.find(links.find("hash").orElseThrow().guildId()).orElseThrow().name());
    guilds.remove(beds.get(0));
    assertEquals(Optional.empty(), links.find("hash"));
  }
}
