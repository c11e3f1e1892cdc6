package guildwood.guild.store;

import guildwood.guild.PlantsFrom;
import guildwood.guild.Rules;
import guildwood.species.CautionKind;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The rules of a bed's guild as rows. */
final class RulesRows {
  private RulesRows() {}

  static Optional<Rules> find(Handle h, long bedId) {
    Set<String> banned = new HashSet<>();
    Map<String, Integer> pinned = new HashMap<>();
    h.createQuery("select species_id, plants from guild_rules_species where bed_id = :bed").bind("bed", bedId)
        .map((row, ctx) -> {
          int plants = row.getInt("plants");
          return row.wasNull() ? banned.add(row.getString("species_id"))
              : pinned.put(row.getString("species_id"), plants) == null;
        }).list();
    Set<CautionKind> cautions = h.createQuery("select caution from guild_rules_caution where bed_id = :bed")
        .bind("bed", bedId).mapTo(String.class).list().stream()
        .map(key -> CautionKind.valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'))).collect(Collectors.toSet());
    return h.createQuery("select * from guild_rules where bed_id = :bed").bind("bed", bedId)
        .map((row, ctx) -> {
          int budget = row.getInt("budget_cents");
          OptionalInt cents = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(budget);
          return new Rules(row.getInt("max_species"), row.getInt("max_plants"), cents,
              row.getInt("price_if_unknown_cents"), row.getBoolean("allow_borderline"),
              row.getBoolean("allow_not_known"), row.getInt("max_species_per_genus"), PlantsFrom.ofKey(row.getString("plants_from")).orElseThrow(),
              Optional.ofNullable(row.getString("native_to")), cautions, banned, pinned);
        }).findOne();
  }

  static void replace(Handle h, long bedId, Rules rules) {
    h.createUpdate("delete from guild_rules where bed_id = :bed").bind("bed", bedId).execute();
    h.createUpdate("""
        insert into guild_rules (bed_id, max_species, max_plants, budget_cents, price_if_unknown_cents, allow_borderline,
          allow_not_known, max_species_per_genus, plants_from, native_to)
        values (:bed, :species, :plants, :budget, :price, :borderline, :notKnown, :genus, :from, :native)""")
        .bind("bed", bedId).bind("species", rules.maxSpecies()).bind("plants", rules.maxPlants())
        .bind("budget", rules.budgetCents().isPresent() ? (Integer) rules.budgetCents().getAsInt() : null)
        .bind("price", rules.priceIfUnknownCents()).bind("borderline", rules.allowBorderline())
        .bind("notKnown", rules.allowNotKnown()).bind("genus", rules.maxSpeciesPerGenus())
        .bind("from", rules.plantsFrom().key()).bind("native", rules.nativeTo().orElse(null)).execute();
    for (CautionKind kind : rules.excludedCautions()) {
      h.createUpdate("insert into guild_rules_caution (bed_id, caution) values (:bed, :caution)")
          .bind("bed", bedId).bind("caution", kind.key()).execute();
    }
    PreparedBatch species =
        h.prepareBatch("insert into guild_rules_species (bed_id, species_id, plants) values (:bed, :species, :plants)");
    rules.banned().forEach(id -> species.bind("bed", bedId).bind("species", id).bind("plants", (Integer) null).add());
    rules.pinned().forEach((id, plants) -> species.bind("bed", bedId).bind("species", id).bind("plants", plants).add());
    if (species.size() > 0) {
      species.execute();
    }
  }
}
