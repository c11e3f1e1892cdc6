package guildwood.guild;

import guildwood.fit.Fit;
import guildwood.fit.Tolerances;
import guildwood.fit.Trapezoid;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/** Seeded invented beds and libraries for tests: the same seed gives the same bed. */
final class RandomBeds {
  static final Map<Axis, Range> CONDITIONS = Map.of(
      Axis.LIGHT, new Range(5, 7), Axis.MOISTURE, new Range(2.5, 3.5), Axis.REACTION, new Range(5.8, 6.6));

  private static final List<String> CONFLICTS = List.of("juglone", "cedar-apple-rust", "verticillium");
  private static final double[] CROWN_M = {7, 4, 1.8, 1.3, 0.7, 0.5, 0.35};
  private static final double[] LAYER_SHARE = {0.06, 0.12, 0.22, 0.06, 0.34, 0.14, 0.06};

  private final Random dice;
  /** What every crown is multiplied by: tiny beds want few plants of each species. */
  private final double crownScale;

  /** How far species stray from the bed's conditions. */
  private final double stray;

  /** For wishes of covered ground alone, so that all else stays as it was before there were any. */
  private final Random groundDice;

  private RandomBeds(long seed, double crownScale, double stray) {
    groundDice = new Random(seed * 0x9E3779B97F4A7C15L + 7);
    // Neighbouring seeds give java.util.Random alike first numbers; a large odd factor parts them.
    dice = new Random(seed * 0x9E3779B97F4A7C15L);
    this.crownScale = crownScale;
    this.stray = stray;
  }

  /** At most 14 candidates on a few square metres, tight in all sorts of ways. */
  static GuildProblem tiny(long seed) {
    RandomBeds first = new RandomBeds(seed, 1, 0);
    double area = 3 + first.dice.nextInt(60) / 4.0;
    int candidates = 7 + first.dice.nextInt(8);
    RandomBeds beds = new RandomBeds(seed + 1_000_000, Math.sqrt(area) / 3.4, 0.2);
    return beds.problem(candidates, area, 3 + first.dice.nextInt(4), true);
  }

  /** An ordinary bed with a library of this size. */
  static GuildProblem ordinary(long seed, int candidates) {
    RandomBeds beds = new RandomBeds(seed, 1, 0.35);
    double[] areas = {20, 60, 200};
    return beds.problem(candidates, areas[beds.dice.nextInt(3)], 6 + beds.dice.nextInt(6), false);
  }

  /** Few species, little money, one species a genus, and four to six musts. */
  static GuildProblem tight(long seed, int candidates) {
    GuildProblem ordinary = ordinary(seed, candidates);
    Random dice = new Random(seed * 0x9E3779B97F4A7C15L + 1);
    List<Wish> wishes = new ArrayList<>();
    int musts = 4 + dice.nextInt(3);
    for (int w = 0; w < ordinary.wishes().size(); w++) {
      Wish wish = ordinary.wishes().get(w);
      wishes.add(w < musts ? wish.asMust() : wish.asNice());
    }
    Rules rules = ordinary.rules().withMaxSpecies(4 + dice.nextInt(2)).withMaxSpeciesPerGenus(1)
        .withBudgetCents(OptionalInt.of(2_500 + dice.nextInt(4_000))).withMaxPlants(12 + dice.nextInt(20));
    return ordinary.withWishes(wishes).withRules(rules);
  }

  private GuildProblem problem(int count, double areaM2, int maxSpecies, boolean tiny) {
    List<Candidate> candidates = new ArrayList<>();
    int genera = Math.max(3, count * 2 / 3);
    for (int i = 0; i < count; i++) {
      candidates.add(candidate(i, genera));
    }
    List<Wish> wishes = wishes(tiny ? 2 + dice.nextInt(6) : 6 + dice.nextInt(12));
    if (groundDice.nextInt(5) < 2) {
      Wish ground = Wish.ground(5 + groundDice.nextInt(90), 1 + groundDice.nextInt(10));
      wishes.add(groundDice.nextInt(wishes.size() + 1), groundDice.nextInt(3) == 0 ? ground.asMust() : ground);
    }
    Rules rules = Rules.forArea(areaM2).withMaxSpecies(maxSpecies);
    if (tiny) {
      rules = rules.withMaxPlants(5 + dice.nextInt(9)).withMaxSpeciesPerGenus(1 + dice.nextInt(2));
    }
    rules = rules.withBorderline(dice.nextBoolean()).withNotKnown(dice.nextInt(3) == 0);
    if (dice.nextInt(2) == 0) {
      rules = rules.withBudgetCents(OptionalInt.of((int) (areaM2 * (tiny ? 450 : 100) * (0.5 + dice.nextDouble()))));
    }
    rules = dice.nextInt(6) == 0 ? rules.withExcludedCautions(Set.of(CautionKind.THORNS, CautionKind.TOXIC)) : rules;
    rules = dice.nextInt(8) == 0 ? rules.withPlantsFrom(PlantsFrom.values()[1 + dice.nextInt(2)]) : rules;
    return withStandingAndPins(areaM2, candidates, wishes, rules);
  }

  private GuildProblem withStandingAndPins(double areaM2, List<Candidate> candidates, List<Wish> wishes, Rules rules) {
    TreeMap<String, Integer> standing = new TreeMap<>();
    while (dice.nextInt(3) == 0 && standing.size() < 3) {
      standing.put(candidates.get(dice.nextInt(candidates.size())).speciesId(), 1 + dice.nextInt(2));
    }
    TreeMap<String, Integer> pinned = new TreeMap<>();
    if (dice.nextInt(5) == 0) {
      String id = candidates.get(dice.nextInt(candidates.size())).speciesId();
      pinned.put(id, standing.getOrDefault(id, 0) + 1);
    }
    Set<String> banned = new HashSet<>();
    if (dice.nextInt(3) == 0) {
      String id = candidates.get(dice.nextInt(candidates.size())).speciesId();
      if (!pinned.containsKey(id)) {
        banned.add(id);
      }
    }
    return new GuildProblem(
        areaM2, CONDITIONS, candidates, wishes, rules.withPinned(pinned).withBanned(banned), standing);
  }

