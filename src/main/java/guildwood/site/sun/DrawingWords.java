package guildwood.site.sun;

/** What a drawing of the ground says, in the reader's language and units. */
public interface DrawingWords {
  String title();

  String description();

  /** The letter at the tip of the north arrow. */
  String north();

  /** A length under the scale. */
  String metres(double lengthM);

  /** The unit in which that length is to be round, metres. */
  default double unitM() {
    return 1;
  }
}
