package guildwood.guild.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds the species a file speaks about: by id, by scientific name, or by an older name of one species only. */
final class SpeciesNaming {
  private static final int MOST_SUGGESTED = 5;
  private static final String SEVERAL = "";

  private final Map<String, String> ids = new HashMap<>();
  private final TreeMap<String, String> namesById = new TreeMap<>();

  SpeciesNaming(SpeciesLibrary library) {
    for (Species species : library.species()) {
      species.synonyms().forEach(name -> ids.merge(SpeciesNames.folded(name), species.id(), (a, b) -> a.equals(b) ? a : SEVERAL));
    }
    for (Species species : library.species()) {
      ids.put(SpeciesNames.folded(species.scientificName()), species.id());
      namesById.put(species.id(), species.scientificName());
    }
  }

  /** The id of the species, or a finding that names others of its genus. */
  Checked<String> find(String written, String place) {
    if (namesById.containsKey(written)) {
      return Checked.of(written);
    }
    String id = ids.getOrDefault(SpeciesNames.folded(written), SEVERAL);
    if (!id.equals(SEVERAL)) {
      return Checked.of(id);
    }
    List<String> kin = kin(written);
    return Checked.refused(kin.isEmpty()
        ? Finding.of("compose.species-unknown", place, written)
        : Finding.of("compose.species-maybe", place, written, String.join(", ", kin)));
  }

  private List<String> kin(String written) {
    String genus = SpeciesNames.folded(written).split("-")[0];
    return genus.isEmpty() ? List.of()
        : namesById.subMap(genus, genus + "-\uFFFF").keySet().stream().limit(MOST_SUGGESTED).toList();
  }
}
