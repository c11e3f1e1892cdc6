package guildwood.workplan;

import java.util.ArrayList;
import java.util.List;

/** Cuts a task into steps of one session each. */
final class Steps {
  /** A task is never cut finer than this: a plan of a thousand lines helps nobody. */
  static final int MOST_PARTS = 60;

  private Steps() {}

  /**
   * Parts of about the same size, whole plants and sheets, cubic metres to the tenth. One that cannot be cut
   * small enough stays longer than a session.
   */
  static List<WorkStep> of(WorkTask task, double sessionMinutes) {
    double unit = task.count().isWhole() ? 1 : 0.1;
    long units = Math.max(1, Math.round(Math.ceil(task.amount() / unit - 1e-6)));
    long mostInOne = Math.max(1, (long) Math.floor(sessionMinutes / (task.minutes() * unit) + 1e-9));
    int parts = task.count() == Count.ONCE ? 1 : (int) Math.min(MOST_PARTS, (units + mostInOne - 1) / mostInOne);
    List<WorkStep> steps = new ArrayList<>();
    double left = task.amount();
    for (int part = 1; part <= parts; part++) {
      long share = units / parts + (part <= units % parts ? 1 : 0);
      double amount = part == parts ? left : Math.min(left, share * unit);
      steps.add(new WorkStep(task, part, parts, amount));
      left -= amount;
    }
    return steps;
  }
}
