package guildwood.importing;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.names.NameReader;
import guildwood.species.names.ScientificName;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Tells for row after row which species it is about: one of the library, one of an earlier row, or a new one. */
final class RowSpecies {
  /** Words that are no authors: 'Jersey tea' behind New, 'alba?' behind a genus. */
  private static final Pattern ORDINARY_WORDS = Pattern.compile("^\\p{Ll}|\\s(?!(von|van|vander|und|and|der|den|des|del|fil|non|auct|sensu|hort|emend|nom|ined|pers|comb|nov)\\b)\\p{Ll}{3,}(?!\\.)(\\s|$)");

  private final NameFinder finder;
  private final Map<String, NameDecision> decisions;
  private final Map<String, String> newIds = new HashMap<>();
  private final Set<String> takenIds = new HashSet<>();

  RowSpecies(SpeciesLibrary library, Map<String, NameDecision> decisions) {
    this.finder = new NameFinder(library);
    this.decisions = decisions;
  }

  /**
   * What a row is about.
   *
   * @param known the species of the library, where it is one
   * @param names of the new one, without authors; empty where the row is not brought
   * @param reason why not
   */
  record Taken(RowFate fate, String speciesId, Optional<Species> known, Optional<SpeciesNames> names, List<String> near, Optional<Finding> reason) {
    static Taken out(RowFate fate, List<String> near, Finding reason) {
      return new Taken(fate, "", Optional.empty(), Optional.empty(), near, Optional.ofNullable(reason));
    }
  }

  Taken take(RowReading row) {
    String written = row.writtenName().isEmpty() ? String.join("; ", row.common()) : row.writtenName();
    NameDecision decision = decisions.get(written);
    if (decision != null && decision.choice() == NameDecision.Choice.LEAVE_OUT) {
      return Taken.out(RowFate.LEFT_OUT, List.of(), null);
    }
    if (decision != null && decision.choice() == NameDecision.Choice.SAME_AS && finder.byId(decision.speciesId()).isPresent()) {
      return known(finder.byId(decision.speciesId()).get());
    }
    Optional<Species> byId = row.speciesId().isEmpty() ? Optional.empty() : finder.byId(row.speciesId());
    if (byId.isPresent() && (row.writtenName().isEmpty() || finder.same(row.writtenName()).equals(byId))) {
      return known(byId.get());
    }
    return row.writtenName().isEmpty() ? nameless(row) : named(row, decision);
  }

  /** Whether a scientific name is that of another species of the library. */
  boolean belongsToAnother(String name, String speciesId) {
    return finder.same(name).filter(s -> !s.id().equals(speciesId)).isPresent();
  }

  private Taken nameless(RowReading row) {
    List<String> called = finder.called(row.common()).stream().map(Species::id).limit(3).toList();
    boolean total = row.common().stream().anyMatch(name -> name.matches("(?i)(sub|grand )?total.*|sum|count|average"));
    String code = total ? "import.total-row" : !row.speciesId().isEmpty() ? "import.no-such-id" : called.isEmpty() ? "import.no-name" : "import.common-name-only";
    return Taken.out(RowFate.REFUSED, called, Finding.of(code, "", row.speciesId()));
  }

  private Taken named(RowReading row, NameDecision decision) {
    Checked<ScientificName> read = NameReader.read(row.writtenName());
    if (read.isRefused()) {
      return Taken.out(RowFate.REFUSED, List.of(), read.findings().get(0));
    }
    Optional<Species> same = finder.same(row.writtenName());
    if (same.isPresent() && decision == null) {
      return known(same.get());
    }
    Optional<Finding> notAName = decision == null ? NotAName.reason(row.writtenName()) : Optional.empty();
    if (notAName.isPresent()) {
      List<String> called = finder.called(List.of(row.writtenName())).stream().filter(s -> !s.removed()).map(Species::id).limit(3).toList();
      return Taken.out(RowFate.REFUSED, called, notAName.get());
    }
    if (isUncertain(row.writtenName(), read.orThrow()) && decision == null) {
      return Taken.out(RowFate.REFUSED, near(row), Finding.of("import.name-uncertain", "", row.writtenName()));
    }
    String canonical = read.orThrow().canonical();
    Checked<SpeciesNames> names = SpeciesNames.read(canonical, "", "", "");
    if (names.isRefused()) {
      return Taken.out(RowFate.REFUSED, List.of(), names.findings().get(0));
    }
    Optional<Species> clash = finder.same(canonical);
    if (clash.isPresent()) {
      return known(clash.get());
    }
    return fresh(row, names.orThrow(), decision);
  }

  /** 'Ribes cf. nigrum', 'Ribes nigrum?', and a second word that is no epithet: not to be kept as the genus alone. */
  private static boolean isUncertain(String written, ScientificName name) {
    boolean halfRead = name.epithet().isEmpty() && name.parents().isEmpty() && name.reserve() != ScientificName.Reserve.SPECIES_OPEN
        && name.lower().isEmpty() && ORDINARY_WORDS.matcher(name.authors()).find();
    return name.reserve() == ScientificName.Reserve.UNCERTAIN || written.contains("?") || halfRead;
  }

  private Taken fresh(RowReading row, SpeciesNames names, NameDecision decision) {
    String key = SpeciesNames.folded(names.scientificName());
    String before = newIds.get(key);
    if (before != null) {
      return new Taken(RowFate.NEW_AGAIN, before, Optional.empty(), Optional.of(names), List.of(), Optional.empty());
    }
    String id = freeId(row.speciesId().matches("[a-z0-9]+(-[a-z0-9]+)*") && row.speciesId().length() <= 100 ? row.speciesId() : names.id());
    newIds.put(key, id);
    List<String> near = decision == null ? near(row) : List.of();
    return new Taken(near.isEmpty() ? RowFate.NEW : RowFate.NEAR, id, Optional.empty(), Optional.of(names), near, Optional.empty());
  }

  private Taken known(Species species) {
    return species.removed()
        ? Taken.out(RowFate.REFUSED, List.of(), Finding.of("species.in-bin", "", species.scientificName()))
        : new Taken(RowFate.KNOWN, species.id(), Optional.of(species), Optional.of(SpeciesNames.of(species)), List.of(), Optional.empty());
  }

  private List<String> near(RowReading row) {
    // A name whose synonym the library keeps as a species of its own may be that one.
    return Stream.concat(finder.near(row.writtenName()).stream(), row.synonyms().stream().flatMap(s -> finder.same(s).stream()))
        .filter(s -> !s.removed()).map(Species::id).distinct().toList();
  }

  private String freeId(String wanted) {
    String id = wanted;
    for (int n = 2; finder.byId(id).isPresent() || id.equals("new") || !takenIds.add(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }
}
