package guildwood.guild.web;

import guildwood.fit.Fit;
import guildwood.guild.BedPlan;
import guildwood.guild.Change;
import guildwood.guild.SoilAmendment;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the ground of a bed would need for one condition to move, with amounts only where somebody publishes them. */
final class GroundWords {
  private static final double POUND_G = 453.59237;
  private static final double SQUARE_FEET_IN_M2 = 1 / (0.3048 * 0.3048);

  private final Messages messages;
  private final Units units;
  private final BedPlan plan;

  GroundWords(Messages messages, Units units, BedPlan plan) {
    this.messages = messages;
    this.units = units;
    this.plan = plan;
  }

  List<String> about(Change.MoveCondition move) {
    List<String> sentences = new ArrayList<>();
    String key = "ground." + move.axis().key() + (move.by() >= 0 ? ".more" : ".less");
    if (messages.has(key)) {
      sentences.add(messages.say(key));
    }
    if (move.axis() == Axis.REACTION) {
      sentences.addAll(move.by() > 0 ? lime(move) : sulfur());
    }
    return sentences;
  }

  private List<String> lime(Change.MoveCondition move) {
    Map<Axis, Range> conditions = Fit.ranges(plan.conditions());
    Range texture = conditions.getOrDefault(Axis.TEXTURE, new Range(Axis.TEXTURE.lowest(), Axis.TEXTURE.highest()));
    Optional<Range> lime = SoilAmendment.limeGramsM2(move.from().middle(), move.to().middle(), texture);
    List<String> sentences = new ArrayList<>();
    lime.ifPresent(range -> sentences.add(messages.say("ground.lime", rate(range), weight(range, plan.bed().areaM2()))));
    sentences.add(messages.say("ground.lime.split"));
    return sentences;
  }

  private List<String> sulfur() {
    Range most = SoilAmendment.SULFUR_AT_A_TIME_G_M2;
    return List.of(messages.say("ground.sulfur", rate(most), weight(most, plan.bed().areaM2())), messages.say("ground.free-lime"));
  }

  /** Weight on an area, in the visitor's units. */
  private String rate(Range gramsM2) {
    return units == Units.US
        ? span(gramsM2, 1000 / SQUARE_FEET_IN_M2 / POUND_G) + " lb per 1,000 sq ft"
        : span(gramsM2, 1) + " g/m²";
  }

  private String weight(Range gramsM2, double areaM2) {
    return units == Units.US ? span(gramsM2, areaM2 / POUND_G) + " lb" : span(gramsM2, areaM2 / 1000) + " kg";
  }

  private static String span(Range range, double scale) {
    String low = twoDigits(range.min() * scale);
    String high = twoDigits(range.max() * scale);
    return low.equals(high) ? low : low + " – " + high;
  }

  /** Such rates are rough; two digits say all there is to say. */
  private static String twoDigits(double value) {
    return new BigDecimal(value).round(new MathContext(2, RoundingMode.HALF_UP)).stripTrailingZeros().toPlainString();
  }
}
