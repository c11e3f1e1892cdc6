package guildwood.workplan.web;

import guildwood.workplan.Count;
import guildwood.workplan.Schedule;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkStep;
import guildwood.workplan.WorkTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The season's work as the page shows it.
 *
 * @param days with something to do, in their order
 * @param putOff steps that wait for a later season because the hours of this one are used up
 */
public record WorkView(List<Day> days, int steps, String hours, int putOff) {

  /**
   * @param hours of one person, all steps of the day together
   * @param toGet plants to buy, which make a list of their own
   */
  public record Day(String date, String hours, List<Row> toGet, List<Row> rows) {}

  /**
   * @param task key
   * @param window the season it belongs in; empty where any day will do
   * @param number what the amount field starts with; empty where there is nothing to count
   * @param unit of that number
   * @param tick whether it can be ticked off
   */
  public record Row(String task, String line, String time, String window, boolean putOff, boolean weekly, List<String> advice, String number,
      String unit, boolean tick) {}

  /** The work of a site or bed as it is planned today. */
  public static WorkView of(SiteAtWork site, WorkWords words) {
    Schedule schedule = Schedule.of(site.plan(), site.settings(), site.year(), site.today());
    Map<LocalDate, List<Schedule.Dated>> byDay = new LinkedHashMap<>();
    schedule.steps().forEach(dated -> byDay.computeIfAbsent(dated.day(), day -> new ArrayList<>()).add(dated));
    List<Day> days = new ArrayList<>();
    byDay.forEach((day, steps) -> days.add(new Day(words.day(day), words.time(minutes(steps)), rows(steps, true, words), rows(steps, false, words))));
    return new WorkView(days, schedule.steps().size(), words.time(minutes(schedule.steps())),
        (int) schedule.steps().stream().filter(Schedule.Dated::putOff).count());
  }

  private static List<Row> rows(List<Schedule.Dated> steps, boolean toGet, WorkWords words) {
    return steps.stream().filter(dated -> (dated.step().task().kind() == WorkKind.BUY_PLANTS) == toGet)
        .map(dated -> row(dated.step(), dated.putOff(), words)).toList();
  }

  private static double minutes(List<Schedule.Dated> steps) {
    return steps.stream().filter(dated -> !dated.step().task().kind().isRepeated()).mapToDouble(dated -> dated.step().minutes()).sum();
  }

  static Row row(WorkStep step, boolean putOff, WorkWords words) {
    WorkTask task = step.task();
    return new Row(task.key(), words.line(step), words.time(step.minutes()), words.window(task), putOff, task.kind().isRepeated(),
        words.advice(task), words.number(task, step.amount()), words.unit(task), !task.kind().isRepeated());
  }
}
