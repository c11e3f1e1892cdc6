package guildwood.species.store;

import guildwood.kernel.Checked;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import java.util.HashMap;
import java.util.Map;

/**
 * Reads statements, what is written alike but once: a large library says 'full sun' a hundred thousand times, and need hold
 * it only once. What is remembered is bounded; beyond it every statement has its own value.
 */
final class Readings {
  private static final int MOST = 50_000;

  private final Map<Written, Statement> read = new HashMap<>();
  private final Map<String, String> texts = new HashMap<>();

  /** What a statement's value depends on. */
  private record Written(String trait, String item, String entered, String evidence) {}

  Checked<Statement> read(WrittenStatement written) {
    Written key = new Written(written.trait(), written.item(), written.entered(), written.evidence());
    Statement known = read.get(key);
    if (known == null || !written.note().isEmpty() && !texts.containsKey(written.note())) {
      Checked<Statement> fresh = written.read();
      fresh.value().ifPresent(statement -> remember(key, statement));
      return fresh.map(statement -> like(known == null ? statement : known, written));
    }
    return Checked.of(like(known, written));
  }

  private void remember(Written key, Statement statement) {
    if (read.size() < MOST) {
      read.putIfAbsent(key, statement);
    }
    if (texts.size() < MOST) {
      texts.putIfAbsent(statement.note(), statement.note());
    }
  }

  private Statement like(Statement known, WrittenStatement written) {
    return new Statement(written.id(), known.trait(), known.item(), known.entered(), known.value(), shared(written.sourceId()),
        known.evidence(), written.chosen(), shared(written.note().strip()));
  }

  /** One object for equal texts. */
  String shared(String text) {
    String known = texts.get(text);
    if (known == null && texts.size() < MOST) {
      texts.put(text, text);
    }
    return known == null ? text : known;
  }
}
