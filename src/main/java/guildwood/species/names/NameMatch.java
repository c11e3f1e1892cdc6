package guildwood.species.names;

import java.util.List;
import java.util.Optional;

/**
 * What a written name is taken for.
 *
 * @param name the name in the list; empty where nothing is taken
 * @param suggestions near names in the list, nearest first, for a person to choose from
 */
public record NameMatch(Kind kind, Optional<String> name, List<String> suggestions) {
  /** How sure the match is, surest first. */
  public enum Kind {
    /** The same name, up to authors, case, accents, hybrid sign and spaces. */
    SAME,
    /** Another name that the list itself gives for it. */
    SYNONYM,
    /** One spelling or rank of the same epithet for another, as the Code lets them vary. */
    SPELLING,
    /** The list knows the species, what was written is a part of it (variety, cultivar) or a wider sense. */
    SPECIES_OF,
    /** Nothing taken, but something in the list is spelt nearly so. */
    LIKE,
    /** Nothing in the list is near. */
    UNKNOWN
  }

  public NameMatch {
    suggestions = List.copyOf(suggestions);
    if (name.isPresent() == (kind == Kind.LIKE || kind == Kind.UNKNOWN)) {
      throw new IllegalArgumentException(kind + " with " + name);
    }
  }

  static NameMatch of(Kind kind, String name) {
    return new NameMatch(kind, Optional.of(name), List.of());
  }

  static NameMatch none(List<String> suggestions) {
    return new NameMatch(suggestions.isEmpty() ? Kind.UNKNOWN : Kind.LIKE, Optional.empty(), suggestions);
  }

  /** Whether a person should be told how the name was taken. */
  public boolean needsTelling() {
    return kind != Kind.SAME;
  }
}
