package guildwood.species;

import java.util.Optional;

/**
 * One value of one trait of one species from one source.
 *
 * @param id key in the library; 0 before it is kept
 * @param item what the statement is about where the trait has items, otherwise empty
 * @param entered the value as people or the source wrote it, in their units and words
 * @param value the same as the program reckons with it
 * @param sourceId the {@link guildwood.kernel.Source} it comes from
 * @param evidence how well a claim is supported, for functions and conflicts
 * @param chosen true where the owner or the seed picked this one among several that disagree
 * @param note a short remark; may be empty
 */
public record Statement(
    long id,
    Trait trait,
    String item,
    String entered,
    TraitValue value,
    String sourceId,
    Optional<Evidence> evidence,
    boolean chosen,
    String note) {
  public static final int MOST_NOTE = 500;

  public Statement {
    if (trait.hasItems() == item.isEmpty()) {
      throw new IllegalArgumentException(trait + " with item '" + item + "'");
    }
  }

  /** What the statement competes with others about. */
  public Topic topic() {
    return new Topic(trait, item);
  }

  /** Whether both put down the same value about the same topic from the same source. */
  public boolean saysTheSameAs(Statement other) {
    return topic().equals(other.topic()) && sourceId.equals(other.sourceId) && value.equals(other.value);
  }

  /** A trait, and its item where it has items. */
  public record Topic(Trait trait, String item) {}
}
