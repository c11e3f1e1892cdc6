package guildwood.site.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One object of a JSON file, read key by key. What is missing or wrong goes to the shared list of findings
 * with the key's place in the file, and reading goes on, so that one run names everything.
 */
public final class JsonEntry {
  private final JsonNode node;
  private final String place;
  private final List<Finding> findings;
  private final Set<String> read = new HashSet<>();

  public JsonEntry(JsonNode node, String place, List<Finding> findings) {
    this.node = node;
    this.place = place;
    this.findings = findings;
    if (!node.isObject()) {
      findings.add(Finding.of("json.not-object", place));
    }
  }

  /** A key's place in the file, for example {@code obstacles[1].heightM}. */
  public String at(String key) {
    return place.isEmpty() ? key : place + "." + key;
  }

  public boolean has(String key) {
    return node.has(key);
  }

  /** Whether the key is there; a null stands for a key that is left out. */
  public boolean given(String key) {
    read.add(key);
    return node.hasNonNull(key);
  }

  /** What stands under a key, whatever it is. */
  public Optional<JsonNode> node(String key) {
    return wanted(key);
  }

  public void refuse(Finding finding) {
    findings.add(finding);
  }

  public OptionalDouble number(String key, Range scale) {
    return wanted(key).map(value -> number(value, at(key), scale, findings)).orElse(OptionalDouble.empty());
  }

  public double number(String key, Range scale, double otherwise) {
    return has(key) ? number(key, scale).orElse(otherwise) : otherwise;
  }

  public static OptionalDouble number(JsonNode value, String place, Range scale, List<Finding> findings) {
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      findings.add(Finding.of("json.not-number", place));
    } else if (!scale.contains(value.doubleValue())) {
      findings.add(Finding.of("json.out-of-scale", place, plain(value.doubleValue()), plain(scale.min()), plain(scale.max())));
    } else {
      return OptionalDouble.of(value.doubleValue());
    }
    return OptionalDouble.empty();
  }

  public Optional<Integer> wholeNumber(String key, Range scale) {
    OptionalDouble number = number(key, scale);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
      refuse(Finding.of("json.not-whole", at(key)));
      return Optional.empty();
    }
    return Optional.of((int) number.getAsDouble());
  }

  /** True or false; false where the key is left out. */
  public boolean flag(String key) {
    Optional<JsonNode> value = has(key) ? wanted(key) : Optional.empty();
    if (value.isPresent() && !value.get().isBoolean()) {
      refuse(Finding.of("json.not-flag", at(key)));
    }
    return value.map(JsonNode::booleanValue).orElse(false);
  }

  public Optional<String> text(String key) {
    Optional<JsonNode> value = wanted(key);
    if (value.isPresent() && !value.get().isTextual()) {
      refuse(Finding.of("json.not-text", at(key)));
      return Optional.empty();
    }
    return value.map(JsonNode::textValue);
  }

  /** A day of the year written {@code MM-DD}. */
  Optional<MonthDay> day(String key) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      if (text.get().matches("[0-9]{2}-[0-9]{2}")) {
        return Optional.of(MonthDay.parse("--" + text.get()));
      }
    } catch (DateTimeException e) {
      // Falls through to the same finding as any other text that is no day.
    }
    refuse(Finding.of("json.not-day", at(key)));
    return Optional.empty();
  }

  /** The entries of a list; none where the key is left out. */
  public List<JsonNode> listIfGiven(String key) {
    return has(key) ? list(key) : List.of();
  }

  public List<JsonNode> list(String key) {
    Optional<JsonNode> value = wanted(key);
    if (value.isPresent() && !value.get().isArray()) {
      refuse(Finding.of("json.not-list", at(key)));
      return List.of();
    }
    List<JsonNode> entries = new ArrayList<>();
    value.ifPresent(list -> list.forEach(entries::add));
    return entries;
  }

  /** Places of the keys that nobody has asked for so far. */
  public List<String> unread() {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys.stream().filter(key -> !read.contains(key)).map(this::at).toList();
  }

  private Optional<JsonNode> wanted(String key) {
    read.add(key);
    JsonNode value = node.get(key);
    if (value == null || value.isNull()) {
      if (node.isObject()) {
        refuse(Finding.of("json.missing", at(key)));
      }
      return Optional.empty();
    }
    return Optional.of(value);
  }

  private static String plain(double number) {
    return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }
}
