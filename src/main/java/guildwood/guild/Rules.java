package guildwood.guild;

import guildwood.species.CautionKind;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * What the owner allows. Plants that stand already are not counted against the limits on species, plants
 * and money.
 *
 * @param maxSpecies most species to plant
 * @param maxPlants most plants to put in, wherever they come from
 * @param budgetCents most to spend; absent where money does not matter
 * @param priceIfUnknownCents what a plant is taken to cost where nobody says
 * @param allowBorderline whether borderline species may come in
 * @param allowNotKnown whether species come in for which nothing that decides is known
 * @param maxSpeciesPerGenus most species of one genus, standing ones included
 * @param plantsFrom where plants may come from
 * @param nativeTo a region key of the nativity trait; only species stated as native there come in
 * @param excludedCautions kinds of caution the owner does not want in this bed
 * @param banned species that never come in
 * @param pinned species that are in, with exactly this many plants (standing ones included), whatever else holds
 */
public record Rules(
    int maxSpecies,
    int maxPlants,
    OptionalInt budgetCents,
    int priceIfUnknownCents,
    boolean allowBorderline,
    boolean allowNotKnown,
    int maxSpeciesPerGenus,
    PlantsFrom plantsFrom,
    Optional<String> nativeTo,
    Set<CautionKind> excludedCautions,
    Set<String> banned,
    Map<String, Integer> pinned) {
  public static final int MOST_SPECIES = 40;
  public static final int MOST_PLANTS = 2_000;
  public static final int MOST_CENTS = 100_000_000;

  public Rules {
    within("species", maxSpecies, 0, MOST_SPECIES);
    within("plants", maxPlants, 0, MOST_PLANTS);
    within("budget", budgetCents.orElse(0), 0, MOST_CENTS);
    within("price", priceIfUnknownCents, 0, 1_000_000);
    within("species a genus", maxSpeciesPerGenus, 1, MOST_SPECIES);
    excludedCautions = excludedCautions.isEmpty()
        ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(excludedCautions));
    banned = Collections.unmodifiableSet(new TreeSet<>(banned));
    pinned = Collections.unmodifiableMap(new TreeMap<>(pinned));
    pinned.forEach((id, count) -> within("pinned " + id, count, 1, MOST_PLANTS));
    if (pinned.keySet().stream().anyMatch(banned::contains)) {
      throw new IllegalArgumentException("both pinned and banned: " + pinned.keySet() + " and " + banned);
    }
  }

  /**
   * Rules to start from for a bed of this size: seven species, one more for every 15 square metres, at
   * most 12; two plants a square metre, between 12 and 150; nothing that is listed by law at the place.
   */
  public static Rules forArea(double areaM2) {
    int species = Math.min(12, 7 + (int) (areaM2 / 15));
    int plants = (int) Math.max(12, Math.min(150, Math.round(2 * areaM2)));
    return new Rules(species, plants, OptionalInt.empty(), 500, false, false, 2, PlantsFrom.ANYWHERE, Optional.empty(),
        EnumSet.of(CautionKind.LISTED), Set.of(), Map.of());
  }

  public Rules withMaxSpecies(int species) {
    return copy(c -> c.maxSpecies = species);
  }

  public Rules withMaxPlants(int plants) {
    return copy(c -> c.maxPlants = plants);
  }

  public Rules withBudgetCents(OptionalInt cents) {
    return copy(c -> c.budgetCents = cents);
  }

  public Rules withBorderline(boolean allowed) {
    return copy(c -> c.borderline = allowed);
  }

  public Rules withNotKnown(boolean allowed) {
    return copy(c -> c.notKnown = allowed);
  }

  public Rules withMaxSpeciesPerGenus(int species) {
    return copy(c -> c.maxSpeciesPerGenus = species);
  }

  public Rules withPlantsFrom(PlantsFrom from) {
    return copy(c -> c.from = from);
  }

  public Rules withNativeTo(Optional<String> region) {
    return copy(c -> c.nativeTo = region);
  }

  public Rules withExcludedCautions(Set<CautionKind> kinds) {
    return copy(c -> c.excludedCautions = kinds);
  }

  public Rules withBanned(Set<String> ids) {
    return copy(c -> c.banned = ids);
  }

  public Rules withPinned(Map<String, Integer> counts) {
    return copy(c -> c.pinned = counts);
  }

  private Rules copy(Consumer<Copy> change) {
    Copy copy = new Copy(this);
    change.accept(copy);
    return copy.rules();
  }

  /** Rules while one of them is changed. */
  private static final class Copy {
    private int maxSpecies;
    private int maxPlants;
    private OptionalInt budgetCents;
    private final int priceIfUnknownCents;
    private boolean borderline;
    private boolean notKnown;
    private int maxSpeciesPerGenus;
    private PlantsFrom from;
    private Optional<String> nativeTo;
    private Set<CautionKind> excludedCautions;
    private Set<String> banned;
    private Map<String, Integer> pinned;

    Copy(Rules rules) {
      maxSpecies = rules.maxSpecies;
      maxPlants = rules.maxPlants;
      budgetCents = rules.budgetCents;
      priceIfUnknownCents = rules.priceIfUnknownCents;
      borderline = rules.allowBorderline;
      notKnown = rules.allowNotKnown;
      maxSpeciesPerGenus = rules.maxSpeciesPerGenus;
      from = rules.plantsFrom;
      nativeTo = rules.nativeTo;
      excludedCautions = rules.excludedCautions;
      banned = rules.banned;
      pinned = rules.pinned;
    }

    Rules rules() {
      return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, borderline, notKnown,
          maxSpeciesPerGenus, from, nativeTo, excludedCautions, banned, pinned);
    }
  }

  private static void within(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(what + ": " + value + " is not within " + least + " and " + most);
    }
  }
}
