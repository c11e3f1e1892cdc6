package guildwood.guild;

import guildwood.guild.search.Choice;
import guildwood.guild.search.Item;
import guildwood.guild.search.Selection;
import guildwood.guild.search.Tally;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A guild problem as bare arithmetic: standing and pinned plants become the base, what is left of every
 * limit becomes a cap, and every eligible species an item.
 *
 * <p>Caps, in order: crown area of each layer (dm2), light of each layer (cm2), plants.
 */
final class Translation {
  private static final int LAYERS = Layer.values().length;
  private static final int CAPS = 2 * LAYERS + 1;

  private final GuildProblem problem;
  private final PointScale scale;
  private final Eligibility eligibility;
  private final Guild base;
  private final List<Member> baseMembers = new ArrayList<>();
  private final List<Candidate> items = new ArrayList<>();
  private final Map<String, Integer> bits = new HashMap<>();
  private final Map<String, Integer> groups = new LinkedHashMap<>();
  private final Selection selection;

  Translation(GuildProblem problem) {
    this.problem = problem;
    scale = PointScale.of(problem);
    eligibility = new Eligibility(problem);
    base = problem.baseGuild();
    base.counts().forEach((id, count) ->
        baseMembers.add(new Member(problem.find(id).orElseThrow(), count, problem.standing(id))));
    selection = select();
  }

  Selection selection() {
    return selection;
  }

  /** The candidates the items stand for, by index. */
  List<Candidate> items() {
    return items;
  }

  /** Standing and pinned plants. */
  Guild base() {
    return base;
  }

  /** The guild a choice stands for. */
  Guild guild(Choice choice) {
    Map<String, Integer> counts = new TreeMap<>(base.counts());
    for (int i = 0; i < items.size(); i++) {
      if (choice.counts()[i] > 0) {
        counts.merge(items.get(i).speciesId(), choice.counts()[i], Integer::sum);
      }
    }
    return Guild.of(counts);
  }

  /** What the plants of a choice cost that are neither standing nor to be had for nothing. */
  long costCents(Choice choice) {
    long cost = 0;
    for (int i = 0; i < items.size(); i++) {
      int bought = Math.max(0, choice.counts()[i] - items.get(i).supply().free());
      cost += (long) bought * price(items.get(i));
    }
    return cost;
  }

  /** What each item adds to the standing plants in a guild; species that are no items are left out. */
  int[] counts(Guild guild) {
    int[] counts = new int[items.size()];
    for (int i = 0; i < counts.length; i++) {
      String id = items.get(i).speciesId();
      counts[i] = Math.max(0, guild.count(id) - problem.standing(id));
    }
    return counts;
  }

  private Selection select() {
    long[] caps = caps();
    long spent = baseMembers.stream().mapToLong(m -> m.costCents(problem.rules())).sum();
    long budget = problem.rules().budgetCents().isPresent()
        ? Math.max(0, problem.rules().budgetCents().getAsInt() - spent) : Long.MAX_VALUE / 4;
    boolean priced = problem.rules().budgetCents().isPresent();
    for (Candidate candidate : problem.candidates()) {
      boolean pinned = problem.rules().pinned().containsKey(candidate.speciesId());
      if (!pinned && eligibility.isEligible(candidate) && !harmsBase(candidate)
          && most(candidate, caps, priced ? budget : -1) >= fewest(candidate)) {
        items.add(candidate);
      }
    }
    List<Item> made = new ArrayList<>();
    Map<String, List<Integer>> kin = kin();
    for (int i = 0; i < items.size(); i++) {
      made.add(item(i, caps, priced ? budget : -1, kin));
    }
    int planted = (int) baseMembers.stream().filter(m -> m.added() > 0).count();
    int mostItems = Math.max(0, problem.rules().maxSpecies() - planted);
    return new Selection(made, baseValue(), mostItems, caps, budget, groupRoom(), earned(), musts(), tally());
  }

  private long[] caps() {
    long[] caps = new long[CAPS];
    for (Layer layer : Layer.values()) {
      LayerUse use = LayerUse.of(layer, baseMembers);
      caps[layer.ordinal()] = Math.max(0, problem.roomDm2(layer) - use.crownDm2());
      caps[LAYERS + layer.ordinal()] = Math.max(0, 100L * problem.areaDm2() - use.lightCm2());
    }
    int plants = baseMembers.stream().mapToInt(Member::added).sum();
    caps[2 * LAYERS] = Math.max(0, problem.rules().maxPlants() - plants);
    return caps;
  }

  private long[] uses(Candidate candidate) {
    long[] uses = new long[CAPS];
    Stature stature = candidate.stature().orElseThrow();
    uses[stature.layer().ordinal()] = stature.crownDm2();
    for (Layer layer : Layer.values()) {
      uses[LAYERS + layer.ordinal()] = LayerUse.lightPerPlantCm2(candidate, layer);
    }
    uses[2 * LAYERS] = 1;
    return uses;
  }

  private int fewest(Candidate candidate) {
    return Math.max(1, eligibility.fewest(candidate) - problem.standing(candidate.speciesId()));
  }

  /** The most of a candidate that can be put in; a budget below 0 means that money does not matter. */
  private int most(Candidate candidate, long[] caps, long budget) {
    long most = problem.rules().plantsFrom().most(candidate.supply());
    long[] uses = uses(candidate);
    for (int r = 0; r < CAPS; r++) {
      most = uses[r] > 0 ? Math.min(most, caps[r] / uses[r]) : most;
    }
    int price = price(candidate);
    if (budget >= 0 && price > 0) {
      most = Math.min(most, candidate.supply().free() + budget / price);
    }
    return (int) most;
  }

