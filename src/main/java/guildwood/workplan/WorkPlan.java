package guildwood.workplan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All work that is left on a site, each task after those that must come first.
 *
 * @param atHand how much of a task can be done with what is there, by its key; as much as one likes where it is absent
 */
public record WorkPlan(List<WorkTask> tasks, Map<String, Double> atHand) {
  public WorkPlan {
    tasks = List.copyOf(tasks);
    atHand = Map.copyOf(atHand);
    Set<String> before = new HashSet<>();
    for (WorkTask task : tasks) {
      if (!before.containsAll(task.after())) {
        throw new IllegalArgumentException(task.key() + " before what it comes after: " + task.after());
      }
      if (!before.add(task.key())) {
        throw new IllegalArgumentException(task.key() + " twice");
      }
    }
  }

  public Optional<WorkTask> find(String key) {
    return tasks.stream().filter(task -> task.key().equals(key)).findFirst();
  }

  /** How much of a task can be done with what is there; never more than is left of it. */
  public double atHand(WorkTask task) {
    return Math.min(task.amount(), atHand.getOrDefault(task.key(), task.amount()));
  }

  /** The tasks cut into steps of one session each, in order. */
  public List<WorkStep> steps(WorkSettings settings) {
    List<WorkStep> steps = new ArrayList<>();
    tasks.forEach(task -> steps.addAll(Steps.of(task, settings.sessionMinutes())));
    return steps;
  }

  /** How many tasks wait for each, near or far, by key. */
  public Map<String, Integer> waiting() {
    Map<String, List<String>> next = new HashMap<>();
    tasks.forEach(task -> task.after().forEach(key -> next.computeIfAbsent(key, k -> new ArrayList<>()).add(task.key())));
    Map<String, Integer> waiting = new LinkedHashMap<>();
    for (WorkTask task : tasks) {
      Set<String> seen = new HashSet<>();
      Deque<String> open = new ArrayDeque<>(next.getOrDefault(task.key(), List.of()));
      while (!open.isEmpty()) {
        String key = open.pop();
        if (seen.add(key)) {
          open.addAll(next.getOrDefault(key, List.of()));
        }
      }
      waiting.put(task.key(), seen.size());
    }
    return waiting;
  }

  /** The same plan with only the work in one bed, and what must come before it. */
  public WorkPlan ofBed(long bedId) {
    Set<String> wanted = new HashSet<>();
    Map<String, WorkTask> byKey = new HashMap<>();
    tasks.forEach(task -> byKey.put(task.key(), task));
    Deque<WorkTask> open = new ArrayDeque<>();
    tasks.stream().filter(task -> task.bedId() == bedId).forEach(open::add);
    while (!open.isEmpty()) {
      WorkTask task = open.pop();
      if (wanted.add(task.key())) {
        task.after().forEach(key -> open.add(byKey.get(key)));
      }
    }
    return new WorkPlan(tasks.stream().filter(task -> wanted.contains(task.key())).toList(), atHand);
  }
}
