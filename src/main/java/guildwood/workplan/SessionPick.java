package guildwood.workplan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What to do in the hours at hand, with what is there. Of all selections that fit into the time and leave
 * nothing undone that must come first, the one of most worth: an hour counts more the more other work waits
 * for it, and more again where its season is about to close. Exact over the steps it looks at.
 *
 * @param steps in the order in which to do them
 * @param minutes of one person they take
 * @param later what cannot be begun, with the reasons
 */
public record SessionPick(List<WorkStep> steps, double minutes, List<Readiness> later) {
  /** A longer list is cut to the steps of most worth an hour, with what must come before them. */
  static final int MOST_STEPS = 22;
  private static final int CLOSING_DAYS = 21;
  private static final double CLOSING_WEIGHT = 1.5;
  private static final double WEIGHT_A_WAITING_TASK = 0.1;

  public SessionPick {
    steps = List.copyOf(steps);
    later = List.copyOf(later);
  }

  /** @param minutes of one person: two people for an hour are 120 */
  public static SessionPick of(WorkPlan plan, LocalDate day, double minutes) {
    List<WorkStep> steps = new ArrayList<>();
    List<Readiness> later = new ArrayList<>();
    Set<String> finishable = new HashSet<>();
    for (WorkTask task : plan.tasks()) {
      if (task.kind().isRepeated()) {
        continue;
      }
      Readiness readiness = Readiness.of(plan, task, day, finishable);
      if (!readiness.ready()) {
        later.add(readiness);
        continue;
      }
      steps.addAll(portions(task, readiness.amount(), minutes));
      // The services take days to answer: nobody digs in the session in which they were asked.
      if (readiness.amount() >= task.amount() - 1e-9 && task.kind() != WorkKind.ASK_ABOUT_LINES) {
        finishable.add(task.key());
      }
    }
    return new Search(plan, steps, day, minutes).best(later);
  }

  /** Pieces of about half an hour, so that a session can be filled, but no more of them than it can take. */
  private static List<WorkStep> portions(WorkTask task, double amount, double minutes) {
    return Steps.of(task.part(amount), Math.max(5, Math.min(30, minutes)));
  }

  /** Branch and bound over the steps in their order; the bound fills the rest of the time by worth an hour. */
  private static final class Search {
    private final List<WorkStep> steps;
    private final double minutes;
    private final double[] worth;
    private final int[][] before;
    private final Integer[] byWorthAnHour;
    private boolean[] best;
    private double bestWorth = -1;

    Search(WorkPlan plan, List<WorkStep> all, LocalDate day, double minutes) {
      this.minutes = minutes;
      Map<String, Integer> waiting = plan.waiting();
      steps = fewer(all.stream().filter(step -> step.minutes() <= minutes + 1e-9).toList(), waiting, day);
      worth = steps.stream().mapToDouble(step -> worth(step, waiting, day)).toArray();
      before = before(steps);
      byWorthAnHour = new Integer[steps.size()];
      for (int i = 0; i < byWorthAnHour.length; i++) {
        byWorthAnHour[i] = i;
      }
      java.util.Arrays.sort(byWorthAnHour, Comparator.<Integer>comparingDouble(i -> -worth[i] / steps.get(i).minutes()).thenComparing(i -> i));
      best = new boolean[steps.size()];
    }

    private static double worth(WorkStep step, Map<String, Integer> waiting, LocalDate day) {
      boolean closing = ChronoUnit.DAYS.between(day, step.task().window().to()) < CLOSING_DAYS;
      return step.minutes() * (1 + WEIGHT_A_WAITING_TASK * waiting.getOrDefault(step.task().key(), 0)) * (closing ? CLOSING_WEIGHT : 1);
    }

    /** Those of most worth an hour whose forerunners are in too. */
    private static List<WorkStep> fewer(List<WorkStep> all, Map<String, Integer> waiting, LocalDate day) {
      if (all.size() <= MOST_STEPS) {
        return closed(all, all);
      }
      List<WorkStep> sorted = new ArrayList<>(all);
      sorted.sort(Comparator.comparingDouble(step -> -worth(step, waiting, day) / step.minutes()));
      Set<WorkStep> kept = new HashSet<>(sorted.subList(0, MOST_STEPS));
      return closed(all.stream().filter(kept::contains).toList(), all);
    }

    /** Without the steps of which a forerunner is not among them. */
    private static List<WorkStep> closed(List<WorkStep> some, List<WorkStep> all) {
      List<WorkStep> kept = new ArrayList<>();
      Map<String, Integer> parts = new HashMap<>();
      for (WorkStep step : some) {
        boolean partsBefore = parts.getOrDefault(step.task().key(), 0) == step.part() - 1;
        boolean tasksBefore = step.task().after().stream().allMatch(key ->
            all.stream().filter(s -> s.task().key().equals(key)).count() == parts.getOrDefault(key, 0) && parts.containsKey(key));
        if (partsBefore && tasksBefore) {
          kept.add(step);
          parts.put(step.task().key(), step.part());
        }
      }
      return kept;
    }

    private static int[][] before(List<WorkStep> steps) {
      int[][] before = new int[steps.size()][];
      for (int i = 0; i < steps.size(); i++) {
        WorkStep step = steps.get(i);
        List<Integer> needed = new ArrayList<>();
        for (int j = 0; j < i; j++) {
          WorkStep other = steps.get(j);
          boolean sameTask = other.task().key().equals(step.task().key());
          if (sameTask || step.task().after().contains(other.task().key())) {
            needed.add(j);
          }
        }
        before[i] = needed.stream().mapToInt(Integer::intValue).toArray();
      }
      return before;
    }

    SessionPick best(List<Readiness> later) {
      look(0, new boolean[steps.size()], 0, 0);
      List<WorkStep> chosen = new ArrayList<>();
      for (int i = 0; i < best.length; i++) {
        if (best[i]) {
          chosen.add(steps.get(i));
        }
      }
      return new SessionPick(together(chosen), chosen.stream().mapToDouble(WorkStep::minutes).sum(), later);
    }

    private void look(int at, boolean[] chosen, double used, double sum) {
      if (sum > bestWorth + 1e-9) {
        bestWorth = sum;
        best = chosen.clone();
      }
      if (at == steps.size() || sum + bound(at, minutes - used) <= bestWorth + 1e-9) {
        return;
      }
      double more = steps.get(at).minutes();
      if (used + more <= minutes + 1e-9 && java.util.Arrays.stream(before[at]).allMatch(j -> chosen[j])) {
        chosen[at] = true;
        look(at + 1, chosen, used + more, sum + worth[at]);
        chosen[at] = false;
      }
      look(at + 1, chosen, used, sum);
    }

    private double bound(int from, double left) {
      double bound = 0;
      double time = left;
      for (int i : byWorthAnHour) {
        if (i < from || time <= 0) {
          continue;
        }
        double share = Math.min(1, time / steps.get(i).minutes());
        bound += share * worth[i];
        time -= share * steps.get(i).minutes();
      }
      return bound;
    }

    /** Portions of one task are one step again. */
    private static List<WorkStep> together(List<WorkStep> chosen) {
      Map<String, WorkStep> merged = new java.util.LinkedHashMap<>();
      for (WorkStep step : chosen) {
        merged.merge(step.task().key(), new WorkStep(step.task(), 1, 1, step.amount()),
            (a, b) -> new WorkStep(a.task(), 1, 1, a.amount() + b.amount()));
      }
      return List.copyOf(merged.values());
    }
  }
}
