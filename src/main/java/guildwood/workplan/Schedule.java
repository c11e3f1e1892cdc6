package guildwood.workplan;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The steps laid out over the days on which people come: each as early as its season and what must come first
 * allow, until the hours of a day are used up. A step that finds no day in its season waits for the next one.
 */
public record Schedule(List<Dated> steps) {
  /** Beyond three years a plan is a wish. */
  private static final int MOST_WEEKS = 160;
  private static final double HAIR = 1e-6;

  public Schedule {
    steps = List.copyOf(steps);
  }

  /**
   * A step on its day.
   *
   * @param putOff whether it could have been done a season earlier, had there been more hands or days
   */
  public record Dated(WorkStep step, LocalDate day, boolean putOff) {}

  public static Schedule of(WorkPlan plan, WorkSettings settings, GardenYear year, LocalDate today) {
    LocalDate firstDay = today.with(TemporalAdjusters.nextOrSame(settings.day()));
    double[] free = new double[MOST_WEEKS];
    java.util.Arrays.fill(free, settings.sessionMinutes());
    Map<String, Integer> finished = new HashMap<>();
    List<Dated> dated = new ArrayList<>();
    for (WorkTask task : plan.tasks()) {
      int week = weekOf(firstDay, task.window().from());
      for (String key : task.after()) {
        boolean answerNeeded = key.equals(SiteWork.ASK);
        week = Math.max(week, finished.getOrDefault(key, 0) + (answerNeeded ? 1 : 0));
      }
      if (task.kind().isRepeated()) {
        LocalDate day = firstDay.plusWeeks(Math.min(week, MOST_WEEKS - 1));
        dated.add(new Dated(new WorkStep(task, 1, 1, task.amount()), day, false));
        continue;
      }
      for (WorkStep step : Steps.of(task, settings.sessionMinutes())) {
        week = freeWeek(task, Math.min(step.minutes(), settings.sessionMinutes()), week, free, firstDay, year);
        free[week] -= Math.min(step.minutes(), free[week]);
        LocalDate day = firstDay.plusWeeks(week);
        dated.add(new Dated(step, day, day.isAfter(task.window().to())));
      }
      finished.put(task.key(), week);
    }
    askLate(plan, dated, free, firstDay);
    dated.sort(Comparator.comparing(Dated::day));
    return new Schedule(dated);
  }

  /** Answers about lines run out: they are asked for as short before the first digging as a week allows. */
  private static void askLate(WorkPlan plan, List<Dated> dated, double[] free, LocalDate firstDay) {
    Set<String> digging = plan.tasks().stream().filter(task -> task.after().contains(SiteWork.ASK)).map(WorkTask::key).collect(Collectors.toSet());
    Optional<LocalDate> first = dated.stream().filter(d -> digging.contains(d.step().task().key())).map(Dated::day).min(Comparator.naturalOrder());
    for (int i = 0; i < dated.size() && first.isPresent(); i++) {
      Dated asking = dated.get(i);
      if (asking.step().task().key().equals(SiteWork.ASK)) {
        int earliest = weekOf(firstDay, asking.day());
        int week = weekOf(firstDay, first.get()) - 1;
        while (week > earliest && free[week] + HAIR < asking.step().minutes()) {
          week--;
        }
        dated.set(i, new Dated(asking.step(), firstDay.plusWeeks(Math.max(week, earliest)), asking.putOff()));
      }
    }
  }

  /** The first week from one on that is in season and has so much time left. */
  private static int freeWeek(WorkTask task, double minutes, int from, double[] free, LocalDate firstDay, GardenYear year) {
    int week = from;
    while (week < MOST_WEEKS - 1) {
      LocalDate day = firstDay.plusWeeks(week);
      LocalDate inSeason = year.next(task.seasons(), day).from();
      if (inSeason.isAfter(day)) {
        week = Math.max(week + 1, weekOf(firstDay, inSeason));
      } else if (free[week] + HAIR < minutes) {
        week++;
      } else {
        break;
      }
    }
    return Math.min(week, MOST_WEEKS - 1);
  }

  private static int weekOf(LocalDate firstDay, LocalDate day) {
    long days = java.time.temporal.ChronoUnit.DAYS.between(firstDay, day);
    return (int) Math.min(MOST_WEEKS - 1, Math.max(0, (days + 6) / 7));
  }
}
