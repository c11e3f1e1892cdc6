package guildwood.choosing;

import guildwood.fit.Verdict;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.HardinessZone;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.text.Normalizer;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The same questions answered one species at a time, in the plainest way, as the measure for the index.
 * Shares no code with it: it asks the species itself, and three-valued answers are optional booleans.
 */
final class PlainFilter {
  private static final Map<String, double[]> PH = Map.of(
      "very-strongly-acid", new double[] {4.5, 5.0}, "strongly-acid", new double[] {5.1, 5.5},
      "moderately-acid", new double[] {5.6, 6.0}, "slightly-acid", new double[] {6.1, 6.5},
      "neutral", new double[] {6.6, 7.3}, "slightly-alkaline", new double[] {7.4, 7.8},
      "moderately-alkaline", new double[] {7.9, 8.4});
  private static final Map<String, double[]> HEIGHT = Map.of(
      "under-30cm", new double[] {0, 0.3}, "30cm-1m", new double[] {0.3, 1}, "1m-2m", new double[] {1, 2},
      "2m-4m", new double[] {2, 4}, "4m-8m", new double[] {4, 8}, "8m-15m", new double[] {8, 15},
      "over-15m", new double[] {15, 1000});
  private static final Map<String, double[]> LIGHT = Map.of(
      "full-sun", new double[] {6, 16}, "part-shade", new double[] {3, 6}, "full-shade", new double[] {0, 3});
  private static final List<String> MOISTURE = List.of("very-dry", "dry", "moist", "wet", "waterlogged");

  private final Query query;
  private final Map<String, Verdict> verdicts;
  private final boolean bed;

  /** @param verdicts by species id; empty without a bed */
  PlainFilter(Query query, Map<String, Verdict> verdicts, boolean bed) {
    this.query = query;
    this.verdicts = verdicts;
    this.bed = bed;
  }

  boolean passes(Species species) {
    return (query.text().isBlank() || isNamed(species)) && query.chosen().keySet().stream().allMatch(facet -> passes(species, facet));
  }

  boolean passes(Species species, Facet facet) {
    if (facet == Facet.VERDICT && !bed || facet == Facet.WETLAND && query.region().isEmpty()) {
      return true;
    }
    if (facet == Facet.WITHOUT) {
      return query.chosen(facet).stream().noneMatch(option -> answer(species, facet, option).orElse(false));
    }
    boolean anyYes = false;
    boolean anyNotKnown = false;
    for (String option : query.chosen(facet)) {
      Optional<Boolean> answer = answer(species, facet, option);
      anyYes |= answer.orElse(false);
      anyNotKnown |= answer.isEmpty();
    }
    return anyYes || anyNotKnown && query.keeps(facet);
  }

  private Optional<Boolean> answer(Species s, Facet facet, String option) {
    return switch (facet) {
      case VERDICT -> verdicts.get(s.id()) == Verdict.NOT_KNOWN && !option.equals("not-known")
          ? Optional.empty() : Optional.of(verdicts.get(s.id()).key().equals(option));
      case LAYER -> s.layers().isEmpty() ? Optional.empty() : Optional.of(s.layers().contains(Layer.ofKey(option)));
      case FUNCTION -> does(s, option);
      case BLOOM -> s.bloom().filter(m -> !m.isEmpty()).map(m -> m.contains(month(option)));
      case HARVEST -> s.harvest().isEmpty() ? Optional.empty() : Optional.of(s.harvest().containsKey(option));
      case HARVEST_MONTH -> harvestIn(s, month(option));
      case USE -> inWords(s.words(Trait.USE), option);
      case HEIGHT -> s.range(Trait.HEIGHT).map(h -> h.max() >= HEIGHT.get(option)[0] && h.min() < HEIGHT.get(option)[1]);
      // The milder end of a stated range is the cautious one.
      case WINTER -> s.range(Trait.COLDEST_WINTER)
          .map(r -> r.max() <= HardinessZone.read(option).orElseThrow().celsius().min() + 1e-9);
      case LIGHT -> hull(s, Trait.LIGHT, Trait.LIGHT_PREFERRED).map(r -> half(r, LIGHT.get(option)));
      case MOISTURE -> hull(s, Trait.MOISTURE, Trait.MOISTURE_PREFERRED)
          .map(r -> r.contains(1 + MOISTURE.indexOf(option)));
      case PH -> hull(s, Trait.PH, Trait.PH_PREFERRED).map(r -> half(r, PH.get(option)));
      case GROWTH_RATE -> s.word(Trait.GROWTH_RATE).map(option::equals);
      case DURATION -> s.word(Trait.DURATION).map(option::equals);
      case POLLINATION -> s.word(Trait.POLLINATION).map(option::equals);
      case ROOT_FORM -> s.word(Trait.ROOT_FORM).map(option::equals);
      case NATIVE -> s.ruling(Trait.NATIVITY, option).map(st -> ((TraitValue.Word) st.value()).word().equals("native"));
      case WETLAND -> s.ruling(Trait.WETLAND, query.region().orElseThrow().key())
          .map(st -> ((TraitValue.Word) st.value()).word().equalsIgnoreCase(option));
      case PROPAGATION -> inWords(s.statements().stream().filter(st -> st.trait() == Trait.PROPAGATION)
          .map(Statement::item).toList(), option);
      case SPREAD -> inWords(s.words(Trait.SPREAD), option);
      case WITHOUT -> s.cautions().stream().anyMatch(c -> CautionKind.of(c.item()).orElseThrow().key().equals(option))
          ? Optional.of(true) : Optional.empty();
    };
  }

