package guildwood.site.survey.web;

import guildwood.kernel.Range;
import guildwood.site.PhClass;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.AxisReading.Voice;
import guildwood.site.survey.Posterior;
import guildwood.site.survey.SurveyAxis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * The picture of one axis, ready to be drawn: the curve above the scale, its interval, and below it a bar for the
 * range of each species. Lengths are in units of the drawing, {@link #WIDTH} wide. Nothing depends on colour.
 *
 * @param curve outline of the whole curve
 * @param inside the part of it over the interval; empty where there is no call
 * @param more species that speak but are not drawn
 */
public record AxisPicture(
    String id, int height, String curve, String inside, String intervalLeft, String intervalRight, String median,
    List<Mark> marks, List<String> borders, List<Bar> bars, int more, String title, String description) {
  public static final int WIDTH = 400;
  static final int MOST_BARS = 15;
  private static final double LEFT = 12;
  private static final double RIGHT = 388;
  private static final double TOP = 26;
  private static final double BASE = 104;
  private static final int FIRST_BAR = 152;
  private static final int ROW = 32;
  private static final int SAMPLES = 100;

  /** A word or number at a place of the scale. */
  public record Mark(String x, String y, String anchor, String text) {}

  /** The range of a species; dashed where it is a generalist. */
  public record Bar(String label, String pull, int textY, int y, String x, String width, boolean generalist) {}

  /** @param nameOf common name of a species */
  static AxisPicture of(AxisReading reading, UnaryOperator<String> nameOf, Messages messages) {
    AxisWords words = new AxisWords(messages);
    SurveyAxis axis = reading.axis();
    List<Voice> strongest = reading.voices().stream()
        .sorted(Comparator.comparingDouble(Voice::weight).reversed()).limit(MOST_BARS).toList();
    List<Bar> bars = new ArrayList<>();
    for (Voice voice : strongest) {
      int y = FIRST_BAR + bars.size() * ROW;
      double from = place(reading.scale(), voice.reach().min());
      double to = place(reading.scale(), voice.reach().max());
      bars.add(new Bar(messages.say("reading.bar", nameOf.apply(voice.species()), percent(voice.weight())),
          words.arrow(axis, voice.pull()), y + 11, y + 15, at(from), at(Math.max(2, to - from)), voice.generalist()));
    }
    Range interval = reading.interval80();
    boolean called = reading.called();
    return new AxisPicture(axis.key(), FIRST_BAR + bars.size() * ROW + 4,
        area(reading.curve(), reading.scale(), reading.scale()), called ? area(reading.curve(), reading.scale(), interval) : "",
        at(place(reading.scale(), interval.min())), at(place(reading.scale(), interval.max())),
        called ? at(place(reading.scale(), reading.median())) : "", marks(reading, messages), borders(reading), bars,
        reading.voices().size() - bars.size(), messages.say("reading.picture.title", words.label(axis)),
        description(reading, strongest.size(), words, messages));
  }

  private static String description(AxisReading reading, int bars, AxisWords words, Messages messages) {
    String scale = words.classes(reading.axis(), reading.scale());
    return reading.called()
        ? messages.say("reading.picture.desc", scale, words.classes(reading.axis(), reading.median()),
            words.full(reading.axis(), reading.interval80()), bars)
        : messages.say("reading.picture.desc-no-call", scale, bars);
  }

  /** The area between curve and scale over a part of the scale, as a path. */
  private static String area(Posterior curve, Range scale, Range part) {
    double most = 0;
    for (int i = 0; i < curve.points(); i++) {
      most = Math.max(most, curve.density(i));
    }
    StringBuilder path = new StringBuilder("M" + at(place(scale, part.min())) + " " + at(BASE));
    for (int k = 0; k <= SAMPLES; k++) {
      double value = part.min() + part.width() * k / SAMPLES;
      int point = (int) Math.round((value - scale.min()) / scale.width() * (curve.points() - 1));
      path.append(" L").append(at(place(scale, value))).append(' ').append(at(BASE - (BASE - TOP) * curve.density(point) / most));
    }
    return path.append(" L").append(at(place(scale, part.max()))).append(' ').append(at(BASE)).append(" Z").toString();
  }

  private static List<Mark> marks(AxisReading reading, Messages messages) {
    Range scale = reading.scale();
    return switch (reading.axis()) {
      case LIGHT -> joined(List.of(word(scale, 1.5, messages.say("reading.mark.full-shade")),
          word(scale, 4.5, messages.say("reading.mark.part-shade")), word(scale, 11, messages.say("reading.mark.full-sun"))),
          numbers(scale, 0, 3, 6, 9, 12, 16));
      case REACTION -> joined(List.of(word(scale, 5, messages.say("reading.mark.acid")),
          word(scale, 6.95, messages.say("reading.mark.neutral")), word(scale, 8.2, messages.say("reading.mark.alkaline"))),
          numbers(scale, 4, 5, 6, 7, 8, 9));
      case MOISTURE, FERTILITY, WETNESS -> steps(reading, messages);
    };
  }

  /** Every class has its word at its own number. */
  private static List<Mark> steps(AxisReading reading, Messages messages) {
    List<Mark> marks = new ArrayList<>();
    for (int step = (int) reading.scale().min(); step <= reading.scale().max(); step++) {
      marks.add(word(reading.scale(), step, messages.say("reading.mark." + reading.axis().key() + "." + step)));
    }
    return marks;
  }

  private static List<Mark> joined(List<Mark> words, List<Mark> numbers) {
    List<Mark> all = new ArrayList<>(words);
    all.addAll(numbers);
    return all;
  }

  private static List<Mark> numbers(Range scale, int... values) {
    return Arrays.stream(values).mapToObj(v -> mark(scale, v, BASE + 14, Integer.toString(v))).toList();
  }

  private static Mark word(Range scale, double value, String text) {
    return mark(scale, value, TOP - 10, text);
  }

  /** Words at the ends of the scale are set inwards. */
  private static Mark mark(Range scale, double value, double y, String text) {
    String anchor = value <= scale.min() ? "start" : value >= scale.max() ? "end" : "middle";
    return new Mark(at(place(scale, value)), at(y), anchor, text);
  }

  /** Where one class ends and the next begins. */
  private static List<String> borders(AxisReading reading) {
    Range scale = reading.scale();
    double[] places = switch (reading.axis()) {
      case LIGHT -> new double[] {3, 6};
      // The table is printed to one decimal: a class begins half a tenth below its first value.
      case REACTION -> Arrays.stream(PhClass.values()).mapToDouble(c -> c.range().min() - 0.05)
          .filter(p -> p > scale.min() && p < scale.max()).toArray();
      case MOISTURE, WETNESS -> new double[] {1.5, 2.5, 3.5, 4.5};
      case FERTILITY -> new double[] {1.5, 2.5};
    };
    return Arrays.stream(places).mapToObj(p -> at(place(scale, p))).toList();
  }

  private static double place(Range scale, double value) {
    return LEFT + (RIGHT - LEFT) * (value - scale.min()) / scale.width();
  }

  private static String percent(double part) {
    return Units.number(100 * part, 0);
  }

  private static String at(double length) {
    return String.format(Locale.ROOT, "%.1f", length);
  }
}
