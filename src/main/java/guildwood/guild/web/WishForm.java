package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.PlantsFrom;
import guildwood.guild.Rules;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.kernel.Finding;
import guildwood.species.CautionKind;
import guildwood.species.Trait;
import guildwood.web.Form;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/** Wishes and rules of a bed as form fields, both ways. */
final class WishForm {
  private static final int USUAL_WEIGHT = 5;

  /** Percent of the ground, to start from. */
  private static final int USUAL_SHARE = 70;

  private WishForm() {}

  static Map<String, String> fill(List<Wish> wishes, Rules rules) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("share.ground", Integer.toString(USUAL_SHARE));
    for (Wish wish : wishes) {
      String field = field(wish.kind(), wish.item());
      values.put("wish." + field, wish.must() ? "must" : "nice");
      values.put("weight." + field, Integer.toString(wish.weight()));
      if (wish.kind() == WishKind.GROUND) {
        values.put("share.ground", wish.item());
      }
    }
    values.put("maxSpecies", Integer.toString(rules.maxSpecies()));
    values.put("maxPlants", Integer.toString(rules.maxPlants()));
    rules.budgetCents().ifPresent(cents -> values.put("budget", GuildWords.money(cents)));
    values.put("priceIfUnknown", GuildWords.money(rules.priceIfUnknownCents()));
    values.put("maxSpeciesPerGenus", Integer.toString(rules.maxSpeciesPerGenus()));
    tick(values, "allowBorderline", rules.allowBorderline());
    tick(values, "allowNotKnown", rules.allowNotKnown());
    values.put("plantsFrom", rules.plantsFrom().key());
    values.put("nativeTo", rules.nativeTo().orElse(""));
    rules.excludedCautions().forEach(kind -> values.put("without." + kind.key(), "on"));
    rules.banned().forEach(id -> values.put("ban." + id, "on"));
    rules.pinned().forEach((id, count) -> values.put("pin." + id, Integer.toString(count)));
    return values;
  }

  /** What a wish is called in the form: of the ground only one share can be wished for, which has a field of its own. */
  static String field(WishKind kind, String item) {
    return kind == WishKind.GROUND ? kind.key() : kind.key() + ":" + item;
  }

  private static void tick(Map<String, String> values, String field, boolean ticked) {
    if (ticked) {
      values.put(field, "on");
    }
  }

  static List<Wish> wishes(Form form) {
    List<Wish> wishes = new ArrayList<>();
    for (WishKind kind : WishKind.values()) {
      for (String item : kind == WishKind.GROUND ? List.of(share(form)) : kind.items()) {
        wish(form, kind, item).ifPresent(wishes::add);
      }
    }
    return wishes;
  }

  private static Optional<Wish> wish(Form form, WishKind kind, String item) {
    String field = field(kind, item);
    String asked = form.value("wish." + field);
    OptionalInt weight = form.wholeNumber("weight." + field, Wish.LEAST_WEIGHT, Wish.MOST_WEIGHT);
    if (!List.of("", "must", "nice").contains(asked)) {
      form.refuse(Finding.of("value.unknown-word", "wish." + field, asked, "must, nice"));
      return Optional.empty();
    }
    return asked.isEmpty() ? Optional.empty()
        : Optional.of(new Wish(kind, item, asked.equals("must"), weight.orElse(USUAL_WEIGHT)));
  }

  /** The share of the ground that is wished for; a usual one where it cannot be read, which is refused. */
  private static String share(Form form) {
    OptionalInt percent = form.wholeNumber("share.ground", 1, 100);
    if (form.value("share.ground").isBlank() && !form.value("wish.ground").isEmpty()) {
      form.refuse(Finding.of("value.missing", "share.ground"));
    }
    return Integer.toString(percent.orElse(USUAL_SHARE));
  }

  /** The rules, or nothing where a field was refused. */
  static Optional<Rules> rules(Form form, BedPlan plan) {
    Rules usual = Rules.forArea(plan.bed().areaM2());
    int species = form.wholeNumber("maxSpecies", 1, Rules.MOST_SPECIES).orElse(usual.maxSpecies());
    int plants = form.wholeNumber("maxPlants", 1, Rules.MOST_PLANTS).orElse(usual.maxPlants());
    int genus = form.wholeNumber("maxSpeciesPerGenus", 1, Rules.MOST_SPECIES).orElse(usual.maxSpeciesPerGenus());
    OptionalInt budget = cents(form, "budget", Rules.MOST_CENTS / 100);
    int price = cents(form, "priceIfUnknown", 10_000).orElse(usual.priceIfUnknownCents());
    PlantsFrom from = from(form);
    Optional<String> region = region(form);
    Set<String> banned = banned(form, plan);
    Map<String, Integer> pinned = pinned(form, plan, banned);
    if (form.isRefused()) {
      return Optional.empty();
    }
    return Optional.of(new Rules(species, plants, budget, price, form.ticked("allowBorderline"),
        form.ticked("allowNotKnown"), genus, from, region, cautions(form), banned, pinned));
  }

  private static PlantsFrom from(Form form) {
    String key = form.value("plantsFrom");
    Optional<PlantsFrom> from = key.isEmpty() ? Optional.of(PlantsFrom.ANYWHERE) : PlantsFrom.ofKey(key);
    if (from.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "plantsFrom", key));
    }
    return from.orElse(PlantsFrom.ANYWHERE);
  }

  private static OptionalInt cents(Form form, String field, int most) {
    OptionalDouble amount = form.number(field, 0, most);
    return amount.isPresent() ? OptionalInt.of((int) Math.round(amount.getAsDouble() * 100)) : OptionalInt.empty();
  }

  private static Optional<String> region(Form form) {
    String region = form.value("nativeTo");
    if (!region.isEmpty() && !Trait.NATIVITY.items().contains(region)) {
      form.refuse(Finding.of("item.unknown", "nativeTo", region));
    }
    return Optional.of(region).filter(r -> !r.isEmpty());
  }

  private static Set<CautionKind> cautions(Form form) {
    Set<CautionKind> kinds = new HashSet<>();
    for (CautionKind kind : CautionKind.values()) {
      if (form.ticked("without." + kind.key())) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private static Set<String> banned(Form form, BedPlan plan) {
    Set<String> banned = new HashSet<>();
    form.names("ban.").stream().filter(name -> form.ticked("ban." + name)).forEach(banned::add);
    known(form, plan, "banAdd").ifPresent(banned::add);
    banned.removeIf(id -> plan.library().find(id).isEmpty());
    return banned;
  }

  private static Map<String, Integer> pinned(Form form, BedPlan plan, Set<String> banned) {
    Map<String, Integer> pinned = new TreeMap<>();
    for (String id : form.names("pin.")) {
      // An id that nobody has offered has no field either in which its count could be put right.
      if (plan.library().find(id).isPresent()) {
        form.wholeNumber("pin." + id, 0, Rules.MOST_PLANTS).ifPresent(count -> pinned.put(id, count));
        refusePin(form, plan, banned, "pin." + id, id, pinned.getOrDefault(id, 0));
      }
    }
    OptionalInt count = form.wholeNumber("pinAddCount", 1, Rules.MOST_PLANTS);
    known(form, plan, "pinAdd").ifPresent(id -> {
      pinned.put(id, count.orElse(Math.max(1, plan.bed().standingOf(id))));
      refusePin(form, plan, banned, "pinAdd", id, pinned.get(id));
    });
    pinned.values().removeIf(plants -> plants == 0);
    return pinned;
  }

  /** Says beside its field why a species cannot be fixed so; 0 plants are none fixed. */
  private static void refusePin(Form form, BedPlan plan, Set<String> banned, String field, String id, int count) {
    int standing = plan.bed().standingOf(id);
    if (count > 0 && banned.contains(id)) {
      form.refuse(Finding.of("pinned-and-banned", field));
    } else if (count > 0 && count < standing) {
      form.refuse(Finding.of("below-standing", field, standing));
    }
  }

  private static Optional<String> known(Form form, BedPlan plan, String field) {
    String id = form.value(field);
    if (id.isEmpty()) {
      return Optional.empty();
    }
    if (plan.library().find(id).isEmpty()) {
      form.refuse(Finding.of("item.unknown", field, id));
      return Optional.empty();
    }
    return Optional.of(id);
  }
}