  private int price(Candidate candidate) {
    return candidate.supply().priceCents().orElse(problem.rules().priceIfUnknownCents());
  }

  private boolean harmsBase(Candidate candidate) {
    return baseMembers.stream().anyMatch(m -> !m.id().equals(candidate.speciesId())
        && !m.candidate().manners().conflictsWith(candidate.manners()).isEmpty());
  }

  private Map<String, List<Integer>> kin() {
    Map<String, List<Integer>> kin = new HashMap<>();
    for (int i = 0; i < items.size(); i++) {
      kin.computeIfAbsent(items.get(i).kinship().species(), k -> new ArrayList<>()).add(i);
    }
    return kin;
  }

  private Item item(int i, long[] caps, long budget, Map<String, List<Integer>> kin) {
    Candidate candidate = items.get(i);
    boolean stands = base.has(candidate.speciesId());
    int each = scale.fitMilliOf(candidate, candidate.stature().orElseThrow().crownDm2());
    boolean served = !candidate.manners().partner().isNeeded() || candidate.manners().partnerNear()
        || baseMembers.stream().anyMatch(m -> RuleCheck.arePartners(candidate, m.candidate()));
    int[] partners = kin.get(candidate.kinship().species()).stream()
        .filter(j -> RuleCheck.arePartners(candidate, items.get(j))).mapToInt(j -> j).toArray();
    int fewest = fewest(candidate);
    int most = most(candidate, caps, budget);
    int alone = candidate.kinship().cultivar() ? Item.NEVER
        : Math.max(fewest, 2 - problem.standing(candidate.speciesId()));
    if (!served && partners.length == 0 && alone <= most) {
      // Nobody else can serve it, so the count must: known beforehand, it tightens the bound.
      fewest = alone;
      served = true;
    }
    int price = problem.rules().budgetCents().isPresent() ? price(candidate) : 0;
    int enough = scale.enough(candidate.stature().orElseThrow().crownDm2()) - problem.standing(candidate.speciesId());
    return new Item(fewest, served ? fewest : alone, most, candidate.supply().free(), price, Math.max(0, enough), each,
        PointScale.beyond(each), scale.perPlantMilli(), GroundCover.each(candidate), uses(candidate), units(candidate, stands), group(candidate, stands),
        bitsOf(candidate.manners().gives()), bitsOf(candidate.manners().suffers()), !served, partners);
  }

  private int[] units(Candidate candidate, boolean stands) {
    return problem.wishes().stream().mapToInt(w -> stands || isTallied(w) ? 0 : candidate.units(w)).toArray();
  }

  /** More plants of a species that stands already make no further species of the genus. */
  private int group(Candidate candidate, boolean stands) {
    return stands ? Item.NO_GROUP : groups.computeIfAbsent(candidate.kinship().genus(), g -> groups.size());
  }

  private int[] groupRoom() {
    int[] room = new int[groups.size()];
    groups.forEach((genus, g) -> {
      long there = baseMembers.stream().filter(m -> m.candidate().kinship().genus().equals(genus)).count();
      room[g] = (int) Math.max(0, problem.rules().maxSpeciesPerGenus() - there);
    });
    return room;
  }

  private long bitsOf(Iterable<String> conflictItems) {
    long mask = 0;
    for (String item : conflictItems) {
      int bit = bits.computeIfAbsent(item, b -> bits.size());
      if (bit >= Long.SIZE) {
        throw new IllegalStateException("more than 64 kinds of conflict: " + bits.keySet());
      }
      mask |= 1L << bit;
    }
    return mask;
  }

  private int baseUnits(int wish) {
    return baseMembers.stream().mapToInt(m -> m.candidate().units(problem.wishes().get(wish))).sum();
  }

  private int[][] earned() {
    int[][] earned = new int[problem.wishes().size()][];
    for (int w = 0; w < earned.length; w++) {
      if (isTallied(problem.wishes().get(w))) {
        earned[w] = new int[1];
        continue;
      }
      int there = Math.min(PointScale.MOST_UNITS, baseUnits(w));
      earned[w] = new int[PointScale.MOST_UNITS - there + 1];
      for (int more = 0; more < earned[w].length; more++) {
        earned[w][more] = scale.earned(w, there + more) - scale.earned(w, there);
      }
    }
    return earned;
  }

  private boolean[] musts() {
    boolean[] musts = new boolean[problem.wishes().size()];
    for (int w = 0; w < musts.length; w++) {
      Wish wish = problem.wishes().get(w);
      musts[w] = wish.must() && !isTallied(wish) && baseUnits(w) == 0;
    }
    return musts;
  }

  /** A wish for which counts add up, in place of species that do it. */
  private static boolean isTallied(Wish wish) {
    return wish.kind() == WishKind.GROUND;
  }

  private Tally tally() {
    for (int w = 0; w < problem.wishes().size(); w++) {
      Wish wish = problem.wishes().get(w);
      if (isTallied(wish)) {
        return new Tally(GroundCover.goal(problem, wish), GroundCover.of(baseMembers), scale.wishMilli()[w], wish.must());
      }
    }
    return Tally.NONE;
  }

  private long baseValue() {
    return new Scoring(problem).score(baseMembers).earnedMilli();
  }
}
