package guildwood.guild.search;

/**
 * Something that can be chosen, with a count.
 *
 * @param fewest least count once chosen, at least 1
 * @param fewestAlone the same where it needs a partner and none is chosen; {@link #NEVER} where no count will do
 * @param most highest count, at least {@code fewest}
 * @param free how many cost nothing
 * @param price of each further one, in the unit of the budget
 * @param enough how many are worth {@code eachMilli}
 * @param eachMilli value of each one up to enough
 * @param beyondMilli value of each further one; no more than {@code eachMilli}
 * @param lessPaidMilli what the value is less for each one that is paid for; not negative
 * @param adds what each one adds to the tally
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
    int price,
    int enough,
    int eachMilli,
    int beyondMilli,
    int lessPaidMilli,
    long adds,
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
    if (fewest < 1 || most < fewest || free < 0 || price < 0 || enough < 0 || beyondMilli > eachMilli || lessPaidMilli < 0
        || adds < 0) {
      throw new IllegalArgumentException("an item of " + fewest + " to " + most + ", " + free + " free, at " + price
          + ", worth " + eachMilli + " up to " + enough + ", then " + beyondMilli + ", less " + lessPaidMilli);
    }
    uses = uses.clone();
    units = units.clone();
    partners = partners.clone();
  }

  Item worth(int each, int beyond, int lessPaid) {
    return new Item(fewest, fewestAlone, most, free, price, enough, each, beyond, lessPaid, adds, uses, units, group, gives,
        suffers, needsPartner, partners);
  }

  Item using(long[] others) {
    return new Item(fewest, fewestAlone, most, free, price, enough, eachMilli, beyondMilli, lessPaidMilli, adds, others,
        units, group, gives, suffers, needsPartner, partners);
  }

  Item withPartners(int[] others) {
    return new Item(fewest, fewestAlone, most, free, price, enough, eachMilli, beyondMilli, lessPaidMilli, adds, uses,
        units, group, gives, suffers, needsPartner, others);
  }
}
