package guildwood.importing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What a person decided while looking an import through.
 *
 * @param names by the name as the table writes it
 * @param cells what to read instead of what stands in a cell
 * @param leftOut numbers of rows not to bring in
 * @param importRules whether a value of the table rules over one of the library that says otherwise
 */
public record Decisions(Map<String, NameDecision> names, Map<Place, String> cells, Set<Long> leftOut, boolean importRules) {
  public static final Decisions NONE = new Decisions(Map.of(), Map.of(), Set.of(), false);

  /** A cell; the column counts from 0. */
  public record Place(long row, int column) {}

  public Decisions {
    names = Map.copyOf(names);
    cells = Map.copyOf(cells);
    leftOut = Set.copyOf(leftOut);
  }

  public Decisions with(String writtenName, NameDecision decision) {
    Map<String, NameDecision> all = new HashMap<>(names);
    all.put(writtenName, decision);
    return new Decisions(all, cells, leftOut, importRules);
  }

  public Decisions with(Place place, String text) {
    Map<Place, String> all = new HashMap<>(cells);
    all.put(place, text);
    return new Decisions(names, all, leftOut, importRules);
  }

  public Decisions withoutRow(long row) {
    Set<Long> all = new HashSet<>(leftOut);
    all.add(row);
    return new Decisions(names, cells, all, importRules);
  }

  public Decisions withImportRules(boolean rules) {
    return new Decisions(names, cells, leftOut, rules);
  }
}