  Candidate candidate(int number, int genera) {
    Layer layer = layer();
    double width = CROWN_M[layer.ordinal()] * crownScale * Math.exp(0.35 * dice.nextGaussian());
    int height = 1 + dice.nextInt(9);
    Tolerances tolerances = tolerances();
    String genus = "Genus" + dice.nextInt(genera);
    boolean cultivar = dice.nextInt(8) == 0;
    String species = genus + " " + (cultivar ? "hortensis" : "species" + number);
    return new Candidate(String.format("species-%05d", number), "Species " + number,
        new Kinship(genus, species, cultivar),
        Optional.of(new Stature(layer, Stature.crownDm2(width), OptionalDouble.of(height))),
        services(), manners(), dice.nextInt(10) == 0 ? Set.of(CautionKind.THORNS) : Set.of(), Set.of(),
        new Supply(dice.nextInt(4) == 0 ? OptionalInt.empty() : OptionalInt.of(150 + 50 * dice.nextInt(40)),
            dice.nextInt(6) == 0 ? 1 + dice.nextInt(4) : 0, dice.nextInt(6) == 0 ? 1 + dice.nextInt(4) : 0),
        tolerances, Fit.ofRanges(tolerances, CONDITIONS), Set.of());
  }

  private Layer layer() {
    double u = dice.nextDouble();
    for (Layer layer : Layer.values()) {
      u -= LAYER_SHARE[layer.ordinal()];
      if (u < 0) {
        return layer;
      }
    }
    return Layer.HERB;
  }

  private Tolerances tolerances() {
    Map<Axis, guildwood.fit.Tolerance> byAxis = new EnumMap<>(Axis.class);
    axis(byAxis, Axis.LIGHT, 0, 16, 7);
    axis(byAxis, Axis.MOISTURE, 1, 5, 1.8);
    axis(byAxis, Axis.REACTION, 4, 8.5, 2);
    return new Tolerances(byAxis);
  }

  private void axis(Map<Axis, guildwood.fit.Tolerance> byAxis, Axis axis, double low, double high, double width) {
    if (dice.nextInt(8) == 0) {
      return;
    }
    Range bed = CONDITIONS.get(axis);
    double middle = bed.middle() + stray * width * dice.nextGaussian();
    double half = width * (0.5 + 0.7 * dice.nextDouble());
    Range tolerated = new Range(Math.max(low, Math.min(high - 0.1, middle - half)),
        Math.min(high, Math.max(low + 0.1, middle + half)));
    double inset = tolerated.width() * 0.25 * dice.nextDouble();
    byAxis.put(axis, new Trapezoid(tolerated, new Range(tolerated.min() + inset, tolerated.max() - inset)));
  }

  private Services services() {
    Map<GuildFunction, Evidence> functions = new EnumMap<>(GuildFunction.class);
    for (GuildFunction function : GuildFunction.values()) {
      if (dice.nextDouble() < 0.17) {
        functions.put(function, Evidence.values()[dice.nextInt(3)]);
      }
    }
    Month first = Month.of(3 + dice.nextInt(7));
    Months bloom = dice.nextInt(10) == 0 ? Months.NONE : Months.through(first, first.plus(dice.nextInt(3)));
    Map<String, Months> harvest = new TreeMap<>();
    if (dice.nextDouble() < 0.4) {
      Month ripe = Month.of(5 + dice.nextInt(5));
      List<String> parts = WishKind.HARVEST_PART.items();
      harvest.put(parts.get(dice.nextInt(parts.size())), Months.through(ripe, ripe.plus(dice.nextInt(2))));
    }
    return new Services(functions, bloom, harvest);
  }

  private Manners manners() {
    Set<String> gives = new HashSet<>();
    Set<String> suffers = new HashSet<>();
    for (String item : CONFLICTS) {
      int throwOf = dice.nextInt(20);
      if (throwOf == 0) {
        gives.add(item);
      } else if (throwOf < 4) {
        suffers.add(item);
      } else if (throwOf == 4 && dice.nextInt(4) == 0) {
        gives.add(item);
        suffers.add(item);
      }
    }
    Manners.Partner partner = switch (dice.nextInt(8)) {
      case 0 -> Manners.Partner.NEEDED;
      case 1 -> dice.nextBoolean() ? Manners.Partner.SEPARATE_SEXES : Manners.Partner.HELPS;
      default -> Manners.Partner.NOT_NEEDED;
    };
    return new Manners(gives, suffers, Set.of(), partner, dice.nextInt(15) == 0, dice.nextInt(3) == 0, dice.nextInt(5) == 0);
  }

  private List<Wish> wishes(int count) {
    List<Wish> wishes = new ArrayList<>();
    while (wishes.size() < count) {
      WishKind kind = WishKind.values()[dice.nextInt(10) < 5 ? 0 : dice.nextInt(5)];
      List<String> items = kind.items();
      String item = kind == WishKind.BLOOM_MONTH || kind == WishKind.HARVEST_MONTH
          ? Integer.toString(4 + dice.nextInt(7)) : items.get(dice.nextInt(items.size()));
      Wish wish = new Wish(kind, item, dice.nextInt(5) == 0, 1 + dice.nextInt(10));
      if (wishes.stream().noneMatch(w -> w.asksSameAs(wish))) {
        wishes.add(wish);
      }
    }
    return wishes;
  }
}
