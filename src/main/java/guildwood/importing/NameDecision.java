package guildwood.importing;

/**
 * What a person decided about a name in the table.
 *
 * @param speciesId the species of the library it is; empty where it is none of them
 */
public record NameDecision(Choice choice, String speciesId) {
  /** What to do with the rows of the name. */
  public enum Choice {
    SAME_AS,
    NEW,
    LEAVE_OUT
  }

  public static final NameDecision NEW = new NameDecision(Choice.NEW, "");
  public static final NameDecision LEAVE_OUT = new NameDecision(Choice.LEAVE_OUT, "");

  public NameDecision {
    if ((choice == Choice.SAME_AS) == speciesId.isEmpty()) {
      throw new IllegalArgumentException(choice + " '" + speciesId + "'");
    }
  }

  public static NameDecision sameAs(String speciesId) {
    return new NameDecision(Choice.SAME_AS, speciesId);
  }
}
