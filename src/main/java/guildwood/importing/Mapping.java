package guildwood.importing;

import guildwood.kernel.Finding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What every column of a table means.
 *
 * @param heading where the headers stand
 * @param columns in the order of the table
 */
public record Mapping(Heading heading, List<ColumnMapping> columns) {
  public Mapping {
    columns = List.copyOf(columns);
  }

  public Optional<ColumnMapping> column(int column) {
    return columns.stream().filter(c -> c.column() == column).findFirst();
  }

  /** The column with a kind of meaning, where one has it. */
  public Optional<ColumnMapping> first(Meaning.Kind kind) {
    return columns.stream().filter(c -> c.meaning().is(kind)).findFirst();
  }

  public boolean has(Meaning.Kind kind) {
    return first(kind).isPresent();
  }

  /** Whether the table holds one value a row rather than one species a row. */
  public boolean isLong() {
    return has(Meaning.Kind.TRAIT_NAME) && has(Meaning.Kind.TRAIT_VALUE);
  }

  /** The same with one column changed. */
  public Mapping with(ColumnMapping changed) {
    List<ColumnMapping> all = new ArrayList<>(columns);
    all.replaceAll(c -> c.column() == changed.column() ? changed : c);
    return new Mapping(heading, all);
  }

  /**
   * This mapping for another table: its columns found by their headers. A header that stands there several times is
   * taken in order; columns of the table that are not mapped here keep what {@code otherwise} says.
   */
  public Mapping onto(Mapping otherwise) {
    Map<String, List<ColumnMapping>> byHeader = new HashMap<>();
    columns.forEach(c -> byHeader.computeIfAbsent(HeaderWords.folded(c.header()), h -> new ArrayList<>()).add(c));
    List<ColumnMapping> all = new ArrayList<>();
    for (ColumnMapping column : otherwise.columns) {
      List<ColumnMapping> same = byHeader.getOrDefault(HeaderWords.folded(column.header()), Collections.emptyList());
      all.add(same.isEmpty() ? column : same.remove(0).at(column.column()));
    }
    return new Mapping(otherwise.heading, all);
  }

  /** What stands against bringing the table in; columns that wait for their unit are left out, not refused. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    boolean named = has(Meaning.Kind.SCIENTIFIC_NAME) || has(Meaning.Kind.GENUS) || has(Meaning.Kind.SPECIES_ID)
        || has(Meaning.Kind.COMMON_NAMES);
    if (!named) {
      findings.add(Finding.of("import.no-name-column", ""));
    }
    Set<Meaning> once = new HashSet<>();
    for (ColumnMapping column : columns) {
      if (column.meaning().kind().onlyOnce() && !once.add(column.meaning())) {
        findings.add(Finding.of("import.meaning-twice", "column-" + column.column(), column.header()));
      }
    }
    return List.copyOf(findings);
  }
}
