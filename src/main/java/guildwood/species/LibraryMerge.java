package guildwood.species;

import guildwood.kernel.Source;
import guildwood.species.LibraryExtract.Beside;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What of a whole library's contents another library does not hold yet. A species is the same under the same
 * scientific name or a synonym of it; it keeps the names and the id it has. The same value from the same source is
 * kept once; where values disagree both are kept, and the one that rules goes on ruling. Species that lie in the bin
 * stay there, and what is brought about them is left out.
 *
 * @param additions what to keep, with ids that are free, in the order it was brought
 * @param replaced sources that the empty library has from the start and that were brought otherwise
 * @param sameSpecies species brought that were there already
 * @param sameValues values brought that were there already
 * @param disagreeing values added beside another one about the same topic
 * @param inBin scientific names of what was left out because it lies in the bin
 */
public record LibraryMerge(
    LibraryContents additions, List<Source> replaced, int sameSpecies, int sameValues, int disagreeing, List<String> inBin) {
  public LibraryMerge {
    replaced = List.copyOf(replaced);
    inBin = List.copyOf(inBin);
  }

  /**
   * @param before what the owner has already of the library's species; it stays
   * @param isFree whether a species may have an id as far as addresses go
   */
  public static LibraryMerge of(SpeciesLibrary library, Beside before, LibraryContents brought,
      Predicate<String> isFree) {
    return new Work(library, brought, isFree).merge(before);
  }

  private static final class Work {
    private final SpeciesLibrary library;
    private final LibraryContents brought;
    private final Predicate<String> isFree;
    private final Map<String, Species> here = new HashMap<>();
    private final Map<String, String> sourceIds = new HashMap<>();
    private final Map<String, String> speciesIds = new HashMap<>();
    private final List<Source> sources = new ArrayList<>();
    private final List<Source> replaced = new ArrayList<>();
    private final Map<String, SpeciesNames> species = new LinkedHashMap<>();
    private final List<String> inBin = new ArrayList<>();
    private int sameSpecies;
    private int sameValues;
    private int disagreeing;

    Work(SpeciesLibrary library, LibraryContents brought, Predicate<String> isFree) {
      this.library = library;
      this.brought = brought;
      this.isFree = isFree;
      library.species().forEach(s -> here.put(s.id(), s));
      library.binned().forEach(s -> here.put(s.id(), s));
    }

    LibraryMerge merge(Beside before) {
      sources();
      species();
      List<WrittenStatement> statements = statements();
      List<Holding> have = brought.holdings().stream().filter(h -> speciesIds.containsKey(h.speciesId()))
          .map(h -> new Holding(speciesIds.get(h.speciesId()), h.plantsOnHand(), h.plantsToPropagate(), h.priceCents()))
          .filter(h -> before.holdings().getOrDefault(h.speciesId(), Holding.none(h.speciesId())).equals(Holding.none(h.speciesId())))
          .toList();
      return new LibraryMerge(new LibraryContents(sources, species, statements, have, notes(before.notes())), replaced, sameSpecies, sameValues,
          disagreeing, inBin);
    }

    /** A source is the same where all but its id is; another one that has its id takes a free one. */
    private void sources() {
      Map<Source, String> known = new HashMap<>();
      library.sources().values().forEach(s -> known.put(anonymous(s), s.id()));
      Set<String> taken = new HashSet<>(library.sources().keySet());
      brought.sources().forEach(s -> taken.add(s.id()));
      for (Source source : brought.sources()) {
        Source same = library.sources().get(source.id());
        if (source.equals(same)) {
          sourceIds.put(source.id(), source.id());
        } else if (source.id().equals(Source.OWN_EXPERIENCE) && same != null) {
          // Whatever it is called, it is the owner's own experience; an empty library takes the name that is brought.
          sourceIds.put(source.id(), source.id());
          if (library.isEmpty()) {
            replaced.add(source);
          }
        } else if (known.containsKey(anonymous(source))) {
          sourceIds.put(source.id(), known.get(anonymous(source)));
        } else {
          String id = same == null ? source.id() : free(source.id(), taken);
          sources.add(new Source(id, source.kind(), source.author(), source.title(), source.year(), source.locator()));
          sourceIds.put(source.id(), id);
        }
      }
    }

    private static Source anonymous(Source source) {
      return new Source("any", source.kind(), source.author(), source.title(), source.year(), source.locator());
    }

    private static String free(String wanted, Set<String> taken) {
      String id = wanted;
      for (int n = 2; !taken.add(id); n++) {
        id = wanted + "-" + n;
      }
      return id;
    }

    private void species() {
      Map<String, Species> byName = new HashMap<>();
      here.values().forEach(s -> s.synonyms().forEach(name -> byName.putIfAbsent(SpeciesNames.folded(name), s)));
      here.values().forEach(s -> byName.put(SpeciesNames.folded(s.scientificName()), s));
      Set<String> taken = new HashSet<>(here.keySet());
      brought.species().forEach((id, names) -> {
        Species same = byName.get(SpeciesNames.folded(names.scientificName()));
        if (same == null) {
          String kept = isFree.test(id) && !taken.contains(id) ? id : free(id + "-2", taken);
          taken.add(kept);
          species.put(kept, names);
          speciesIds.put(id, kept);
        } else if (same.removed()) {
          inBin.add(names.scientificName());
        } else {
          sameSpecies++;
          speciesIds.put(id, same.id());
        }
      });
    }

    private List<WrittenStatement> statements() {
      Map<String, Set<Said>> said = new HashMap<>();
      List<WrittenStatement> added = new ArrayList<>();
      for (WrittenStatement written : brought.statements()) {
        String id = speciesIds.get(written.speciesId());
        if (id != null) {
          Optional<Species> same = Optional.ofNullable(here.get(id));
          Set<Said> before = said.computeIfAbsent(id, i -> same.map(this::saidOf).orElseGet(LinkedHashSet::new));
          add(written, id, same, before, added);
        }
      }
      return added;
    }

    private void add(WrittenStatement written, String id, Optional<Species> same, Set<Said> before, List<WrittenStatement> added) {
      String source = sourceIds.get(written.sourceId());
      if (same.isPresent() && !before.add(Said.of(written, source))) {
        sameValues++;
        return;
      }
      boolean spoken = same.stream().flatMap(s -> s.statements().stream())
          .anyMatch(s -> s.trait().key().equals(written.trait()) && s.item().equals(written.item()));
      disagreeing += spoken ? 1 : 0;
      added.add(new WrittenStatement(0, id, written.trait(), written.item(), written.entered(), source, written.evidence(),
          written.chosen() && !spoken, written.note()));
    }

    /** The same note about the same species from the same source is kept once. */
    private List<SpeciesNote> notes(List<SpeciesNote> before) {
      Set<SpeciesNote> kept = new HashSet<>();
      before.forEach(n -> kept.add(new SpeciesNote(0, n.speciesId(), n.text(), n.sourceId())));
      return brought.notes().stream().filter(n -> speciesIds.containsKey(n.speciesId()))
          .map(n -> new SpeciesNote(0, speciesIds.get(n.speciesId()), n.text(), sourceIds.get(n.sourceId())))
          .filter(n -> !kept.contains(n)).toList();
    }

    private Set<Said> saidOf(Species same) {
      Set<Said> said = new LinkedHashSet<>();
      same.statements().forEach(s -> said.add(new Said(s.trait().key(), s.item(), s.sourceId(), s.value())));
      library.unread().stream().filter(s -> s.speciesId().equals(same.id())).forEach(s -> said.add(Said.of(s, s.sourceId())));
      return said;
    }
  }

  /** What makes two values the same: as read, or where one cannot be read, as written. */
  private record Said(String trait, String item, String source, Object value) {
    static Said of(WrittenStatement written, String source) {
      return new Said(written.trait(), written.item(), source,
          written.read().value().map(s -> (Object) s.value()).orElse(written.entered()));
    }
  }
}
