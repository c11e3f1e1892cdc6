package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The names of a species with those that a row adds. Names are only ever added: an order or a family that is there stays.
 *
 * @param changed whether anything was added
 * @param refused what could not be, and why
 */
record NamesGrown(SpeciesNames names, boolean changed, List<Refused> refused) {

  /** Other names in the row that stay out. */
  record Refused(Kind kind, Finding reason) {}

  /** @param isTaken whether a scientific name belongs to another species already */
  static NamesGrown of(SpeciesNames before, RowReading row, Predicate<String> isTaken) {
    List<Refused> refused = new ArrayList<>();
    List<String> common = new ArrayList<>(before.commonNames());
    row.common().stream().filter(name -> common.stream().noneMatch(name::equalsIgnoreCase)).forEach(common::add);
    List<String> synonyms = new ArrayList<>(before.synonyms());
    for (String synonym : row.synonyms()) {
      String folded = SpeciesNames.folded(synonym);
      boolean there = folded.equals(SpeciesNames.folded(before.scientificName())) || synonyms.stream().map(SpeciesNames::folded).anyMatch(folded::equals);
      if (!there && isTaken.test(synonym)) {
        refused.add(new Refused(Kind.SYNONYMS, Finding.of("species.taken", "", synonym)));
      } else if (!there) {
        synonyms.add(synonym);
      }
    }
    boolean differs = !row.family().isEmpty() && !before.family().isEmpty() && !sameFamily(row.family(), before.family());
    if (differs) {
      refused.add(new Refused(Kind.FAMILY, Finding.of("import.family-differs", "", before.family())));
    }
    String family = before.family().isEmpty() ? row.family() : before.family();
    return kept(before, new SpeciesNames(before.scientificName(), common, family, synonyms), refused);
  }

  private static NamesGrown kept(SpeciesNames before, SpeciesNames grown, List<Refused> refused) {
    Optional<Finding> tooLong = SpeciesNames.read(grown.scientificName(), String.join("; ", grown.commonNames()), grown.family(),
        String.join("; ", grown.synonyms())).findings().stream().findFirst();
    if (tooLong.isPresent()) {
      refused.add(new Refused(tooLong.get().field().equals("synonyms") ? Kind.SYNONYMS : Kind.COMMON_NAMES, tooLong.get()));
      return new NamesGrown(before, false, refused);
    }
    return new NamesGrown(grown, !grown.equals(before), refused);
  }

  private static boolean sameFamily(String one, String other) {
    return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }
}
