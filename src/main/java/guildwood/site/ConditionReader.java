package guildwood.site;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what people write about a place on one axis: numbers or class words, from and to.
 *
 * <p>A place is a range, never a bare number. A class word stands for the class's own range. A single number
 * of hours or pH is widened by {@link #spread}, because neither holds over a whole bed and a whole season.
 */
public final class ConditionReader {
  /** The longest text accepted for one end, characters. */
  public static final int LONGEST_END = 50;

  /** What people can claim themselves; the rest is worked out by the program. */
  public static final Set<Basis> CLAIMED =
      java.util.Collections.unmodifiableSet(EnumSet.of(Basis.MEASURED, Basis.OBSERVED, Basis.PUBLISHED));

  private static final String BETWEEN = "\\s*(?:\\.\\.|–|\\bto\\b|(?<=[0-9])\\s*-\\s*(?=[0-9]))\\s*";

  private ConditionReader() {}

  /**
   * What was typed.
   *
   * @param to may be empty: then {@code from} is a class word or a single number
   * @param basis a key of {@link Basis}
   */
  public record Entry(String from, String to, String basis) {
    public Entry {
      from = from.strip();
      to = to.strip();
    }

    public boolean isEmpty() {
      return from.isEmpty() && to.isEmpty();
    }
  }

  /** Half the width given to a single number, in the unit of the axis. Our own choice, no publication. */
  public static double spread(Axis axis, Basis basis) {
    return switch (axis) {
      case LIGHT -> basis == Basis.MEASURED ? 0.5 : 1;
      case REACTION -> basis == Basis.MEASURED ? 0.2 : 0.5;
      default -> 0;
    };
  }

  /**
   * Reads one axis; nothing typed is nothing stated.
   *
   * @param field name before {@code -from}, {@code -to} and {@code -basis}
   */
  public static Checked<Optional<Condition>> read(Axis axis, Entry typed, String field) {
    if (typed.isEmpty()) {
      return Checked.of(Optional.empty());
    }
    Entry entry = apart(typed);
    List<Finding> findings = new ArrayList<>();
    Optional<Basis> basis = CLAIMED.stream().filter(b -> b.key().equals(entry.basis())).findFirst();
    if (basis.isEmpty()) {
      findings.add(Finding.of("condition.basis", field + "-basis"));
    }
    Checked<Range> from = end(axis, entry.from(), field + "-from");
    Checked<Range> to = entry.to().isEmpty() ? from : end(axis, entry.to(), field + "-to");
    findings.addAll(from.findings());
    if (!entry.to().isEmpty()) {
      findings.addAll(to.findings());
    }
    Optional<Range> stated = findings.isEmpty() ? joined(axis, entry, from.orThrow(), to.orThrow()) : Optional.empty();
    if (findings.isEmpty() && stated.isEmpty()) {
      findings.add(Finding.of("condition.backwards", field + "-to", entry.from(), entry.to()));
    }
    if (!findings.isEmpty()) {
      return Checked.refused(findings);
    }
    String entered = entry.to().isEmpty() ? entry.from() : entry.from() + " to " + entry.to();
    return Checked.of(Optional.of(new Condition(axis, widened(axis, stated.orElseThrow(), basis.orElseThrow()), basis.orElseThrow(), entered)));
  }

  /** What to put into the two fields again for a condition that was entered before. */
  public static Entry again(Condition condition) {
    return apart(new Entry(condition.entered(), "", condition.basis().key()));
  }

  /** Two class words name their hull in whatever order; where a number is one end, the ends must run upwards. */
  private static Optional<Range> joined(Axis axis, Entry entry, Range from, Range to) {
    boolean twoWords = NamedClasses.range(axis, folded(entry.from())).isPresent() && NamedClasses.range(axis, folded(entry.to())).isPresent();
    if (twoWords) {
      return Optional.of(from.hull(to));
    }
    // 'Full sun to 6' touches in one point only and says nothing that can be meant.
    boolean touches = from.min() == to.max() && (from.width() > 0 || to.width() > 0);
    return from.min() > to.max() || touches ? Optional.empty() : Optional.of(new Range(from.min(), to.max()));
  }

  /** Whether a condition people stated was a single number that {@link #spread} made a range of. */
  public static boolean isWidened(Condition condition) {
    Entry entry = again(condition);
    return CLAIMED.contains(condition.basis()) && spread(condition.axis(), condition.basis()) > 0 && condition.range().width() > 0
        && (entry.to().isEmpty() || entry.to().equals(entry.from()))
        && NamedClasses.range(condition.axis(), folded(entry.from())).isEmpty();
  }

  /** Takes '5.5 to 6.5' in one field as if it stood in both. */
  private static Entry apart(Entry typed) {
    if (!typed.to().isEmpty()) {
      return typed;
    }
    String[] ends = typed.from().split(BETWEEN, -1);
    return ends.length == 2 && !ends[0].isEmpty() && !ends[1].isEmpty() ? new Entry(ends[0], ends[1], typed.basis()) : typed;
  }

  private static Checked<Range> end(Axis axis, String typed, String field) {
    if (typed.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    if (typed.length() > LONGEST_END) {
      return Checked.refused(Finding.of("text.too-long", field, LONGEST_END));
    }
    if (typed.chars().anyMatch(Character::isISOControl)) {
      return Checked.refused(Finding.of("text.control-characters", field));
    }
    String text = folded(typed);
    Optional<Range> named = NamedClasses.range(axis, text);
    if (named.isPresent()) {
      return Checked.of(named.get());
    }
    if (text.chars().noneMatch(Character::isDigit)) {
      return Checked.refused(Finding.of("condition.unknown-word", field, typed, String.join(", ", NamedClasses.of(axis))));
    }
    return NamedClasses.countsClasses(axis) ? classNumber(axis, text, field) : number(axis, text, field);
  }

  private static String folded(String typed) {
    return typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  private static Checked<Range> classNumber(Axis axis, String text, String field) {
    int least = (int) axis.lowest();
    int most = (int) axis.highest();
    if (!text.matches("\\d") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
      return Checked.refused(Finding.of("condition.class-number", field, least, most));
    }
    return Checked.of(Range.of(Integer.parseInt(text)));
  }

  private static Checked<Range> number(Axis axis, String text, String field) {
    Trait trait = axis == Axis.LIGHT ? Trait.LIGHT : Trait.PH;
    String bare = axis == Axis.REACTION ? text.replaceFirst("^ph\\s*", "") : text;
    Checked<Range> read = TraitReader.read(trait, bare, field).map(v -> ((TraitValue.Span) v).range());
    boolean several = read.value().map(r -> r.width() > 0).orElse(false);
    // pH has no unit that could be suggested instead.
    boolean unit = axis == Axis.REACTION && read.findings().stream().anyMatch(f -> f.code().startsWith("number.unit"));
    return several || unit ? Checked.refused(Finding.of("number.unreadable", field, text)) : read;
  }

  private static Range widened(Axis axis, Range stated, Basis basis) {
    double spread = spread(axis, basis);
    if (stated.width() > 0 || spread == 0) {
      return stated;
    }
    return new Range(Math.max(axis.lowest(), sum(stated.min(), -spread)), Math.min(axis.highest(), sum(stated.max(), spread)));
  }

  /** Adds in decimals, so that 6.4 + 0.2 is 6.6 and nothing near it. */
  private static double sum(double a, double b) {
    return BigDecimal.valueOf(a).add(BigDecimal.valueOf(b)).setScale(6, RoundingMode.HALF_UP).doubleValue();
  }
}
