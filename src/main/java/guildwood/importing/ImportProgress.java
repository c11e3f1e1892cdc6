package guildwood.importing;

/** Is told how far an import has come. */
public interface ImportProgress {
  /** Nobody looks on. */
  ImportProgress NONE = rows -> true;

  /**
   * Called every some hundred rows.
   *
   * @return whether to go on; where not, nothing is kept
   */
  boolean at(long rows);
}
