package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.guild.PlantsFrom;
import guildwood.guild.Rules;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.exchange.JsonEntry;
import guildwood.species.CautionKind;
import guildwood.species.Trait;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads the rules of a bed file; what it leaves out is as usual for a bed of its size. */
final class RulesEntry {
  private static final Range SPECIES = new Range(0, Rules.MOST_SPECIES);
  private static final Range PLANTS = new Range(0, Rules.MOST_PLANTS);
  static final int MOST_PRICE_CENTS = 1_000_000;

  private final JsonEntry entry;
  private final SpeciesLists species;
  private final Rules usual;

  RulesEntry(JsonEntry entry, SpeciesLists species, Rules usual) {
    this.entry = entry;
    this.species = species;
    this.usual = usual;
  }

  /** @param standing plants that stand already, by species id */
  Rules read(Map<String, Integer> standing) {
    int maxSpecies = whole("maxSpecies", SPECIES, usual.maxSpecies());
    int maxPlants = whole("maxPlants", PLANTS, usual.maxPlants());
    int genus = whole("maxSpeciesPerGenus", new Range(1, Rules.MOST_SPECIES), usual.maxSpeciesPerGenus());
    OptionalInt budget = entry.given("budget") ? cents(entry, "budget", Rules.MOST_CENTS) : OptionalInt.empty();
    int price = entry.given("priceIfUnknown")
        ? cents(entry, "priceIfUnknown", MOST_PRICE_CENTS).orElse(0) : usual.priceIfUnknownCents();
    boolean borderline = flag("allowBorderline", usual.allowBorderline());
    boolean notKnown = flag("allowNotKnown", usual.allowNotKnown());
    PlantsFrom from = plantsFrom();
    Optional<String> region = entry.given("nativeTo") ? region() : Optional.empty();
    Set<CautionKind> cautions = entry.given("withoutCautions") ? cautions() : usual.excludedCautions();
    Set<String> banned = species.named(entry, "banned");
    Map<String, Integer> pinned = species.counted(entry, "pinned", Rules.MOST_PLANTS, false);
    for (String id : pinned.keySet()) {
      if (banned.contains(id)) {
        entry.refuse(Finding.of("compose.pinned-and-banned", entry.at("pinned"), id));
      }
      if (pinned.get(id) < standing.getOrDefault(id, 0)) {
        entry.refuse(Finding.of("compose.pinned-below-standing", entry.at("pinned"), id, pinned.get(id), standing.get(id)));
      }
    }
    pinned.keySet().removeAll(banned);
    return new Rules(maxSpecies, maxPlants, budget, price, borderline, notKnown, genus, from, region, cautions, banned, pinned);
  }

  private int whole(String key, Range scale, int otherwise) {
    return entry.given(key) ? entry.wholeNumber(key, scale).orElse(otherwise) : otherwise;
  }

  private boolean flag(String key, boolean otherwise) {
    return entry.given(key) ? entry.flag(key) : otherwise;
  }

  /** An amount of money with at most two decimals, in hundredths. */
  static OptionalInt cents(JsonEntry entry, String key, int mostCents) {
    var amount = entry.number(key, new Range(0, mostCents / 100.0));
    if (amount.isEmpty()) {
      return OptionalInt.empty();
    }
    double cents = amount.getAsDouble() * 100;
    if (Math.abs(cents - Math.rint(cents)) > 1e-6) {
      entry.refuse(Finding.of("compose.money", entry.at(key)));
    }
    return OptionalInt.of((int) Math.rint(cents));
  }

  /** {@code onlyStock} is the shorter way to say that nothing but plants on hand may be used. */
  private PlantsFrom plantsFrom() {
    PlantsFrom otherwise = flag("onlyStock", false) ? PlantsFrom.ON_HAND : usual.plantsFrom();
    if (!entry.given("plantsFrom")) {
      return otherwise;
    }
    Optional<String> key = entry.text("plantsFrom");
    key.filter(k -> PlantsFrom.ofKey(k).isEmpty()).ifPresent(k -> entry.refuse(
        Finding.of("value.unknown-word", entry.at("plantsFrom"), k, String.join(", ", Arrays.stream(PlantsFrom.values()).map(PlantsFrom::key).toList()))));
    return key.flatMap(PlantsFrom::ofKey).orElse(otherwise);
  }

  private Optional<String> region() {
    Optional<String> region = entry.text("nativeTo");
    region.filter(r -> !Trait.NATIVITY.items().contains(r)).ifPresent(r -> entry.refuse(
        Finding.of("value.unknown-word", entry.at("nativeTo"), r, String.join(", ", Trait.NATIVITY.items()))));
    return region;
  }

  private Set<CautionKind> cautions() {
    Set<CautionKind> kinds = EnumSet.noneOf(CautionKind.class);
    List<JsonNode> list = entry.list("withoutCautions");
    for (int i = 0; i < list.size(); i++) {
      String key = list.get(i).asText();
      Optional<CautionKind> kind = CautionKind.keys().contains(key) ? CautionKind.of(key) : Optional.empty();
      kind.ifPresent(kinds::add);
      if (kind.isEmpty()) {
        entry.refuse(Finding.of("value.unknown-word", entry.at("withoutCautions[" + i + "]"), key,
            String.join(", ", CautionKind.keys())));
      }
    }
    return kinds;
  }
}
