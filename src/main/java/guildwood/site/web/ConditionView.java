package guildwood.site.web;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.NamedClasses;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;

/**
 * A condition in words.
 *
 * @param axis key of the axis
 * @param known whether anything is stated; where not, the other texts are empty
 * @param range numbers with their unit; empty where the classes say it all
 * @param classes names of the classes the range lies in; may be empty
 * @param basis where it comes from
 * @param entered as people wrote it
 * @param remark what was made of the entry; may be empty
 * @param inherited whether it is the site's and not the bed's own
 */
public record ConditionView(
    String axis, String label, boolean known, String range, String classes, String basis, String entered, String remark, boolean inherited) {

  /** A condition of a site. */
  public static ConditionView of(Condition condition, Units units, Messages messages) {
    return of(condition, messages.say("site.basis." + condition.basis().key()), condition, units, messages);
  }

  /** The site's condition, as it holds in a bed that says nothing of its own. */
  public static ConditionView inherited(Condition ofSite, Units units, Messages messages) {
    return of(ofSite.inherited(), messages.say("site.basis." + ofSite.basis().key()), ofSite, units, messages);
  }

  /** The length of the season, worked out from the site's frost dates. */
  public static ConditionView fromFrostDates(Condition season, String dates, Messages messages) {
    return new ConditionView(season.axis().key(), label(season.axis(), messages), true, range(season.axis(), season.range(), Units.METRIC, messages),
        "", messages.say("site.basis.frost-dates"), dates, "", true);
  }

  public static ConditionView unknown(Axis axis, Messages messages) {
    return new ConditionView(axis.key(), label(axis, messages), false, "", "", "", "", "", false);
  }

  private static ConditionView of(Condition condition, String basis, Condition stated, Units units, Messages messages) {
    Axis axis = condition.axis();
    String remark = ConditionReader.isWidened(stated)
        ? messages.say("site.widened." + axis.key(), Units.number(ConditionReader.spread(axis, stated.basis()), 1)) : "";
    return new ConditionView(axis.key(), label(axis, messages), true, range(axis, condition.range(), units, messages),
        NamedClasses.describe(axis, condition.range()), basis, condition.entered(), remark, condition.basis() == Basis.INHERITED);
  }

  /** The class where there is one, otherwise the numbers: the shortest way to say it. */
  public String brief() {
    return axis.equals(Axis.REACTION.key()) || classes.isEmpty() ? range : classes;
  }

  /** Classes and numbers together. */
  public String full() {
    return classes.isEmpty() ? range : range.isEmpty() ? classes : classes + " (" + range + ")";
  }

  public static String label(Axis axis, Messages messages) {
    return messages.say("site.axis." + axis.key());
  }

  private static String range(Axis axis, Range range, Units units, Messages messages) {
    return switch (axis) {
      case WINTER_COLD -> joined(units.temperature(range.min()), units.temperature(range.max()));
      case REACTION -> messages.say("site.range.ph", joined(ph(range.min()), ph(range.max())));
      case TEXTURE -> "";
      case LIGHT, MOISTURE, FERTILITY, SEASON ->
          messages.say("site.range." + axis.key(), joined(Units.number(range.min(), 1), Units.number(range.max(), 1)));
    };
  }

  /** A pH is written with its first decimal. */
  private static String ph(double value) {
    String number = Units.number(value, 2);
    return number.contains(".") ? number : number + ".0";
  }

  private static String joined(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }
}
