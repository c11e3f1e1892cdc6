package guildwood.importing.exchange;

import guildwood.kernel.Finding;
import java.io.IOException;

/**
 * Carries a finding out of the depth of a parser; {@link TableFiles} and the tables turn it into a value. An
 * {@code IOException}, so that it passes through streams.
 */
final class RefusedRead extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Finding finding;

  RefusedRead(String code, Object... args) {
    this(Finding.of("table-file." + code, "", args));
  }

  private RefusedRead(Finding finding) {
    super(finding.toString());
    this.finding = finding;
  }

  Finding finding() {
    return finding;
  }

  /** The refusal inside another exception, or that the file is damaged. */
  static RefusedRead in(Exception e) {
    for (Throwable at = e; at != null; at = at.getCause()) {
      if (at instanceof RefusedRead refused) {
        return refused;
      }
    }
    return new RefusedRead("damaged");
  }
}
