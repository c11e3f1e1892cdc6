package guildwood.siteplan.web;

import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PlanPoints;
import guildwood.web.Form;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Points as pairs of number fields, {@code x.1} and {@code y.1} the first; rows with nothing in them count for nothing. */
final class PointFields {
  private static final String EAST = "x.";
  private static final String NORTH = "y.";

  private PointFields() {}

  /** A pair of fields as it is shown. */
  record Row(int number, String x, String y, String wrongX, String wrongY) {}

  static void fill(Map<String, String> values, List<GroundPoint> points, Units units) {
    for (int i = 0; i < points.size(); i++) {
      LengthFields.put(values, EAST + (i + 1), points.get(i).xM(), units);
      LengthFields.put(values, NORTH + (i + 1), points.get(i).yM(), units);
    }
  }

  static void blank(Map<String, String> values, int rows) {
    IntStream.rangeClosed(1, rows).forEach(i -> {
      values.put(EAST + i, "");
      values.put(NORTH + i, "");
    });
  }

  /** Numbers of the rows in the form, in their order. */
  private static List<Integer> numbers(Form form) {
    return IntStream.concat(form.names(EAST).stream().mapToInt(PointFields::number), form.names(NORTH).stream().mapToInt(PointFields::number))
        .filter(number -> number > 0).distinct().sorted().boxed().toList();
  }

  private static int number(String text) {
    return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
  }

  static List<Row> rows(Form form) {
    return numbers(form).stream().map(i -> new Row(i, form.value(EAST + i), form.value(NORTH + i),
        form.messageOf(EAST + i), form.messageOf(NORTH + i))).toList();
  }

  /**
   * Reads the points; the form knows what is wrong with those that are missing.
   *
   * @param before as they were when the fields were filled in; a field nobody touched keeps its last digit
   */
  static List<GroundPoint> read(Form form, List<GroundPoint> before) {
    LengthFields lengths = LengthFields.of(form);
    List<GroundPoint> points = new ArrayList<>();
    for (int i : numbers(form)) {
      if (form.ticked(EAST + i) || form.ticked(NORTH + i)) {
        Optional<GroundPoint> kept = i <= before.size() ? Optional.of(before.get(i - 1)) : Optional.empty();
        Optional<Double> east = lengths.required(EAST + i, PlanPoints.REACH_M, kept.map(GroundPoint::xM));
        Optional<Double> north = lengths.required(NORTH + i, PlanPoints.REACH_M, kept.map(GroundPoint::yM));
        east.flatMap(x -> north.map(y -> new GroundPoint(x, y))).ifPresent(points::add);
      }
    }
    return points;
  }

  /** The points that can be read, for drawing them while the form is being worked on. */
  static List<GroundPoint> readable(Form form) {
    LengthFields lengths = LengthFields.of(form);
    return numbers(form).stream().flatMap(i -> lengths.plain(form.value(EAST + i), PlanPoints.REACH_M)
        .flatMap(x -> lengths.plain(form.value(NORTH + i), PlanPoints.REACH_M).map(y -> new GroundPoint(x, y))).stream()).toList();
  }

  /**
   * What stands in the form after a button for rows was pressed.
   *
   * @param what {@code add:3}, a row after the third, or {@code remove:3}
   */
  static Form changed(Form form, String what, Map<String, List<String>> typed, Messages messages) {
    int at = number(what.substring(what.indexOf(':') + 1));
    boolean add = what.startsWith("add:");
    List<String[]> pairs = new ArrayList<>();
    for (int i : numbers(form)) {
      if (add || i != at) {
        pairs.add(new String[] {form.value(EAST + i), form.value(NORTH + i)});
      }
      if (add && i == at) {
        pairs.add(new String[] {"", ""});
      }
    }
    if (add && at == 0) {
      pairs.add(new String[] {"", ""});
    }
    Map<String, List<String>> values = new LinkedHashMap<>(typed);
    values.keySet().removeIf(name -> name.startsWith(EAST) || name.startsWith(NORTH));
    for (int i = 0; i < pairs.size(); i++) {
      values.put(EAST + (i + 1), List.of(pairs.get(i)[0]));
      values.put(NORTH + (i + 1), List.of(pairs.get(i)[1]));
    }
    return Form.filled(values, messages);
  }
}
