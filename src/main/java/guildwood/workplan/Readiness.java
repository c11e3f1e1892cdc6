package guildwood.workplan;

import guildwood.kernel.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a task can be begun on a day.
 *
 * @param amount of it that can be done with what is there
 * @param waitsFor what stands in the way, each as a finding with its values; empty where it can be begun
 */
public record Readiness(WorkTask task, double amount, List<Finding> waitsFor) {
  public Readiness {
    waitsFor = List.copyOf(waitsFor);
  }

  /**
   * @param sameSession keys of tasks that can be finished before it in the same session and are not waited for
   */
  static Readiness of(WorkPlan plan, WorkTask task, LocalDate day, java.util.Set<String> sameSession) {
    List<Finding> reasons = new ArrayList<>();
    if (!task.window().contains(day)) {
      reasons.add(Finding.of("work.not-yet", "", task.window().from()));
    }
    task.after().stream().filter(key -> !sameSession.contains(key)).limit(1)
        .forEach(key -> reasons.add(Finding.of("work.waits", "", key)));
    double amount = plan.atHand(task);
    if (task.count().isWhole()) {
      amount = Math.floor(amount + 1e-9);
    }
    if (amount <= 0) {
      reasons.add(Finding.of(task.kind().isPlanting() ? "work.no-plants" : "work.no-material", ""));
    }
    return new Readiness(task, amount, reasons);
  }

  public boolean ready() {
    return waitsFor.isEmpty();
  }
}
