package guildwood.choosing.web;

import guildwood.fit.AxisFit;
import guildwood.fit.Fit;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;

/**
 * A verdict on the page.
 *
 * @param key for its colour
 * @param limit what holds the species back most; empty where nothing does
 * @param basis on how many conditions the verdict stands
 */
record VerdictView(String key, String word, String limit, String basis) {

  static VerdictView of(Fit fit, Units units, Messages messages) {
    String key = fit.verdict().key();
    String limit = fit.limiting().filter(axis -> axis.value() < 1).map(axis -> limit(axis, units, messages)).orElse("");
    return new VerdictView(key, messages.say("term.verdict." + key), limit,
        messages.say("choosing.verdict.basis", fit.axes().size(), Axis.values().length));
  }

  private static String limit(AxisFit axis, Units units, Messages messages) {
    String name = messages.say("term.axis." + axis.axis().key());
    if (axis.shortfall() == 0) {
      return messages.say("choosing.verdict.lowest", name, Units.number(axis.value(), 2));
    }
    String direction = axis.shortfall() > 0 ? ".more" : ".less";
    return messages.say("choosing.verdict.limit", name,
        messages.say("miss." + axis.axis().key() + direction, amount(axis.axis(), Math.abs(axis.shortfall()), units)));
  }

  /** Differences of temperature, unlike temperatures, convert without an offset. */
  private static String amount(Axis axis, double size, Units units) {
    return switch (axis) {
      case WINTER_COLD -> units == Units.US ? Units.number(size * 9 / 5, 0) + " °F" : Units.number(size, 1) + " °C";
      case SEASON -> Units.number(size, 0);
      default -> Units.number(size, 1);
    };
  }
}
