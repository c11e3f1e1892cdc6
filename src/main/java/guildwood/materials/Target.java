package guildwood.materials;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A bed or a path by its id. */
public record Target(Kind kind, long id) {
  private static final Pattern KEY = Pattern.compile("(bed|path)-(\\d{1,18})");

  /** What is covered. */
  public enum Kind {
    BED,
    PATH;

    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public static Target bed(long id) {
    return new Target(Kind.BED, id);
  }

  public static Target path(long id) {
    return new Target(Kind.PATH, id);
  }

  /** As it stands in addresses and in the database: {@code bed-3}, {@code path-12}. */
  public String key() {
    return kind.key() + "-" + id;
  }

  public static Optional<Target> ofKey(String key) {
    Matcher matcher = KEY.matcher(key);
    return matcher.matches()
        ? Optional.of(new Target(Kind.valueOf(matcher.group(1).toUpperCase(Locale.ROOT)), Long.parseLong(matcher.group(2))))
        : Optional.empty();
  }
}
