package guildwood.species;

import guildwood.kernel.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How much of a library is known, and from what kind of source. Counts species in use only.
 *
 * @param species how many there are
 * @param values how many statements they have together
 * @param traits one line for each trait, in the catalogue's order
 * @param functions one line for each function, by the statements that rule
 * @param kinds one line for each kind of source, the strongest first
 */
public record LibraryCoverage(
    int species, int values, List<TraitLine> traits, List<FunctionLine> functions, List<KindLine> kinds) {

  /**
   * One trait.
   *
   * @param known species with at least one statement of it
   * @param values statements of it
   * @param commonPractice of those, the ones without a source
   */
  public record TraitLine(Trait trait, int known, int values, int commonPractice) {}

  /** One function: species that do it by grade of evidence, and species said not to do it. */
  public record FunctionLine(GuildFunction function, int measured, int observed, int folk, int ungraded, int no) {}

  /** One kind of source: how many such sources, and how many values rest on them. */
  public record KindLine(Source.Kind kind, int sources, int values) {}

  public LibraryCoverage {
    traits = List.copyOf(traits);
    functions = List.copyOf(functions);
    kinds = List.copyOf(kinds);
  }

  public static LibraryCoverage of(SpeciesLibrary library) {
    List<Statement> all = library.species().stream().flatMap(s -> s.statements().stream()).toList();
    return new LibraryCoverage(library.species().size(), all.size(),
        Arrays.stream(Trait.values()).map(trait -> traitLine(trait, library)).toList(),
        Arrays.stream(GuildFunction.values()).map(function -> functionLine(function, library)).toList(),
        Arrays.stream(Source.Kind.values()).map(kind -> kindLine(kind, library, all)).toList());
  }

  private static TraitLine traitLine(Trait trait, SpeciesLibrary library) {
    int known = 0;
    int values = 0;
    int commonPractice = 0;
    for (Species species : library.species()) {
      List<Statement> said = species.statements().stream().filter(s -> s.trait() == trait).toList();
      known += said.isEmpty() ? 0 : 1;
      values += said.size();
      commonPractice += (int) said.stream().filter(s -> kind(s, library) == Source.Kind.COMMON_PRACTICE).count();
    }
    return new TraitLine(trait, known, values, commonPractice);
  }

  private static FunctionLine functionLine(GuildFunction function, SpeciesLibrary library) {
    Map<String, Long> grades = library.species().stream()
        .flatMap(s -> s.ruling(Trait.FUNCTION, function.key()).stream())
        .map(LibraryCoverage::grade)
        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return new FunctionLine(function, count(grades, "MEASURED"), count(grades, "OBSERVED"), count(grades, "FOLK"),
        count(grades, "UNGRADED"), count(grades, "NO"));
  }

  private static String grade(Statement statement) {
    if (!((TraitValue.YesNo) statement.value()).yes()) {
      return "NO";
    }
    Optional<Evidence> evidence = statement.evidence();
    return evidence.isPresent() ? evidence.get().name() : "UNGRADED";
  }

  private static int count(Map<String, Long> grades, String grade) {
    return Math.toIntExact(grades.getOrDefault(grade, 0L));
  }

  private static KindLine kindLine(Source.Kind kind, SpeciesLibrary library, List<Statement> all) {
    return new KindLine(kind,
        (int) library.sources().values().stream().filter(s -> s.kind() == kind).count(),
        (int) all.stream().filter(s -> kind(s, library) == kind).count());
  }

  private static Source.Kind kind(Statement statement, SpeciesLibrary library) {
    return library.sources().get(statement.sourceId()).kind();
  }
}
