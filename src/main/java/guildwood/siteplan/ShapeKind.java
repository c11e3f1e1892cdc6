package guildwood.siteplan;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be drawn on a plan. */
public enum ShapeKind {
  BED,
  PATH,
  WATER,
  TREE,
  BUILDING;

  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<ShapeKind> ofKey(String key) {
    return Stream.of(values()).filter(kind -> kind.key().equals(key)).findFirst();
  }

  /** Whether its points go around it; a path runs along them, a tree stands at one. */
  public boolean isArea() {
    return this != PATH && this != TREE;
  }
}
