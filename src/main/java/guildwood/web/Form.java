package guildwood.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What was typed into a form, what could be read of it, and what is wrong with the rest. Nothing typed is
 * lost: a refused form is shown again with all of it.
 */
public final class Form {
  private static final int LONGEST_NUMBER = 40;
  private static final int EARLIEST_YEAR = 1900;

  private final Map<String, List<String>> typed;
  private final List<Finding> findings = new ArrayList<>();
  private final Messages messages;

  private Form(Map<String, List<String>> typed, Messages messages) {
    this.typed = typed;
    this.messages = messages;
  }

  /** The form as it came in. */
  public static Form read(Context ctx, Messages messages) {
    Map<String, List<String>> sent = Upload.find(ctx).map(Upload::fields).orElseGet(ctx::formParamMap);
    return new Form(new LinkedHashMap<>(sent), messages);
  }

  /** A form to be filled in, with starting values. */
  public static Form blank(Map<String, String> values, Messages messages) {
    Map<String, List<String>> typed = new LinkedHashMap<>();
    values.forEach((name, value) -> typed.put(name, List.of(value)));
    return new Form(typed, messages);
  }

  /** A form to be filled in, with starting values of fields that can be ticked several times. */
  public static Form filled(Map<String, List<String>> values, Messages messages) {
    return new Form(new LinkedHashMap<>(values), messages);
  }

  /** What stands in a field, as typed; empty where nothing does. */
  public String value(String field) {
    List<String> values = typed.getOrDefault(field, List.of());
    return values.isEmpty() ? "" : values.get(0);
  }

  /** All values of a field that can be ticked several times. */
  public List<String> values(String field) {
    return List.copyOf(typed.getOrDefault(field, List.of()));
  }

  /** What follows a prefix in the names of the fields, in the order they came. */
  public List<String> names(String prefix) {
    return typed.keySet().stream().filter(name -> name.startsWith(prefix)).map(name -> name.substring(prefix.length())).toList();
  }

  public boolean has(String field, String value) {
    return values(field).contains(value);
  }

  public boolean ticked(String field) {
    return !value(field).isEmpty();
  }

  /** Text of one line that must be there. */
  public String text(String field, int longest) {
    String text = optionalText(field, longest);
    if (text.isEmpty() && messageOf(field).isEmpty()) {
      refuse(Finding.of("value.missing", field));
    }
    return text;
  }

  /** Text of one line that may be left out. */
  public String optionalText(String field, int longest) {
    return checkedText(field, longest, value(field).strip(), false);
  }

  /** Text of several lines that may be left out. */
  public String longText(String field, int longest) {
    return checkedText(field, longest, value(field).strip().replace("\r\n", "\n"), true);
  }

  private String checkedText(String field, int longest, String text, boolean lines) {
    if (text.length() > longest) {
      refuse(Finding.of("text.too-long", field, longest));
      return "";
    }
    if (text.chars().anyMatch(c -> Character.isISOControl(c) && !(lines && c == '\n'))) {
      refuse(Finding.of("text.control-characters", field));
      return "";
    }
    return text;
  }

  /** A number within limits that may be left out. */
  public OptionalDouble number(String field, double least, double most) {
    return number(field, optionalText(field, LONGEST_NUMBER), least, most);
  }

  private OptionalDouble number(String field, String text, double least, double most) {
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (!text.matches("[-+−]?\\d{1,12}([.,]\\d{1,12})?")) {
      refuse(Finding.of("number.unreadable", field, text));
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(text.replace('−', '-').replace(',', '.'));
    if (number < least || number > most) {
      refuse(Finding.of("number.out-of-scale", field, Units.number(least, 2), Units.number(most, 2)));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(number);
  }

  /** A whole number within limits that may be left out. */
  public OptionalInt wholeNumber(String field, int least, int most) {
    String text = optionalText(field, LONGEST_NUMBER);
    if (!text.isEmpty() && !text.matches("[-+]?\\d{1,9}")) {
      refuse(Finding.of("number.not-whole", field, text));
      return OptionalInt.empty();
    }
    OptionalDouble number = number(field, text, least, most);
    return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
  }

  /**
   * A day, written year-month-day, that may be left out.
   *
   * @param latest the last day there can be
   */
  public Optional<LocalDate> date(String field, LocalDate latest) {
    String text = optionalText(field, LONGEST_NUMBER);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      LocalDate date = LocalDate.parse(text);
      if (!date.isAfter(latest) && date.getYear() >= EARLIEST_YEAR) {
        return Optional.of(date);
      }
      refuse(Finding.of("date.out", field, Integer.toString(EARLIEST_YEAR)));
    } catch (DateTimeParseException e) {
      refuse(Finding.of("date.unreadable", field, text));
    }
    return Optional.empty();
  }

  /** Takes over what another reader made of a field: its value, or its findings. */
  public <T> Optional<T> take(Checked<T> checked) {
    findings.addAll(checked.findings());
    return checked.value();
  }

  public void refuse(Finding finding) {
    findings.add(finding);
  }

  public boolean isRefused() {
    return !findings.isEmpty();
  }

  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** What is wrong with a field, in words; empty where nothing is. */
  public String messageOf(String field) {
    return findings.stream().filter(f -> f.field().equals(field)).findFirst().map(messages::say).orElse("");
  }

  /** Findings that belong to no field, in words. */
  public List<String> wholeMessages() {
    return findings.stream().filter(f -> f.field().isEmpty()).map(messages::say).toList();
  }
}
