package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whether every value of the shipped library says where it comes from, and how much rests on no source. */
class SeedSourcesTest {
  private static final double MOST_COMMON_PRACTICE = 0.15;

  private final List<String> wrong = new ArrayList<>();

  @Test
  void everySourceIsUsedAndEveryUsedSourceIsThere() {
    Set<String> used = statements().stream().map(Statement::sourceId).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(used, new TreeSet<>(Shipped.LIBRARY.sources().keySet()));
  }

  @Test
  void aSourceNamesWhoSaysItAndWhat() {
    for (Source source : Shipped.LIBRARY.sources().values()) {
      if (source.kind() != Source.Kind.COMMON_PRACTICE && source.author().isBlank()) {
        wrong.add(source.id() + " has no author");
      }
      if (source.kind() == Source.Kind.OWN_EXPERIENCE || source.kind() == Source.Kind.HEARSAY) {
        wrong.add(source.id() + " is " + source.kind());
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void atMostFifteenPercentIsCommonPractice() {
    long without = statements().stream().filter(Shipped::isCommonPractice).count();
    double share = (double) without / statements().size();
    System.out.printf("common practice, no source: %d of %d values, %.1f %%%n", without, statements().size(), 100 * share);
    assertTrue(share <= MOST_COMMON_PRACTICE, without + " of " + statements().size());
  }

  @Test
  void noCautionWetlandRatingNitrogenClaimOrHardinessRestsOnCommonPractice() {
    for (Species species : Shipped.species()) {
      for (Statement said : species.statements()) {
        boolean needsSource = Set.of(Trait.CAUTION, Trait.WETLAND, Trait.COLDEST_WINTER).contains(said.trait())
            || said.item().equals(GuildFunction.NITROGEN_FIXER.key());
        if (needsSource && Shipped.isCommonPractice(said)) {
          wrong.add(Shipped.show(species, said));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void whatIsFromMemoryClaimsNoPublication() {
    for (Species species : Shipped.species()) {
      for (Statement said : species.statements()) {
        if (said.note().contains("from memory") && !Shipped.isCommonPractice(said)) {
          wrong.add(Shipped.show(species, said));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyClaimAboutAFunctionOrAnEnemyIsGraded() {
    for (Species species : Shipped.species()) {
      for (Statement said : species.statements()) {
        if (said.trait().carriesEvidence() != said.evidence().isPresent()) {
          wrong.add(Shipped.show(species, said));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static List<Statement> statements() {
    return Shipped.species().stream().flatMap(s -> s.statements().stream()).toList();
  }
}
