package guildwood.guild.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.guild.Guild;
import guildwood.guild.PlantsFrom;
import guildwood.guild.Rules;
import guildwood.guild.SavedGuild;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.species.CautionKind;
import guildwood.store.Database;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlGuildsStoreTest {
  private static final Instant MAY = Instant.parse("2026-05-04T10:00:00Z");

  private final Database database = Database.inMemory();
  private final SqlGuilds guilds = new SqlGuilds(database);
  private long bed;

  @BeforeEach
  void aBedAndTwoSpecies() {
    bed = database.change(h -> {
      h.execute("insert into site (name, place, note) values ('School', '', '')");
      h.execute("insert into bed (site_id, name, area_m2, note) select id, 'Bank', 40, '' from site");
      for (String id : List.of("alnus-incana", "trifolium-repens")) {
        h.execute("insert into species (id, scientific_name, common_names, family, synonyms) values (?, ?, '', '', '')", id, id);
      }
      return h.createQuery("select id from bed").mapTo(Long.class).one();
    });
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void wishesComeBackInTheOrderOfTheirKinds() {
    Wish april = new Wish(WishKind.BLOOM_MONTH, "4", false, 3);
    Wish december = new Wish(WishKind.BLOOM_MONTH, "12", false, 2);
    Wish nitrogen = new Wish(WishKind.FUNCTION, "nitrogen-fixer", true, 8);
    guilds.keep(bed, List.of(december, april, nitrogen), Rules.forArea(40));
    assertEquals(List.of(nitrogen, april, december), guilds.wishes(bed));
  }

  @Test
  void rulesComeBackAsTheyWere() {
    assertEquals(Optional.empty(), guilds.rules(bed));
    Rules rules = Rules.forArea(40).withBudgetCents(OptionalInt.of(12345)).withBorderline(true).withPlantsFrom(PlantsFrom.HAVE_OR_PROPAGATE)
        .withNativeTo(Optional.of("great-lakes")).withExcludedCautions(Set.of(CautionKind.THORNS, CautionKind.COOK_FIRST))
        .withBanned(Set.of("alnus-incana")).withPinned(Map.of("trifolium-repens", 4)).withMaxSpeciesPerGenus(3);
    guilds.keep(bed, List.of(), rules);
    assertEquals(Optional.of(rules), guilds.rules(bed));
    guilds.keep(bed, List.of(), Rules.forArea(40));
    assertEquals(Optional.of(Rules.forArea(40)), guilds.rules(bed));
  }

  @Test
  void savingAgainKeepsTheIdThatLinksHangOn() {
    SavedGuild first = guilds.save(bed, "First", Guild.of(Map.of("alnus-incana", 2)), MAY);
    SavedGuild second = guilds.save(bed, "Second", Guild.of(Map.of("trifolium-repens", 9)), MAY.plusSeconds(60));
    assertEquals(first.id(), second.id());
    assertEquals(Optional.of(second), guilds.saved(bed));
    assertEquals(Map.of("trifolium-repens", 9), second.guild().counts());
    assertEquals(MAY.plusSeconds(60), guilds.find(first.id()).orElseThrow().savedAt());
  }

  @Test
  void nothingIsHalfSaved() {
    guilds.save(bed, "Good", Guild.of(Map.of("alnus-incana", 2)), MAY);
    assertTrue(fails(() -> guilds.save(bed, "Bad", Guild.of(Map.of("alnus-incana", 1, "no-such-species", 1)), MAY)));
    SavedGuild kept = guilds.saved(bed).orElseThrow();
    assertEquals("Good", kept.name());
    assertEquals(Map.of("alnus-incana", 2), kept.guild().counts());
  }

  @Test
  void aForgottenGuildIsGone() {
    guilds.save(bed, "Good", Guild.of(Map.of("alnus-incana", 2)), MAY);
    assertTrue(guilds.remove(bed));
    assertFalse(guilds.remove(bed));
    assertEquals(Optional.empty(), guilds.saved(bed));
  }

  private static boolean fails(Runnable change) {
    try {
      change.run();
      return false;
    } catch (org.jdbi.v3.core.JdbiException e) {
      return true;
    }
  }
}
