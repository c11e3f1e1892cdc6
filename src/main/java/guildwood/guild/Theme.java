package guildwood.guild;

import guildwood.guild.search.Choice;
import guildwood.guild.search.Selection;
import guildwood.species.GuildFunction;
import java.util.Set;
import java.util.function.Predicate;

/** Which way a further proposal leans, so that proposals differ in kind and not only in species. */
enum Theme {
  FOOD(c -> !c.services().harvest().isEmpty(), 0, false),
  SOIL(c -> c.services().functions().keySet().stream().anyMatch(Theme::buildsSoil), 0, false),
  FEW_PLANTS(c -> false, 150, false),
  LITTLE_MONEY(c -> false, 0, true),
  POLLINATORS(c -> c.services().functions().containsKey(GuildFunction.POLLINATOR_FORAGE), 0, false),
  /** Leans nowhere: the next best that is different. */
  PLAIN(c -> false, 0, false);

  /** What a species of the theme is worth more, thousandths of a point: enough to win ties and near-ties. */
  private static final int BONUS_MILLI = 900;

  /** What the whole cost of the best guild weighs where money is the theme. */
  private static final double COST_MILLI = 5_000;

  private static final Set<GuildFunction> SOIL_BUILDING =
      Set.of(GuildFunction.NITROGEN_FIXER, GuildFunction.MULCH_MAKER, GuildFunction.DEEP_ROOTED);

  private final Predicate<Candidate> favours;
  private final int lessEachMilli;
  private final boolean minimisesCost;

  Theme(Predicate<Candidate> favours, int lessEachMilli, boolean minimisesCost) {
    this.favours = favours;
    this.lessEachMilli = lessEachMilli;
    this.minimisesCost = minimisesCost;
  }

  static boolean buildsSoil(GuildFunction function) {
    return SOIL_BUILDING.contains(function);
  }

  /** Whether its few plants are the point, so that the counts must not be filled up afterwards. */
  boolean keepsCounts() {
    return lessEachMilli > 0 || minimisesCost;
  }

  Selection lean(Translation translation, Choice best, Rules rules) {
    int[] bonus = new int[translation.items().size()];
    for (int i = 0; i < bonus.length; i++) {
      bonus[i] = favours.test(translation.items().get(i)) ? BONUS_MILLI : 0;
    }
    double perCent = minimisesCost ? COST_MILLI / Math.max(1, translation.costCents(best)) : 0;
    int[] lessPaid = new int[bonus.length];
    for (int i = 0; i < bonus.length; i++) {
      int price = translation.items().get(i).supply().priceCents().orElse(rules.priceIfUnknownCents());
      lessPaid[i] = (int) Math.min(50_000, perCent * price);
    }
    return translation.selection().leaning(bonus, lessEachMilli, lessPaid);
  }
}
