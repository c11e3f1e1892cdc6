package guildwood.guild;

import java.util.List;

/**
 * What everything is worth in one bed, in thousandths of a point, so that a score is exact to the last one.
 *
 * <p>Of 100 points the wishes share 80 by weight, plants that suit the bed earn up to 17 for the ground
 * their crowns cover, and 3 are left for needing few new plants. Without wishes the suiting plants earn up
 * to 97. A wish's points go to its first, second and third provider as 4 : 2 : 1; a wish for covered ground earns in
 * proportion to what is covered, up to the wished share. Every layer can earn a
 * seventh of the points for suiting plants, by covering the whole bed with plants of fit 1 of at least ten
 * kinds: of one species, plants beyond a tenth of the bed earn a quarter. With these shares, and two plants
 * allowed a square metre, more plants pay where the crown is wider than about 0.9 m; smaller ones come for
 * what they do. All of this is a choice of ours.
 *
 * @param wishMilli points of every wish, in the order of the problem's wishes
 * @param fitMilli points for suiting plants
 * @param thriftMilli points for needing few new plants
 * @param perPlantMilli what each plant to be bought takes from {@code thriftMilli}
 */
record PointScale(int[] wishMilli, int fitMilli, int thriftMilli, int perPlantMilli, int areaDm2) {
  static final int TOTAL_MILLI = 100_000;
  static final int WISHES_MILLI = 80_000;
  static final int THRIFT_MILLI = 3_000;
  static final int LAYERS = 7;
  private static final int MANY_KINDS = 10;

  /**
   * What is left of a score after so many unmet musts: each takes half of it, so that two guilds that miss
   * the same musts can still be told apart.
   */
  static int afterUnmetMusts(int earnedMilli, int unmet) {
    return unmet >= Integer.SIZE - 1 ? 0 : earnedMilli >> unmet;
  }

  /** Halves of a provider that still count towards a wish. */
  static final int MOST_UNITS = 3 * Services.WHOLE;

  static PointScale of(GuildProblem problem) {
    int[] wishes = shares(problem.wishes());
    int fit = TOTAL_MILLI - THRIFT_MILLI - (wishes.length == 0 ? 0 : WISHES_MILLI);
    int perPlant = THRIFT_MILLI / Math.max(1, problem.rules().maxPlants());
    return new PointScale(wishes, fit, THRIFT_MILLI, perPlant, Math.max(1, problem.areaDm2()));
  }

  /** Shares 80 points by weight; what rounding leaves goes to the first wishes, one thousandth each. */
  private static int[] shares(List<Wish> wishes) {
    int weights = wishes.stream().mapToInt(Wish::weight).sum();
    int[] shares = new int[wishes.size()];
    int left = WISHES_MILLI;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = (int) ((long) WISHES_MILLI * wishes.get(i).weight() / weights);
      left -= shares[i];
    }
    for (int i = 0; i < shares.length && left > 0; i++, left--) {
      shares[i]++;
    }
    return shares;
  }

  /** What a wish earns with so many halves of a provider; never less for one more, and ever less more. */
  int earned(int wish, int units) {
    int second = 2 * (wishMilli[wish] / 7);
    int third = wishMilli[wish] / 7;
    int first = wishMilli[wish] - second - third;
    return part(first, units) + part(second, units - Services.WHOLE) + part(third, units - 2 * Services.WHOLE);
  }

  /** The larger half comes first, so that the steps never grow. */
  private static int part(int whole, int units) {
    return units <= 0 ? 0 : units == 1 ? whole - whole / 2 : whole;
  }

  /**
   * How many plants of one species earn in full by suiting the bed: those that cover a tenth of it, and one
   * at least. Each further one earns a quarter, so that many kinds are worth more than many of a kind.
   */
  int enough(int crownDm2) {
    return Math.max(1, (areaDm2 / MANY_KINDS + crownDm2 - 1) / crownDm2);
  }

  /** What so many plants of one species earn by suiting the bed. */
  long fitMilliOf(Candidate candidate, int crownDm2, int count) {
    int each = fitMilliOf(candidate, crownDm2);
    int full = Math.min(count, enough(crownDm2));
    return (long) each * full + (long) beyond(each) * (count - full);
  }

  /** What a plant earns beyond enough. */
  static int beyond(int eachMilli) {
    return eachMilli / 4;
  }

  /** What one plant earns by suiting the bed, up to enough. */
  int fitMilliOf(Candidate candidate, int crownDm2) {
    return (int) ((long) fitMilli * crownDm2 * candidate.fitPermille() / (1000L * LAYERS * areaDm2));
  }

  /** The most one layer can earn by suiting plants. */
  int fitMilliOfLayer() {
    return fitMilli / LAYERS;
  }
}
