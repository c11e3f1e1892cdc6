package guildwood.workplan;

/**
 * As much of a task as fits into one session.
 *
 * @param part from 1
 * @param parts of the task
 * @param amount counted as the task is
 */
public record WorkStep(WorkTask task, int part, int parts, double amount) {
  public WorkStep {
    if (part < 1 || part > parts || !(amount > 0)) {
      throw new IllegalArgumentException(task.key() + " " + part + " of " + parts + ": " + amount);
    }
  }

  /** Stable name in addresses and calendars. */
  public String key() {
    return task.key() + "." + part;
  }

  /** Of one person. */
  public double minutes() {
    return amount * task.minutes();
  }
}
