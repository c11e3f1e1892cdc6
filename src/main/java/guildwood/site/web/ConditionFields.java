package guildwood.site.web;

import guildwood.kernel.Finding;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.ConditionReader.Entry;
import guildwood.site.NamedClasses;
import guildwood.site.PhClass;
import guildwood.species.Axis;
import guildwood.species.ClassWords;
import guildwood.web.Form;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The fields in which people state conditions, shared by the forms of sites and beds. */
public final class ConditionFields {
  /** The axes that are stated one by one; winter and season belong to the climate. */
  public static final List<Axis> AXES = List.of(Axis.LIGHT, Axis.MOISTURE, Axis.REACTION, Axis.FERTILITY, Axis.TEXTURE);

  /** What people can name as their basis, in the order offered. */
  static final List<String> BASES = List.of(Basis.OBSERVED.key(), Basis.MEASURED.key(), Basis.PUBLISHED.key());

  private ConditionFields() {}

  /**
   * One row of fields.
   *
   * @param axis key, and the beginning of the names of its fields
   * @param words that can be typed
   * @param bases that can be chosen
   * @param otherwise what holds where the row stays empty; may be empty
   */
  public record Row(String axis, String help, List<String> words, List<String> bases, String otherwise) {}

  /** Fills the fields with conditions stated before. */
  public static Map<String, String> filled(Map<Axis, Condition> conditions) {
    Map<String, String> values = new HashMap<>();
    for (Axis axis : AXES) {
      values.put(axis.key() + "-basis", Basis.OBSERVED.key());
      Condition condition = conditions.get(axis);
      if (condition != null) {
        Entry entry = ConditionReader.again(condition);
        values.put(axis.key() + "-from", entry.from());
        values.put(axis.key() + "-to", entry.to());
        values.put(axis.key() + "-basis", entry.basis());
      }
    }
    return values;
  }

  /**
   * Reads the fields. Conditions on other axes stay as they were, and so does one the program worked out
   * (from a survey or the sun's path) as long as nobody changes it.
   */
  public static Map<Axis, Condition> take(Form form, Map<Axis, Condition> before) {
    Map<Axis, Condition> conditions = new EnumMap<>(Axis.class);
    before.forEach((axis, condition) -> {
      if (!AXES.contains(axis)) {
        conditions.put(axis, condition);
      }
    });
    for (Axis axis : AXES) {
      Entry typed = new Entry(form.value(axis.key() + "-from"), form.value(axis.key() + "-to"), form.value(axis.key() + "-basis"));
      Condition stated = before.get(axis);
      if (stated != null && typed.equals(ConditionReader.again(stated))) {
        conditions.put(axis, stated);
      } else if (!typed.isEmpty() && workedOut(stated) && typed.basis().equals(stated.basis().key())) {
        form.refuse(Finding.of("condition.changed-by-hand", axis.key() + "-basis"));
      } else {
        form.take(ConditionReader.read(axis, typed, axis.key())).ifPresent(read -> read.ifPresent(c -> conditions.put(axis, c)));
      }
    }
    return conditions;
  }

  private static boolean workedOut(Condition condition) {
    return condition != null && !ConditionReader.CLAIMED.contains(condition.basis());
  }

  /**
   * The rows to show.
   *
   * @param before conditions as they are kept
   * @param otherwise by axis, what holds where nothing is stated
   */
  public static List<Row> rows(Map<Axis, Condition> before, Map<Axis, String> otherwise, Messages messages) {
    List<Row> rows = new ArrayList<>();
    for (Axis axis : AXES) {
      Condition stated = before.get(axis);
      List<String> bases = workedOut(stated) ? Stream.concat(Stream.of(stated.basis().key()), BASES.stream()).toList() : BASES;
      rows.add(new Row(axis.key(), help(axis, messages), NamedClasses.of(axis), bases, otherwise.getOrDefault(axis, "")));
    }
    return rows;
  }

  /** Whether anything stands in the fields. */
  public static boolean anyTyped(Form form) {
    return AXES.stream().anyMatch(a -> form.ticked(a.key() + "-from") || form.ticked(a.key() + "-to"));
  }

  /** The classes of soil reaction with their numbers, to look up. */
  public static List<String> phClasses(Messages messages) {
    return Stream.of(PhClass.values())
        .map(c -> messages.say("site.ph-class", c.word(), Units.number(c.range().min(), 1), Units.number(c.range().max(), 1))).toList();
  }

  private static String help(Axis axis, Messages messages) {
    return messages.say("site.help." + axis.key(),
        Units.number(ConditionReader.spread(axis, Basis.MEASURED), 1), Units.number(ConditionReader.spread(axis, Basis.OBSERVED), 1),
        axis == Axis.LIGHT ? ClassWords.LIGHT_SCHEME : PhClass.SCHEME);
  }
}
