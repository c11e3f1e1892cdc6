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

/**
 * What the owner allows. Plants that stand already are not counted against the limits on species, plants
 * and money.
 *
 * @param maxSpecies most species to plant
 * @param maxPlants most plants to put in, bought or from stock
 * @param budgetCents most to spend; absent where money does not matter
 * @param priceIfUnknownCents what a plant is taken to cost where nobody says
 * @param allowBorderline whether borderline species may come in
 * @param allowNotKnown whether species come in for which nothing that decides is known
 * @param maxSpeciesPerGenus most species of one genus, standing ones included
 * @param onlyStock true where only plants on hand or propagated may be used
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
    boolean onlyStock,
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
    return new Rules(species, plants, OptionalInt.empty(), 500, false, false, 2, false, Optional.empty(),
        EnumSet.of(CautionKind.LISTED), Set.of(), Map.of());
  }

  public Rules withMaxSpecies(int species) {
    return new Rules(species, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withMaxPlants(int plants) {
    return new Rules(maxSpecies, plants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withBudgetCents(OptionalInt cents) {
    return new Rules(maxSpecies, maxPlants, cents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withBorderline(boolean allowed) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowed, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withNotKnown(boolean allowed) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowed,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withMaxSpeciesPerGenus(int species) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        species, onlyStock, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withOnlyStock(boolean only) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, only, nativeTo, excludedCautions, banned, pinned);
  }

  public Rules withNativeTo(Optional<String> region) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, region, excludedCautions, banned, pinned);
  }

  public Rules withExcludedCautions(Set<CautionKind> kinds) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, kinds, banned, pinned);
  }

  public Rules withBanned(Set<String> ids) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, ids, pinned);
  }

  public Rules withPinned(Map<String, Integer> counts) {
    return new Rules(maxSpecies, maxPlants, budgetCents, priceIfUnknownCents, allowBorderline, allowNotKnown,
        maxSpeciesPerGenus, onlyStock, nativeTo, excludedCautions, banned, counts);
  }

  private static void within(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(what + ": " + value + " is not within " + least + " and " + most);
    }
  }
}
