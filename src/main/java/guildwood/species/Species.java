package guildwood.species;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A species or cultivar with all that is stated about it, and the readings that rule.
 *
 * <p>Where several sources speak about one topic, the statement chosen by the owner rules; without a
 * choice the first one kept does, or all of them together where the trait adds up. What nobody states is
 * not known: neither no nor zero.
 *
 * @param id key made from the accepted name, for example {@code amelanchier-alnifolia}
 * @param scientificName accepted name without authors
 * @param commonNames in the order people should see them; may be empty
 * @param family may be empty
 * @param synonyms other scientific names that find it
 * @param removed true while it lies in the bin, from which it can be restored
 */
public record Species(
    String id,
    String scientificName,
    List<String> commonNames,
    String family,
    List<String> synonyms,
    boolean removed,
    List<Statement> statements) {
  private static final Set<String> EATEN = Set.of("food", "raw-food", "cooked-food");

  public Species {
    commonNames = List.copyOf(commonNames);
    synonyms = List.copyOf(synonyms);
    statements = List.copyOf(statements);
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("not a species id: " + id);
    }
    if (scientificName.isBlank()) {
      throw new IllegalArgumentException("species " + id + " has no name");
    }
  }

  /** The name to show first: the first common name, otherwise the scientific one. */
  public String name() {
    return commonNames.isEmpty() ? scientificName : commonNames.get(0);
  }

  /** First word of the scientific name, without a hybrid sign. */
  public String genus() {
    String bare = scientificName.startsWith("× ") ? scientificName.substring(2) : scientificName;
    int space = bare.indexOf(' ');
    return space < 0 ? bare : bare.substring(0, space);
  }

  /** All statements by topic, in the order they are kept. */
  public Map<Statement.Topic, List<Statement>> byTopic() {
    Map<Statement.Topic, List<Statement>> topics = new LinkedHashMap<>();
    for (Statement statement : statements) {
      topics.computeIfAbsent(statement.topic(), t -> new ArrayList<>()).add(statement);
    }
    return topics;
  }

  /** The statement that rules for a trait without items. */
  public Optional<Statement> ruling(Trait trait) {
    return ruling(trait, "");
  }

  /** The statement that rules for a trait and item. */
  public Optional<Statement> ruling(Trait trait, String item) {
    Statement first = null;
    for (Statement statement : statements) {
      if (statement.trait() == trait && statement.item().equals(item)) {
        if (statement.chosen()) {
          return Optional.of(statement);
        }
        first = first == null ? statement : first;
      }
    }
    return Optional.ofNullable(first);
  }

  /** Whether a statement of this species counts, be it alone or, where the trait adds up, with others. */
  public boolean rules(Statement statement) {
    Statement ruling = ruling(statement.trait(), statement.item()).orElseThrow();
    return statement == ruling || (statement.trait().addsUp() && !ruling.chosen());
  }

  /** The ruling statements of a trait with items, one for each item. */
  public List<Statement> rulingItems(Trait trait) {
    Map<String, Statement> ruling = new LinkedHashMap<>();
    for (Statement statement : statements) {
      if (statement.trait() == trait) {
        ruling.merge(statement.item(), statement, (a, b) -> !a.chosen() && b.chosen() ? b : a);
      }
    }
    return List.copyOf(ruling.values());
  }

  public Optional<Range> range(Trait trait) {
    return ruling(trait).map(s -> ((TraitValue.Span) s.value()).range());
  }

  /** The middle of a range, for sizes. */
  public OptionalDouble middle(Trait trait) {
    return range(trait).map(r -> OptionalDouble.of(r.middle())).orElse(OptionalDouble.empty());
  }

  /** The word that rules; where several do, the first in the trait's own order. */
  public Optional<String> word(Trait trait) {
    List<String> ruling = words(trait);
    return trait.words().stream().filter(ruling::contains).findFirst();
  }

  /**
   * The words that rule, whether the trait takes one or several; empty where nothing is known. Where the
   * trait adds up, those of all its statements together, or of the chosen ones where some are chosen.
   */
  public List<String> words(Trait trait) {
    return statements.stream().filter(s -> s.trait() == trait && rules(s))
        .flatMap(s -> s.value() instanceof TraitValue.Word one ? Stream.of(one.word()) : ((TraitValue.Words) s.value()).words().stream())
        .distinct().sorted().toList();
  }

  /** The layers it can fill; empty where not known. */
  public Set<Layer> layers() {
    EnumSet<Layer> layers = EnumSet.noneOf(Layer.class);
    words(Trait.LAYER).forEach(word -> layers.add(Layer.ofKey(word)));
    return layers;
  }

  /** Whether it does a job: yes, no, or not known. */
  public Optional<Boolean> does(GuildFunction function) {
    return ruling(Trait.FUNCTION, function.key()).map(s -> ((TraitValue.YesNo) s.value()).yes());
  }

  /** What to be careful about, each statement of it: law first, then poison, then the rest. */
  public List<Statement> cautions() {
    return statements.stream().filter(s -> s.trait() == Trait.CAUTION)
        .sorted(Comparator.comparing(s -> CautionKind.of(s.item()).orElse(CautionKind.OTHER))).toList();
  }

  /** Whether anything says that people eat it. */
  public boolean offersFood() {
    return words(Trait.USE).stream().anyMatch(EATEN::contains)
        || statements.stream().anyMatch(s -> s.trait() == Trait.HARVEST);
  }

  /** Months of bloom; empty optional where not known. */
  public Optional<Months> bloom() {
    return ruling(Trait.BLOOM).map(s -> ((TraitValue.InMonths) s.value()).months());
  }

  /** Harvested parts with their months; months are empty where only the part is known. */
  public Map<String, Months> harvest() {
    Map<String, Months> parts = new LinkedHashMap<>();
    for (Statement statement : rulingItems(Trait.HARVEST)) {
      parts.put(statement.item(), ((TraitValue.InMonths) statement.value()).months());
    }
    return parts;
  }
}
