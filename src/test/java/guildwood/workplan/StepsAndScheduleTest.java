package guildwood.workplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Cutting work into sessions and laying it out over days. */
class StepsAndScheduleTest {
  private static WorkTask task(double amount, Count count, double minutes) {
    return new WorkTask("t", WorkKind.PLANT, "North", "", "", 3, amount, count, minutes, List.of(InSeason.GROUND_OPEN), new Window(WorkBeds.MARCH, WorkBeds.MARCH.plusDays(50)),
        Set.of(), "", List.of());
  }

  @Test
  void partsMakeTheWholeAndEachFitsIntoASession() {
    Random dice = new Random(11);
    for (int run = 0; run < 3_000; run++) {
      Count count = dice.nextBoolean() ? Count.PLANTS : Count.CUBIC_METRES;
      double amount = count == Count.PLANTS ? 1 + dice.nextInt(300) : 0.05 + dice.nextDouble() * 12;
      double minutes = count == Count.PLANTS ? 1 + dice.nextInt(50) : 60;
      double session = 30 + dice.nextInt(240);
      List<WorkStep> steps = Steps.of(task(amount, count, minutes), session);
      assertEquals(amount, steps.stream().mapToDouble(WorkStep::amount).sum(), 1e-9);
      if (steps.size() < Steps.MOST_PARTS) {
        double longest = Math.max(session, minutes * (count == Count.PLANTS ? 1 : 0.1));
        steps.forEach(step -> assertTrue(step.minutes() <= longest + 1e-6, step + " in " + session));
      }
      if (count == Count.PLANTS) {
        steps.forEach(step -> assertEquals(Math.rint(step.amount()), step.amount(), "half a plant"));
      }
    }
  }

  /** Whoever looks at the plan in November is not sent to ask in November for holes of April: the answers run out. */
  @Test
  void linesAreAskedAboutShortlyBeforeTheFirstDigging() {
    LocalDate november = LocalDate.of(WorkBeds.MARCH.getYear(), 11, 25);
    WorkPlan plan = SiteWork.of(WorkBeds.YEAR, november, WorkSettings.USUAL, WorkBeds.pathAndBeds(8),
        WorkBeds.jobs(Map.of("amelanchier-alnifolia", 4), Map.of()), List.of());
    Schedule schedule = Schedule.of(plan, WorkSettings.USUAL, WorkBeds.YEAR, november);
    LocalDate asked = schedule.steps().stream().filter(d -> d.step().task().key().equals("ask")).findFirst().orElseThrow().day();
    LocalDate digging = schedule.steps().stream().filter(d -> d.step().task().after().contains("ask")).map(Schedule.Dated::day)
        .min(LocalDate::compareTo).orElseThrow();
    assertTrue(digging.isAfter(november.plusMonths(2)), "the ground is frozen until then: " + digging);
    assertTrue(!asked.isAfter(digging.minusDays(7)) && asked.isAfter(digging.minusDays(28)), asked + " for " + digging);
  }

  @Test
  void everyStepHasADayAfterWhatItWaitsForAndNoDayIsOverfull() {
    WorkSettings settings = new WorkSettings(2, 2, DayOfWeek.WEDNESDAY, 45, 20, 6, 4, Map.of());
    WorkPlan plan = SiteWork.of(WorkBeds.YEAR, WorkBeds.MARCH, settings, WorkBeds.pathAndBeds(8),
        WorkBeds.jobs(Map.of("caragana-arborescens", 6, "amelanchier-alnifolia", 4, "fragaria-virginiana", 60), Map.of("ribes-nigrum", 9)),
        List.of());
    Schedule schedule = Schedule.of(plan, settings, WorkBeds.YEAR, WorkBeds.MARCH);
    Map<String, LocalDate> last = new HashMap<>();
    schedule.steps().forEach(dated -> last.merge(dated.step().task().key(), dated.day(), (a, b) -> a.isAfter(b) ? a : b));
    Map<LocalDate, Double> hours = new HashMap<>();
    for (Schedule.Dated dated : schedule.steps()) {
      assertEquals(DayOfWeek.WEDNESDAY, dated.day().getDayOfWeek());
      WorkTask task = dated.step().task();
      assertFalse(dated.day().isBefore(task.window().from()), dated.toString());
      assertEquals(dated.day().isAfter(task.window().to()) && !task.kind().isRepeated(), dated.putOff());
      assertEquals(dated.day(), WorkBeds.YEAR.next(task.seasons(), dated.day()).from(), "out of season: " + dated);
      task.after().forEach(key -> assertFalse(dated.day().isBefore(last.get(key)), key + " and " + task.key()));
      if (task.after().contains("ask")) {
        assertTrue(dated.day().isAfter(last.get("ask")), "the services need days to answer");
      }
      if (!task.kind().isRepeated()) {
        hours.merge(dated.day(), dated.step().minutes(), Double::sum);
      }
    }
    hours.forEach((day, minutes) -> assertTrue(minutes <= settings.sessionMinutes() + 1e-6, day + ": " + minutes));
    double planned = plan.tasks().stream().filter(t -> !t.kind().isRepeated()).mapToDouble(WorkTask::allMinutes).sum();
    assertEquals(planned, hours.values().stream().mapToDouble(m -> m).sum(), 1e-6);
  }
}