  private Optional<Boolean> does(Species s, String option) {
    Optional<Boolean> does = s.does(GuildFunction.ofKey(option));
    if (does.isEmpty() || !does.get()) {
      return does;
    }
    Evidence evidence = s.ruling(Trait.FUNCTION, option).orElseThrow().evidence().orElse(Evidence.FOLK);
    boolean enough = switch (query.evidence()) {
      case FOLK -> true;
      case OBSERVED -> evidence != Evidence.FOLK;
      case MEASURED -> evidence == Evidence.MEASURED;
    };
    return enough ? Optional.of(true) : Optional.empty();
  }

  private Optional<Boolean> harvestIn(Species s, Month month) {
    Map<String, Months> all = s.harvest();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Set<String> parts = query.chosen(Facet.HARVEST).isEmpty() ? all.keySet() : query.chosen(Facet.HARVEST);
    boolean undated = false;
    for (String part : parts) {
      if (all.containsKey(part) && all.get(part).contains(month)) {
        return Optional.of(true);
      }
      undated |= all.containsKey(part) && all.get(part).isEmpty();
    }
    return undated ? Optional.empty() : Optional.of(false);
  }

  private static Month month(String option) {
    return Month.valueOf(option.toUpperCase(Locale.ROOT));
  }

  private static Optional<Boolean> inWords(List<String> words, String option) {
    return words.isEmpty() ? Optional.empty() : Optional.of(words.contains(option));
  }

  private static Optional<Range> hull(Species s, Trait one, Trait other) {
    Optional<Range> a = s.range(one);
    Optional<Range> b = s.range(other);
    if (a.isEmpty() && b.isPresent()) {
      // A preference alone is not the limit: a step further is borne, two hours of sun, one of any other axis.
      return b.map(liked -> liked.widened(other == Trait.LIGHT_PREFERRED ? 2 : 1));
    }
    return b.isPresent() ? Optional.of(a.orElseThrow().hull(b.get())) : a;
  }

  private static boolean half(Range tolerated, double[] band) {
    return Math.min(tolerated.max(), band[1]) - Math.max(tolerated.min(), band[0]) >= (band[1] - band[0]) / 2;
  }

  private boolean isNamed(Species species) {
    List<String> names = new ArrayList<>(List.of(species.scientificName()));
    names.addAll(species.commonNames());
    names.addAll(species.synonyms());
    List<String> words = new ArrayList<>();
    for (String name : names) {
      words.addAll(Arrays.asList(plain(name).split("[ .-]+")));
      words.addAll(Arrays.asList(plain(name).replace("-", "").split("[ .]+")));
    }
    return Arrays.stream(plain(query.text()).split("[ .-]+"))
        .filter(asked -> !asked.isEmpty() && !asked.equals("x"))
        .allMatch(asked -> words.stream().anyMatch(word -> word.startsWith(asked)));
  }

  private static String plain(String text) {
    return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD).replaceAll("\\p{M}", "")
        .replace("×", "").replace("'", "").replace("ß", "ss").replace("ø", "o");
  }
}
