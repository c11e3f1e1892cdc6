package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whether every name in the shipped library leads to one plant only. */
class SeedNamesTest {
  private final List<String> wrong = new ArrayList<>();

  @Test
  void noScientificNameOrSynonymStandsForTwoPlants() {
    Map<String, String> owners = new HashMap<>();
    for (Species species : Shipped.species()) {
      Stream.concat(Stream.of(species.scientificName()), species.synonyms().stream()).forEach(name -> {
        String other = owners.put(SpeciesNames.folded(name), species.id());
        if (other != null) {
          wrong.add(name + " of " + other + " and " + species.id());
        }
      });
    }
    assertEquals(List.of(), wrong);
  }

  /** The first common name is the one that lists and plans show. */
  @Test
  void noTwoPlantsAreShownByTheSameName() {
    Map<String, String> owners = new HashMap<>();
    for (Species species : Shipped.species()) {
      if (species.commonNames().isEmpty()) {
        wrong.add(species.id() + " has no common name");
      }
      String other = owners.put(SpeciesNames.folded(species.name()), species.id());
      if (other != null) {
        wrong.add(species.name() + " for " + other + " and " + species.id());
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void aGenusBelongsToOneFamily() {
    Map<String, TreeSet<String>> families = new TreeMap<>();
    Shipped.species().forEach(s -> families.computeIfAbsent(s.genus(), g -> new TreeSet<>()).add(s.family()));
    families.forEach((genus, family) -> {
      if (family.size() != 1 || !family.first().endsWith("aceae")) {
        wrong.add(genus + " in " + family);
      }
    });
    assertEquals(List.of(), wrong);
  }
}
