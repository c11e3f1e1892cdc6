package guildwood.site.survey.web;

import guildwood.kernel.Range;
import guildwood.site.NamedClasses;
import guildwood.site.survey.SurveyAxis;
import guildwood.web.Messages;
import guildwood.web.Units;

/** Places on the axes in words: always the class, with the number beside it. */
public final class AxisWords {
  /** Pulls that round to less than this are none. */
  private static final double LEAST_STEP = 0.005;

  private final Messages messages;

  public AxisWords(Messages messages) {
    this.messages = messages;
  }

  public String label(SurveyAxis axis) {
    return messages.say("reading.axis." + axis.key());
  }

  /** The class or classes of a range. */
  public String classes(SurveyAxis axis, Range range) {
    if (axis.axis().isPresent()) {
      return NamedClasses.describe(axis.axis().get(), range);
    }
    String low = rating(range.min());
    String high = rating(range.max());
    return low.equals(high) ? low : messages.say("reading.from-to", low, high);
  }

  public String classes(SurveyAxis axis, double place) {
    return classes(axis, Range.of(place));
  }

  /** The numbers of a range with their unit. */
  public String numbers(SurveyAxis axis, Range range) {
    String low = number(range.min());
    String high = number(range.max());
    return messages.say("reading.unit." + axis.key(), low.equals(high) ? low : messages.say("reading.from-to", low, high));
  }

  public String full(SurveyAxis axis, Range range) {
    return messages.say("reading.full", classes(axis, range), numbers(axis, range));
  }

  public String full(SurveyAxis axis, double place) {
    return full(axis, Range.of(place));
  }

  /** A shift of the median: how far, and which way. */
  public String pull(SurveyAxis axis, double shift) {
    return Math.abs(shift) < LEAST_STEP ? messages.say("reading.pull.none")
        : messages.say("reading.pull", Units.number(Math.abs(shift), 2), direction(axis, shift));
  }

  /** An arrow and a word; empty where there is no pull. */
  public String arrow(SurveyAxis axis, double shift) {
    return Math.abs(shift) < LEAST_STEP ? "" : (shift < 0 ? "← " : "→ ") + direction(axis, shift);
  }

  private String direction(SurveyAxis axis, double shift) {
    return messages.say("reading.way." + axis.key() + (shift < 0 ? ".down" : ".up"));
  }

  private String rating(double place) {
    return messages.say("reading.rating." + Math.round(place));
  }

  private static String number(double value) {
    return Units.number(value, 1);
  }
}
