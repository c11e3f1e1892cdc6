package guildwood.guild;

/** Watches a composition and can stop it. Called from the thread that composes; must be quick. */
public interface Progress {
  /** Neither watches nor stops. */
  Progress UNWATCHED = new Progress() {
    @Override
    public void at(int percent, Guild best, int totalMilli) {}

    @Override
    public boolean isCancelled() {
      return false;
    }
  };

  /**
   * @param percent of the work that is done, never falling
   * @param best the best guild so far; it keeps all rules that can be kept
   * @param totalMilli its score in thousandths of a point
   */
  void at(int percent, Guild best, int totalMilli);

  /** Asked every now and then; once true the composition ends with what it has. */
  boolean isCancelled();
}
