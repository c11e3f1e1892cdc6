package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.exchange.JsonEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads lists of species in a bed file: names alone, or each with a count. */
final class SpeciesLists {
  private final SpeciesNaming naming;
  private final List<Finding> findings;
  private final List<String> ignored;

  SpeciesLists(SpeciesNaming naming, List<Finding> findings, List<String> ignored) {
    this.naming = naming;
    this.findings = findings;
    this.ignored = ignored;
  }

  /** A list of names; none where the key is left out. */
  Set<String> named(JsonEntry entry, String key) {
    Set<String> ids = new TreeSet<>();
    List<JsonNode> list = entry.given(key) ? entry.list(key) : List.of();
    for (int i = 0; i < list.size(); i++) {
      String place = entry.at(key + "[" + i + "]");
      if (list.get(i).isTextual()) {
        find(list.get(i).textValue(), place).ifPresent(ids::add);
      } else {
        findings.add(Finding.of("json.not-text", place));
      }
    }
    return ids;
  }

  /**
   * A list of objects with {@code species} and {@code count}.
   *
   * @param addsUp whether several entries of a species add up; otherwise the second is refused
   */
  Map<String, Integer> counted(JsonEntry entry, String key, int most, boolean addsUp) {
    Map<String, Integer> counts = new TreeMap<>();
    for (JsonEntry each : entries(entry, key)) {
      Optional<String> id = species(each);
      Optional<Integer> count = each.wholeNumber("count", new Range(1, most));
      ignored.addAll(each.unread());
      if (id.isEmpty() || count.isEmpty()) {
        continue;
      }
      int sum = counts.getOrDefault(id.get(), 0) + count.get();
      if (counts.containsKey(id.get()) && !addsUp) {
        findings.add(Finding.of("compose.species-twice", each.at("species"), id.get()));
      } else if (sum > most) {
        findings.add(Finding.of("json.out-of-scale", each.at("count"), sum, 1, most));
      } else {
        counts.put(id.get(), sum);
      }
    }
    return counts;
  }

  /** The objects of a list; none where the key is left out. */
  List<JsonEntry> entries(JsonEntry entry, String key) {
    List<JsonEntry> entries = new ArrayList<>();
    List<JsonNode> list = entry.given(key) ? entry.list(key) : List.of();
    for (int i = 0; i < list.size(); i++) {
      entries.add(new JsonEntry(list.get(i), entry.at(key + "[" + i + "]"), findings));
    }
    return entries;
  }

  Optional<String> species(JsonEntry entry) {
    return entry.text("species").flatMap(name -> find(name, entry.at("species")));
  }

  private Optional<String> find(String name, String place) {
    Checked<String> found = naming.find(name, place);
    findings.addAll(found.findings());
    return found.value();
  }
}
