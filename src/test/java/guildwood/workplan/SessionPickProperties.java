package guildwood.workplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The hours at hand are filled as well as trying out every selection would fill them. */
class SessionPickProperties {
  private static final LocalDate DAY = LocalDate.of(2027, 5, 1);

  /** Tasks that take one step each, with random forerunners, seasons and stock. */
  private static WorkPlan plan(Random dice, int size) {
    List<WorkTask> tasks = new ArrayList<>();
    Map<String, Double> atHand = new HashMap<>();
    for (int i = 0; i < size; i++) {
      Set<String> after = new HashSet<>();
      for (int j = 0; j < i; j++) {
        if (dice.nextInt(5) == 0) {
          after.add("t" + j);
        }
      }
      LocalDate from = DAY.plusDays(dice.nextInt(6) == 0 ? 3 : -10);
      tasks.add(new WorkTask("t" + i, WorkKind.PLANT, "North", "", "", 3, 1, Count.ONCE, 5 + dice.nextInt(60),
          List.of(InSeason.GROUND_OPEN), new Window(from, from.plusDays(15 + dice.nextInt(40))), after, "", List.of()));
      if (dice.nextInt(7) == 0) {
        atHand.put("t" + i, 0.0);
      }
    }
    return new WorkPlan(tasks, atHand);
  }

  private static double worth(WorkTask task, WorkPlan plan) {
    boolean closing = DAY.plusDays(21).isAfter(task.window().to());
    return task.allMinutes() * (1 + 0.1 * plan.waiting().get(task.key())) * (closing ? 1.5 : 1);
  }

  private static double best(WorkPlan plan, double minutes) {
    double best = 0;
    List<WorkTask> tasks = plan.tasks();
    for (int bits = 0; bits < 1 << tasks.size(); bits++) {
      Set<String> chosen = new HashSet<>();
      double used = 0;
      double sum = 0;
      boolean can = true;
      for (int i = 0; i < tasks.size() && can; i++) {
        if ((bits & 1 << i) != 0) {
          WorkTask task = tasks.get(i);
          can = chosen.containsAll(task.after()) && task.window().contains(DAY) && plan.atHand(task) > 0;
          chosen.add(task.key());
          used += task.allMinutes();
          sum += worth(task, plan);
        }
      }
      if (can && used <= minutes + 1e-9) {
        best = Math.max(best, sum);
      }
    }
    return best;
  }

  @Test
  void equalsTryingOutEverySelection() {
    Random dice = new Random(8);
    int filled = 0;
    for (int run = 0; run < 300; run++) {
      WorkPlan plan = plan(dice, 1 + dice.nextInt(11));
      double minutes = 20 + dice.nextInt(200);
      SessionPick pick = SessionPick.of(plan, DAY, minutes);
      double sum = pick.steps().stream().mapToDouble(step -> worth(step.task(), plan)).sum();
      assertEquals(best(plan, minutes), sum, 1e-6, "run " + run + ": " + plan + " in " + minutes);
      assertTrue(pick.minutes() <= minutes + 1e-9);
      filled += pick.steps().size() > 1 ? 1 : 0;
    }
    assertTrue(filled > 100, filled + " sessions with more than one step");
  }

  @Test
  void nobodyDigsInTheSessionInWhichTheLinesWereAskedFor() {
    WorkPlan plan = SiteWork.of(WorkBeds.YEAR, LocalDate.of(2027, 4, 10), WorkSettings.USUAL, WorkBeds.nothingToLay(),
        WorkBeds.jobs(Map.of("ribes-nigrum", 2), Map.of(), WorkBeds.has("ribes-nigrum", 2, 0)), List.of());
    SessionPick pick = SessionPick.of(plan, LocalDate.of(2027, 4, 10), 480);
    assertEquals(List.of("ask"), pick.steps().stream().map(step -> step.task().key()).toList());
    assertEquals("work.waits", pick.later().stream().filter(l -> l.task().kind().isPlanting()).findFirst().orElseThrow().waitsFor().get(0).code());
  }

  /** Two cubic metres lie there and two hours are left: two cubic metres are moved, and no more is asked. */
  @Test
  void onlyWhatLiesThereIsMoved() {
    LocalDate april = LocalDate.of(2027, 4, 20);
    Done asked = new Done(1, 1, "ask", WorkKind.ASK_ABOUT_LINES, "", 1, april.minusDays(5), "", 0);
    WorkPlan plan = SiteWork.of(WorkBeds.YEAR, april, WorkSettings.USUAL, WorkBeds.pathAndBeds(2), List.of(), List.of(asked));
    SessionPick pick = SessionPick.of(plan, april, 240);
    assertEquals(1, pick.steps().size());
    assertEquals(2, pick.steps().get(0).amount(), 1e-9);
    assertEquals(120, pick.minutes(), 1e-9);
    SessionPick half = SessionPick.of(plan, april, 60);
    assertEquals(1, half.steps().get(0).amount(), 1e-9);
    assertFalse(half.later().isEmpty());
  }
}
