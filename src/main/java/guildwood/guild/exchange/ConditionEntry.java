package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.ClimateReader;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.exchange.JsonEntry;
import guildwood.species.Axis;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads one condition of a bed file. Two numbers in a list are taken as they are; a word or a single number
 * is read as the pages read it, so that a single pH stands for a bed that is not the same everywhere.
 */
final class ConditionEntry {
  private final Axis axis;
  private final Basis basis;
  private final String place;
  private final List<Finding> findings;

  private ConditionEntry(Axis axis, Basis basis, String place, List<Finding> findings) {
    this.axis = axis;
    this.basis = basis;
    this.place = place;
    this.findings = findings;
  }

  /** @param node a word, a number, a list of two, or an object with {@code range} and {@code basis} */
  static Optional<Condition> read(Axis axis, JsonNode node, String place, List<Finding> findings, List<String> ignored) {
    if (!node.isObject()) {
      return new ConditionEntry(axis, Basis.OBSERVED, place, findings).condition(node);
    }
    JsonEntry entry = new JsonEntry(node, place, findings);
    Optional<Basis> basis = entry.given("basis") ? basis(entry) : Optional.of(Basis.OBSERVED);
    Optional<JsonNode> range = entry.node("range");
    ignored.addAll(entry.unread());
    return range.flatMap(r -> new ConditionEntry(axis, basis.orElse(Basis.OBSERVED), entry.at("range"), findings).condition(r));
  }

  private static Optional<Basis> basis(JsonEntry entry) {
    Optional<String> key = entry.text("basis");
    Optional<Basis> basis = key.flatMap(k -> Arrays.stream(Basis.values()).filter(b -> b.key().equals(k)).findFirst());
    if (key.isPresent() && basis.isEmpty()) {
      entry.refuse(Finding.of("value.unknown-word", entry.at("basis"), key.get(),
          String.join(", ", Arrays.stream(Basis.values()).map(Basis::key).toList())));
    }
    return basis;
  }

  private Optional<Condition> condition(JsonNode node) {
    boolean two = node.isArray() && node.size() == 2;
    if (two && node.get(0).isNumber() && node.get(1).isNumber()) {
      return numbers(node);
    }
    if (two && node.get(0).isTextual() && node.get(1).isTextual()) {
      return words(node.get(0).textValue(), node.get(1).textValue());
    }
    if (node.isTextual()) {
      return words(node.textValue(), "");
    }
    if (node.isNumber()) {
      return number(node);
    }
    findings.add(Finding.of("compose.condition-form", place));
    return Optional.empty();
  }

  private Optional<Condition> numbers(JsonNode pair) {
    OptionalDouble low = JsonEntry.number(pair.get(0), place + "[0]", scale(), findings);
    OptionalDouble high = JsonEntry.number(pair.get(1), place + "[1]", scale(), findings);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.getAsDouble() > high.getAsDouble()) {
      findings.add(Finding.of("range.backwards", place, written(pair.get(0)), written(pair.get(1))));
      return Optional.empty();
    }
    boolean whole = low.getAsDouble() == Math.rint(low.getAsDouble()) && high.getAsDouble() == Math.rint(high.getAsDouble());
    if (axis == Axis.TEXTURE && !whole) {
      findings.add(Finding.of("compose.texture-classes", place));
      return Optional.empty();
    }
    return Optional.of(new Condition(axis, new Range(low.getAsDouble(), high.getAsDouble()), basis,
        written(pair.get(0)) + " to " + written(pair.get(1))));
  }

  private Optional<Condition> number(JsonNode node) {
    OptionalDouble value = JsonEntry.number(node, place, scale(), findings);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    return axis == Axis.WINTER_COLD || axis == Axis.SEASON
        ? Optional.of(new Condition(axis, Range.of(value.getAsDouble()), basis, written(node)))
        : words(written(node), "");
  }

  private Range scale() {
    return new Range(axis.lowest(), axis.highest());
  }

  private Optional<Condition> words(String from, String to) {
    // People's own bases widen single numbers; what was worked out counts like what was seen.
    Basis claimed = ConditionReader.CLAIMED.contains(basis) ? basis : Basis.OBSERVED;
    Checked<Optional<Condition>> read = switch (axis) {
      case WINTER_COLD -> ClimateReader.winter(joined(from, to), claimed, place);
      case SEASON -> season(joined(from, to));
      default -> ConditionReader.read(axis, new ConditionReader.Entry(from, to, claimed.key()), place);
    };
    List<Finding> refused = new ArrayList<>(read.findings());
    if (!read.isRefused() && read.orThrow().isEmpty()) {
      refused.add(Finding.of("compose.condition-form", place));
    }
    refused.forEach(f -> findings.add(new Finding(f.code(), place, f.args())));
    return read.value().flatMap(c -> c).map(c -> new Condition(axis, c.range(), basis, c.entered()));
  }

  private Checked<Optional<Condition>> season(String text) {
    return TraitReader.read(Trait.FROST_FREE_DAYS, text, place)
        .map(v -> Optional.of(new Condition(axis, ((TraitValue.Span) v).range(), basis, text)));
  }

  private static String joined(String from, String to) {
    return to.isEmpty() ? from : from + " to " + to;
  }

  /** A number as people write it: the file may have written it with an exponent. */
  private static String written(JsonNode number) {
    return new BigDecimal(Double.toString(number.doubleValue())).stripTrailingZeros().toPlainString();
  }
}
