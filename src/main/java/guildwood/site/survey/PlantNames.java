package guildwood.site.survey;

import guildwood.site.survey.IndicatorLibrary.Form;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.species.SpeciesNames;
import guildwood.species.names.NameIndex;
import guildwood.species.names.NameMatch;
import guildwood.species.names.NameMatch.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The indicator plants by any name people write: scientific ones with or without authors, synonyms, and common
 * names. A common name is taken only where it is written in full and means one plant; everything less is a suggestion.
 */
public final class PlantNames {
  private static final int MOST_SUGGESTIONS = 5;
  private static final int SHORTEST_WORD = 3;

  private final List<Plant> plants;
  private final Map<String, Plant> bySpecies = new LinkedHashMap<>();
  private final NameIndex scientific = new NameIndex();
  private final NameIndex common = new NameIndex();
  private final Map<String, List<String>> byCommonName = new HashMap<>();

  public PlantNames(List<Plant> plants) {
    this.plants = List.copyOf(plants);
    for (Plant plant : plants) {
      bySpecies.put(plant.species(), plant);
      scientific.add(plant.species());
      byCommonName.computeIfAbsent(folded(plant.commonName()), name -> new ArrayList<>()).add(plant.species());
      common.add(plant.commonName());
    }
    plants.forEach(p -> p.synonyms().forEach(s -> scientific.addSynonym(s, p.species())));
  }

  public Optional<Plant> plant(String species) {
    return Optional.ofNullable(bySpecies.get(species));
  }

  /** What a written name is taken for, or the plants it may mean. */
  public NameMatch find(String written) {
    Optional<NameMatch> known = scientific.match(written);
    if (known.isPresent()) {
      return known.get();
    }
    List<String> named = byCommonName.getOrDefault(folded(written), List.of());
    if (named.size() == 1) {
      return new NameMatch(Kind.SYNONYM, Optional.of(named.get(0)), List.of());
    }
    Set<String> near = new LinkedHashSet<>(named);
    near.addAll(scientific.find(written).suggestions());
    NameMatch alike = common.find(written);
    alike.name().ifPresent(name -> near.addAll(byCommonName.get(folded(name))));
    alike.suggestions().forEach(name -> near.addAll(byCommonName.get(folded(name))));
    near.addAll(withWords(written));
    List<String> suggestions = near.stream().limit(MOST_SUGGESTIONS).toList();
    return new NameMatch(suggestions.isEmpty() ? Kind.UNKNOWN : Kind.LIKE, Optional.empty(), suggestions);
  }

  /** Plants whose names contain all words of a search, or whose description does. */
  public List<Plant> search(String words, IndicatorLibrary.Region region) {
    List<String> wanted = words(words);
    return plants.stream().filter(p -> p.regions().contains(region)).filter(p -> {
      String text = folded(p.species() + " " + p.commonName() + " " + String.join(" ", p.synonyms()) + " " + p.description());
      return wanted.stream().allMatch(text::contains);
    }).toList();
  }

  /**
   * The stratum a plant is counted in: that of its kind; seedlings, and names without a match, with the herbs. Nobody
   * notes the height of each plant here, so this stands in for the strata of the 50/20 rule.
   */
  String stratum(Optional<String> species, Occurrence.Stage stage) {
    Optional<Form> form = species.flatMap(this::plant).map(Plant::form);
    boolean woody = form.isPresent() && (form.get() == Form.TREE || form.get() == Form.SHRUB || form.get() == Form.CLIMBER);
    return woody && stage != Occurrence.Stage.SEEDLING ? form.get().name() : Form.HERB.name();
  }

  /** Plants whose names have all the words, then those that miss one of three or more. */
  private List<String> withWords(String written) {
    List<String> wanted = words(written).stream().filter(w -> w.length() >= SHORTEST_WORD).toList();
    List<String> found = new ArrayList<>();
    for (int missing = 0; missing <= (wanted.size() >= 3 ? 1 : 0) && !wanted.isEmpty(); missing++) {
      int most = missing;
      plants.stream().filter(p -> missing(wanted, p) == most).map(Plant::species).forEach(found::add);
    }
    return found;
  }

  private static long missing(List<String> wanted, Plant plant) {
    String text = folded(plant.commonName() + " " + plant.species());
    return wanted.stream().filter(w -> !text.contains(w) && !(w.endsWith("s") && text.contains(w.substring(0, w.length() - 1)))).count();
  }

  private static List<String> words(String text) {
    return List.of(folded(text).split("-")).stream().filter(w -> !w.isEmpty()).toList();
  }

  private static String folded(String name) {
    return SpeciesNames.slug(name.replaceAll("['’‘`]", ""));
  }
}
