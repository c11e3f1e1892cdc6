package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.time.Month;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Whether the shipped library is broad enough to compose guilds from: at least so many species for each of
 * the jobs and places that are asked for most. Early means in bloom up to the end of May, late from August to
 * October, near the first and last of the three periods of the Indiana NRCS pollinator job sheet (CP42, 2012).
 */
class SeedTargetsTest {
  private static final Set<Month> EARLY = Set.of(Month.FEBRUARY, Month.MARCH, Month.APRIL, Month.MAY);
  private static final Set<Month> LATE = Set.of(Month.AUGUST, Month.SEPTEMBER, Month.OCTOBER);

  @Test
  void threeHundredSpecies() {
    atLeast(300, "species", species -> true);
  }

  @Test
  void nitrogenFixersOfTwoKinds() {
    atLeast(35, "nitrogen fixers", s -> does(s, GuildFunction.NITROGEN_FIXER));
    atLeast(10, "nitrogen fixers that are no legumes",
        s -> does(s, GuildFunction.NITROGEN_FIXER) && !s.family().equals("Fabaceae"));
  }

  @Test
  void pollinatorPlantsEarlyAndLate() {
    atLeast(60, "early pollinator plants", s -> does(s, GuildFunction.POLLINATOR_FORAGE) && blooms(s, EARLY));
    atLeast(60, "late pollinator plants", s -> does(s, GuildFunction.POLLINATOR_FORAGE) && blooms(s, LATE));
  }

  /** Those whose worth to pollinators somebody counted, measured or saw; folk claims left out. */
  @Test
  void pollinatorPlantsWithEvidence() {
    atLeast(60, "early pollinator plants with evidence", s -> seenToFeedPollinators(s) && blooms(s, EARLY));
    atLeast(60, "late pollinator plants with evidence", s -> seenToFeedPollinators(s) && blooms(s, LATE));
  }

  @Test
  void groundCovers() {
    atLeast(40, "true ground covers", s -> s.layers().contains(Layer.GROUND_COVER));
  }

  @Test
  void cropsInPartShade() {
    atLeast(40, "with a crop and light borne down to 4 hours of sun", s -> !s.harvest().isEmpty() && reaches(s, Trait.LIGHT, 4));
  }

  @Test
  void wetAndDryGround() {
    atLeast(40, "for wet ground", s -> reaches(s, Trait.MOISTURE, 4));
    atLeast(40, "for dry ground", s -> reaches(s, Trait.MOISTURE, 2));
  }

  private static void atLeast(int wanted, String what, Predicate<Species> counted) {
    long found = print(wanted, what, counted);
    assertTrue(found >= wanted, what + ": " + found + " of " + wanted);
  }

  private static long print(int wanted, String what, Predicate<Species> counted) {
    long found = Shipped.species().stream().filter(counted).count();
    System.out.printf("%4d of %3d %s%s%n", found, wanted, what, found < wanted ? " - SHORT" : "");
    return found;
  }

  private static boolean does(Species species, GuildFunction function) {
    return species.does(function).orElse(false);
  }

  private static boolean seenToFeedPollinators(Species species) {
    return does(species, GuildFunction.POLLINATOR_FORAGE)
        && species.ruling(Trait.FUNCTION, GuildFunction.POLLINATOR_FORAGE.key()).orElseThrow().evidence()
            .filter(grade -> grade != Evidence.FOLK).isPresent();
  }

  private static boolean blooms(Species species, Set<Month> period) {
    Optional<Months> bloom = species.bloom();
    return bloom.isPresent() && period.stream().anyMatch(bloom.get()::contains);
  }

  private static boolean reaches(Species species, Trait trait, double value) {
    Optional<Range> range = species.range(trait);
    return range.isPresent() && range.get().contains(value);
  }
}
