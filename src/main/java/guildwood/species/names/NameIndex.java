package guildwood.species.names;

import guildwood.species.names.NameMatch.Kind;
import guildwood.species.names.ScientificName.Reserve;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A list of known names to look written ones up in. A typing error is never taken for a name: the near
 * ones are offered instead, because many good names differ in one letter ({@code Galium verum}, {@code G. vernum}).
 */
public final class NameIndex {
  private static final int MOST_SUGGESTIONS = 3;

  private final Map<String, String> byText = new LinkedHashMap<>();
  private final Map<String, String> byName = new LinkedHashMap<>();
  private final Map<String, Set<String>> byStem = new LinkedHashMap<>();
  private final Map<String, String> synonyms = new LinkedHashMap<>();
  private final NearSpellings spellings = new NearSpellings();

  public static NameIndex of(Collection<String> names) {
    NameIndex index = new NameIndex();
    names.forEach(index::add);
    return index;
  }

  /** Adds a name as it stands in the list; it need not be a scientific name (codes and labels match as text). */
  public void add(String name) {
    String text = Spelling.folded(name);
    byText.putIfAbsent(text, name);
    spellings.add(text, name);
    NameReader.read(name).value().ifPresent(read -> {
      byName.putIfAbsent(key(read), name);
      spellings.add(key(read), name);
      byStem.computeIfAbsent(stemKey(read), k -> new LinkedHashSet<>()).add(name);
    });
  }

  /** Adds another name under which a listed one is known. */
  public void addSynonym(String synonym, String listed) {
    String key = NameReader.read(synonym).value().map(NameIndex::key).orElse(Spelling.folded(synonym));
    synonyms.putIfAbsent(key, listed);
  }

  /** What a written name is taken for; where for nothing, the near ones are looked for. */
  public NameMatch find(String written) {
    return match(written).orElseGet(() -> NameMatch.none(
        NameReader.read(written).value().map(this::suggestions).orElseGet(() -> spellings.near(Spelling.folded(written), MOST_SUGGESTIONS))));
  }

  /** What a written name is taken for; empty where for nothing. Does not look for near ones, and is quick. */
  public Optional<NameMatch> match(String written) {
    String text = byText.get(Spelling.folded(written));
    return text != null
        ? Optional.of(NameMatch.of(Kind.SAME, text))
        : NameReader.read(written).value().filter(NameIndex::isSure).flatMap(this::taken);
  }

  private static boolean isSure(ScientificName name) {
    return name.reserve() != Reserve.SPECIES_OPEN && name.reserve() != Reserve.UNCERTAIN;
  }

  private Optional<NameMatch> taken(ScientificName name) {
    Kind exact = name.reserve() == Reserve.WIDE ? Kind.SPECIES_OF : Kind.SAME;
    String same = byName.get(key(name));
    if (same != null) {
      return Optional.of(NameMatch.of(exact, same));
    }
    String listed = synonyms.get(key(name));
    if (listed != null) {
      return Optional.of(NameMatch.of(Kind.SYNONYM, listed));
    }
    Set<String> spelt = byStem.getOrDefault(stemKey(name), Set.of());
    if (spelt.size() == 1 && !name.epithet().isEmpty()) {
      return Optional.of(NameMatch.of(Kind.SPELLING, spelt.iterator().next()));
    }
    if (!name.hybrid() && name.epithet().startsWith("x") && name.epithet().length() > 3) {
      // The hybrid sign written as a letter without a space: Quercus xbebbiana.
      String hybrid = byName.get(key(name).replaceFirst(" x", " "));
      if (hybrid != null) {
        return Optional.of(NameMatch.of(Kind.SPELLING, hybrid));
      }
    }
    return name.isBelowSpecies() ? speciesOf(name) : Optional.empty();
  }

  private Optional<NameMatch> speciesOf(ScientificName name) {
    String species = byName.get(Spelling.folded(name.species()));
    if (species == null) {
      species = synonyms.get(Spelling.folded(name.species()));
    }
    return Optional.ofNullable(species).map(s -> NameMatch.of(Kind.SPECIES_OF, s));
  }

  private List<String> suggestions(ScientificName name) {
    if (name.genus().length() == 2 && name.genus().endsWith(".")) {
      String end = " " + name.epithet();
      return byName.entrySet().stream()
          .filter(e -> e.getKey().endsWith(end) && e.getKey().charAt(0) == Character.toLowerCase(name.genus().charAt(0)))
          .map(Map.Entry::getValue).limit(MOST_SUGGESTIONS).toList();
    }
    if (name.reserve() == Reserve.UNCERTAIN && byName.containsKey(Spelling.folded(name.species()))) {
      return List.of(byName.get(Spelling.folded(name.species())));
    }
    return name.epithet().isEmpty() ? List.of() : spellings.near(Spelling.folded(name.species()), MOST_SUGGESTIONS);
  }

  private static String key(ScientificName name) {
    return Spelling.folded(name.canonical());
  }

  /** Genus, stem of the epithet, and the last lower epithet without its rank. */
  private static String stemKey(ScientificName name) {
    StringBuilder key = new StringBuilder(Spelling.folded(name.genus())).append(' ').append(Spelling.stem(name.epithet()));
    name.lower().forEach(rank -> key.append(' ').append(Spelling.stem(rank.epithet())));
    return key.append(' ').append(Spelling.folded(name.group() + name.cultivar() + String.join("", name.parents()))).toString();
  }
}
