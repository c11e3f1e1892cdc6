package guildwood.guild;

import guildwood.species.CautionKind;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * One of the owner's rules eased, named by the rule and a detail as {@link Change.EaseRule} has them, so that
 * an address can name it. Rules that are the ground's or the law's, not the owner's, are eased by nobody.
 */
public final class Easing {
  private Easing() {}

  /**
   * The rules after the easing; empty where the owner cannot ease that rule, or not so.
   *
   * @param detail the value it is eased to, or what is let in of what is kept out now: a caution kind, a region,
   *     a species id, a number, a {@link PlantsFrom} key; does not matter for rules that are either on or off
   */
  public static Optional<Rules> of(Rules rules, GuildRule rule, String detail) {
    return switch (rule) {
      case BORDERLINE -> Optional.of(rules.withBorderline(true));
      case FIT_NOT_KNOWN -> Optional.of(rules.withNotKnown(true));
      case NOT_IN_STOCK -> PlantsFrom.ofKey(detail).filter(from -> from != PlantsFrom.ON_HAND).map(rules::withPlantsFrom);
      case NOT_TO_BE_HAD -> Optional.of(rules.withPlantsFrom(PlantsFrom.ANYWHERE));
      case NOT_NATIVE -> rules.nativeTo().filter(detail::equals).map(region -> rules.withNativeTo(Optional.empty()));
      case BANNED -> Optional.of(detail).filter(rules.banned()::contains).map(id -> rules.withBanned(without(rules.banned(), id)));
      case CAUTION -> CautionKind.of(detail).filter(kind -> kind.key().equals(detail)).flatMap(kind -> without(rules, kind));
      case TOO_MANY_SPECIES -> number(detail, Rules.MOST_SPECIES).map(rules::withMaxSpecies);
      case TOO_MANY_PLANTS -> number(detail, Rules.MOST_PLANTS).map(rules::withMaxPlants);
      case OVER_BUDGET -> number(detail, Rules.MOST_CENTS).map(cents -> rules.withBudgetCents(OptionalInt.of(cents)));
      case GENUS_LIMIT -> number(detail, Rules.MOST_SPECIES).map(rules::withMaxSpeciesPerGenus);
      default -> Optional.empty();
    };
  }

  /** What a rule that keeps one species out would be eased to; empty where it is not the owner's to ease. */
  public static Optional<Change.EaseRule> of(Rules rules, RuleBreach breach) {
    String detail = switch (breach.rule()) {
      case CAUTION, NOT_NATIVE -> breach.args().get(0);
      case BANNED -> breach.species().get(0);
      case NOT_IN_STOCK -> (breach.args().get(2).equals("0") ? PlantsFrom.ANYWHERE : PlantsFrom.HAVE_OR_PROPAGATE).key();
      default -> "";
    };
    return of(rules, breach.rule(), detail).map(eased -> new Change.EaseRule(breach.rule(), detail, eased));
  }

  /** Listed and permit plants stay out whatever the owner would like: those lists are the law's. */
  private static Optional<Rules> without(Rules rules, CautionKind kind) {
    if (kind == CautionKind.LISTED || kind == CautionKind.PERMIT || !rules.excludedCautions().contains(kind)) {
      return Optional.empty();
    }
    Set<CautionKind> kinds = EnumSet.copyOf(rules.excludedCautions());
    kinds.remove(kind);
    return Optional.of(rules.withExcludedCautions(kinds));
  }

  private static Set<String> without(Set<String> ids, String id) {
    Set<String> left = new TreeSet<>(ids);
    left.remove(id);
    return left;
  }

  private static Optional<Integer> number(String text, int most) {
    return text.matches("\\d{1,9}") && Integer.parseInt(text) >= 1 && Integer.parseInt(text) <= most
        ? Optional.of(Integer.parseInt(text)) : Optional.empty();
  }
}
