package guildwood.guild.search;

/**
 * Something that can be chosen, with a count.
 *
 * @param fewest least count once chosen, at least 1
 * @param fewestAlone the same where it needs a partner and none is chosen; {@link #NEVER} where no count will do
 * @param most highest count, at least {@code fewest}
 * @param free how many cost nothing
 * @param eachMilli value of each one that costs nothing
 * @param eachPaidMilli value of each further one; no more than {@code eachMilli}
 * @param price of each further one, in the unit of the budget
 * @param uses how much each one takes of every cap
 * @param units how much choosing it counts towards every aim, whatever the count
 * @param group whose members are limited in number; {@link #NO_GROUP} where it has none
 * @param gives bits of what it spreads
 * @param suffers bits of what it cannot stand beside
 * @param needsPartner whether another item must be chosen with it, or {@code fewestAlone} of it
 * @param partners the items that would do, by index
 */
public record Item(
    int fewest,
    int fewestAlone,
    int most,
    int free,
    int eachMilli,
    int eachPaidMilli,
    int price,
    long[] uses,
    int[] units,
    int group,
    long gives,
    long suffers,
    boolean needsPartner,
    int[] partners) {
  public static final int NEVER = Integer.MAX_VALUE;
  public static final int NO_GROUP = -1;

  public Item {
    if (fewest < 1 || most < fewest || free < 0 || price < 0 || eachPaidMilli > eachMilli) {
      throw new IllegalArgumentException("an item of " + fewest + " to " + most + ", " + free + " free, at " + price
          + ", worth " + eachMilli + " and " + eachPaidMilli);
    }
    uses = uses.clone();
    units = units.clone();
    partners = partners.clone();
  }

  Item worth(int each, int eachPaid) {
    return new Item(fewest, fewestAlone, most, free, each, eachPaid, price, uses, units, group, gives, suffers,
        needsPartner, partners);
  }

  Item withPartners(int[] others) {
    return new Item(fewest, fewestAlone, most, free, eachMilli, eachPaidMilli, price, uses, units, group, gives, suffers,
        needsPartner, others);
  }
}
