package guildwood.kernel;

import java.util.List;

/**
 * A refusal or a remark as a value: what was found, where, and the values that belong in the sentence.
 * The words are chosen at the edge (message key {@code finding.<code>}).
 *
 * @param code message key without its prefix, for example {@code number.too-large}
 * @param field the form field, column or option it belongs to; empty where it belongs to the whole
 * @param args values for the placeholders of the message, in order
 */
public record Finding(String code, String field, List<String> args) {
  public Finding {
    args = List.copyOf(args);
    if (code.isBlank()) {
      throw new IllegalArgumentException("a finding needs a code");
    }
  }

  public static Finding of(String code, String field, Object... args) {
    return new Finding(code, field, java.util.Arrays.stream(args).map(String::valueOf).toList());
  }
}
