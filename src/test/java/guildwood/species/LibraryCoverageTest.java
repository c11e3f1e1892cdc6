package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Source;
import guildwood.species.LibraryCoverage.FunctionLine;
import guildwood.species.LibraryCoverage.KindLine;
import guildwood.species.LibraryCoverage.TraitLine;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is known of a library of three species, counted by hand. */
class LibraryCoverageTest {
  private static final Source TABLE =
      new Source("table", Source.Kind.AGENCY_TABLE, "An agency", "A table", OptionalInt.of(2016), "");
  private static final Source PRACTICE =
      new Source("common-practice", Source.Kind.COMMON_PRACTICE, "", "common practice, no source", OptionalInt.empty(), "");

  private static final LibraryCoverage COVERAGE = LibraryCoverage.of(new SpeciesLibrary(1, List.of(
      species("Alnus incana", said("height", "", "16 ft", "table", ""), said("height", "", "5 m", "common-practice", ""),
          said("function", "nitrogen-fixer", "yes", "table", "observed")),
      species("Malus domestica", said("height", "", "7 m", "common-practice", ""),
          said("function", "nitrogen-fixer", "no", "table", "observed")),
      species("Urtica dioica", said("function", "dynamic-accumulator", "yes", "common-practice", "folk"))),
      List.of(), Map.of("table", TABLE, "common-practice", PRACTICE)));

  @Test
  void countsSpeciesAndValues() {
    assertEquals(3, COVERAGE.species());
    assertEquals(6, COVERAGE.values());
  }

  @Test
  void countsASpeciesOncePerTraitAndEveryValue() {
    assertEquals(Trait.values().length, COVERAGE.traits().size());
    assertEquals(new TraitLine(Trait.HEIGHT, 2, 3, 2), line(Trait.HEIGHT));
    assertEquals(new TraitLine(Trait.FUNCTION, 3, 3, 1), line(Trait.FUNCTION));
    assertEquals(new TraitLine(Trait.PH, 0, 0, 0), line(Trait.PH));
  }

  @Test
  void gradesFunctionsByTheirEvidence() {
    assertEquals(new FunctionLine(GuildFunction.NITROGEN_FIXER, 0, 1, 0, 0, 1), line(GuildFunction.NITROGEN_FIXER));
    assertEquals(new FunctionLine(GuildFunction.DYNAMIC_ACCUMULATOR, 0, 0, 1, 0, 0), line(GuildFunction.DYNAMIC_ACCUMULATOR));
    assertEquals(new FunctionLine(GuildFunction.FODDER, 0, 0, 0, 0, 0), line(GuildFunction.FODDER));
  }

  @Test
  void countsValuesByKindOfSource() {
    assertEquals(new KindLine(Source.Kind.AGENCY_TABLE, 1, 3), line(Source.Kind.AGENCY_TABLE));
    assertEquals(new KindLine(Source.Kind.COMMON_PRACTICE, 1, 3), line(Source.Kind.COMMON_PRACTICE));
    assertEquals(new KindLine(Source.Kind.PUBLICATION, 0, 0), line(Source.Kind.PUBLICATION));
  }

  private static TraitLine line(Trait trait) {
    return COVERAGE.traits().stream().filter(l -> l.trait() == trait).findFirst().orElseThrow();
  }

  private static FunctionLine line(GuildFunction function) {
    return COVERAGE.functions().stream().filter(l -> l.function() == function).findFirst().orElseThrow();
  }

  private static KindLine line(Source.Kind kind) {
    return COVERAGE.kinds().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
  }

  private static Species species(String name, Statement... statements) {
    return new Species(SpeciesNames.slug(name), name, List.of(), "", List.of(), false, List.of(statements));
  }

  private static Statement said(String trait, String item, String value, String source, String evidence) {
    return new WrittenStatement(0, "any", trait, item, value, source, evidence, false, "").read().orThrow();
  }
}
