package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.bed.Bed;
import guildwood.guild.BedPlan;
import guildwood.guild.Rules;
import guildwood.guild.Supply;
import guildwood.guild.Wish;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.Condition;
import guildwood.site.Place;
import guildwood.site.Site;
import guildwood.site.exchange.JsonEntry;
import guildwood.site.exchange.JsonFile;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Reads a bed with its wishes, rules, standing plants and stock from JSON, as {@code bed.schema.json}
 * describes it. Everything wrong is named at once, each with its place in the file.
 */
final class BedFileReader {
  private static final String USUAL_NAME = "bed";
  private static final long NOT_KEPT = 0;

  private final SpeciesLibrary library;
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> ignored;
  private final SpeciesLists species;

  private BedFileReader(SpeciesLibrary library, List<String> ignored) {
    this.library = library;
    this.ignored = ignored;
    this.species = new SpeciesLists(new SpeciesNaming(library), findings, ignored);
  }

  /**
   * @param library whose species the file may name
   * @param ignored takes the places of keys that mean nothing here, perhaps misspelt, also where the file is refused
   */
  static Checked<BedFile> read(byte[] json, SpeciesLibrary library, List<String> ignored) {
    Checked<JsonNode> root = JsonFile.parse(json);
    return root.isRefused() ? Checked.refused(root.findings()) : new BedFileReader(library, ignored).bed(root.orThrow());
  }

  private Checked<BedFile> bed(JsonNode root) {
    JsonEntry entry = new JsonEntry(root, "", findings);
    if (!root.isObject()) {
      return Checked.refused(findings);
    }
    String name = entry.given("name") ? name(entry) : USUAL_NAME;
    OptionalDouble area = entry.number("areaM2", new Range(Bed.SMALLEST_AREA_M2, Bed.LARGEST_AREA_M2));
    String place = entry.given("place") ? place(entry) : "";
    Map<Axis, Condition> conditions = entry.given("conditions") ? conditions(entry) : Map.of();
    List<Wish> wishes = wishes(entry);
    Map<String, Integer> standing = species.counted(entry, "standing", Bed.Standing.MOST, true);
    Rules usual = Rules.forArea(area.orElse(Bed.SMALLEST_AREA_M2));
    Rules rules = entry.given("rules") ? rules(entry, usual, standing) : usual;
    Map<String, Supply> supplies = supplies(entry);
    Set<String> partners = species.named(entry, "partnersNear");
    ignored.addAll(entry.unread());
    if (!findings.isEmpty()) {
      return Checked.refused(findings);
    }
    List<Bed.Standing> plants = standing.entrySet().stream().map(e -> new Bed.Standing(e.getKey(), e.getValue())).toList();
    Site site = new Site(NOT_KEPT, name, place, OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), "");
    Bed bed = new Bed(NOT_KEPT, site.id(), name, area.orElseThrow(), conditions, plants, "");
    return Checked.of(new BedFile(new BedPlan(bed, site, library, wishes, rules), supplies, partners));
  }

  private static String name(JsonEntry entry) {
    String name = entry.text("name").orElse(USUAL_NAME).strip();
    if (name.isEmpty() || name.length() > Bed.LONGEST_NAME) {
      entry.refuse(Finding.of("compose.name", entry.at("name"), Bed.LONGEST_NAME));
      return USUAL_NAME;
    }
    return name;
  }

  private static String place(JsonEntry entry) {
    Checked<String> place = Place.read(entry.text("place").orElse(""), entry.at("place"));
    place.findings().forEach(entry::refuse);
    return place.value().orElse("");
  }

  private Map<Axis, Condition> conditions(JsonEntry entry) {
    Map<Axis, Condition> conditions = new EnumMap<>(Axis.class);
    JsonEntry axes = entry.node("conditions").map(n -> new JsonEntry(n, "conditions", findings)).orElseThrow();
    for (Axis axis : Axis.values()) {
      if (axes.given(axis.key())) {
        axes.node(axis.key()).flatMap(node -> ConditionEntry.read(axis, node, axes.at(axis.key()), findings, ignored))
            .ifPresent(condition -> conditions.put(axis, condition));
      }
    }
    ignored.addAll(axes.unread());
    return conditions;
  }

  private List<Wish> wishes(JsonEntry entry) {
    List<Wish> wishes = new ArrayList<>();
    for (JsonEntry each : species.entries(entry, "wishes")) {
      Optional<Wish> wish = WishEntry.read(each);
      ignored.addAll(each.unread());
      if (wish.isPresent() && wishes.stream().anyMatch(wish.get()::asksSameAs)) {
        each.refuse(Finding.of("compose.wish-twice", each.at("wish"), wish.get().key()));
      } else {
        wish.ifPresent(wishes::add);
      }
    }
    return wishes;
  }

  private Rules rules(JsonEntry entry, Rules usual, Map<String, Integer> standing) {
    JsonEntry rules = entry.node("rules").map(n -> new JsonEntry(n, "rules", findings)).orElseThrow();
    Rules read = new RulesEntry(rules, species, usual).read(standing);
    ignored.addAll(rules.unread());
    return read;
  }

  private Map<String, Supply> supplies(JsonEntry entry) {
    Map<String, Supply> supplies = new HashMap<>();
    for (JsonEntry each : species.entries(entry, "stock")) {
      Optional<String> id = species.species(each);
      int onHand = plants(each, "onHand");
      int canPropagate = plants(each, "canPropagate");
      OptionalInt price = each.given("price") ? RulesEntry.cents(each, "price", RulesEntry.MOST_PRICE_CENTS) : OptionalInt.empty();
      ignored.addAll(each.unread());
      if (id.isPresent() && supplies.putIfAbsent(id.get(), new Supply(price, onHand, canPropagate)) != null) {
        each.refuse(Finding.of("compose.species-twice", each.at("species"), id.get()));
      }
    }
    return supplies;
  }

  private static int plants(JsonEntry entry, String key) {
    return entry.given(key) ? entry.wholeNumber(key, new Range(0, Rules.MOST_PLANTS)).orElse(0) : 0;
  }
}
