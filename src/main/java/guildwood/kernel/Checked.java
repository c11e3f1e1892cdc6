package guildwood.kernel;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Either a value, or the findings that say why there is none. Reading people's input gives one of
 * these; only bugs throw.
 */
public record Checked<T>(Optional<T> value, List<Finding> findings) {
  public Checked {
    findings = List.copyOf(findings);
    if (value.isPresent() != findings.isEmpty()) {
      throw new IllegalArgumentException("either a value or findings, not " + value + " with " + findings);
    }
  }

  public static <T> Checked<T> of(T value) {
    return new Checked<>(Optional.of(value), List.of());
  }

  public static <T> Checked<T> refused(Finding finding) {
    return new Checked<>(Optional.empty(), List.of(finding));
  }

  public static <T> Checked<T> refused(List<Finding> findings) {
    return new Checked<>(Optional.empty(), findings);
  }

  public boolean isRefused() {
    return value.isEmpty();
  }

  /** The value of an input known to be good; a bug where it is not. */
  public T orThrow() {
    return value.orElseThrow(() -> new IllegalStateException("refused: " + findings));
  }

  public <U> Checked<U> map(Function<T, U> change) {
    return value.map(v -> Checked.of(change.apply(v))).orElseGet(() -> Checked.refused(findings));
  }
}
