package guildwood.workplan.web;

import guildwood.kernel.Finding;
import guildwood.materials.Volume;
import guildwood.web.Messages;
import guildwood.web.Units;
import guildwood.workplan.InSeason;
import guildwood.workplan.Readiness;
import guildwood.workplan.Schedule;
import guildwood.workplan.Window;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkPlan;
import guildwood.workplan.WorkStep;
import guildwood.workplan.WorkTask;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Work in words. */
public final class WorkWords {
  private final Messages messages;
  private final Units units;

  public WorkWords(Messages messages, Units units) {
    this.messages = messages;
    this.units = units;
  }

  /** What is done, without how much of it. */
  String title(WorkTask task) {
    String what = task.kind() == WorkKind.COVER_BED || task.kind() == WorkKind.COVER_PATH
        ? messages.say("material." + task.detail()) : task.subject();
    return messages.say("work.title." + task.kind().key(), what, task.place());
  }

  /** How much of it, in what it is counted in; empty where it is done or not. */
  String amount(WorkTask task, double amount) {
    String whole = Integer.toString((int) Math.round(amount));
    return switch (task.count()) {
      case ONCE -> "";
      case PLANTS -> messages.say(whole.equals("1") ? "work.plant" : "work.plants", whole);
      case STARTS -> messages.say("work.starts." + task.detail(), whole);
      case SHEETS -> messages.say("work.sheets", whole);
      case CUBIC_METRES -> units.volume(amount);
    };
  }

  /** The amount as a field has it, in the visitor's unit; empty where there is nothing to count. */
  String number(WorkTask task, double amount) {
    return switch (task.count()) {
      case ONCE -> "";
      case CUBIC_METRES -> Units.number(units == Units.US ? Volume.cubicYards(amount) : amount, 2);
      case PLANTS, STARTS, SHEETS -> Units.number(amount, 0);
    };
  }

  /** What that number counts, as a message key; empty as above. */
  String unit(WorkTask task) {
    return switch (task.count()) {
      case ONCE -> "";
      case CUBIC_METRES -> units == Units.US ? "cubic-yards" : task.count().key();
      case PLANTS, STARTS, SHEETS -> task.count().key();
    };
  }

  /** One line: what and how much, and which part of how many. */
  public String line(WorkStep step) {
    String amount = amount(step.task(), step.amount());
    String line = amount.isEmpty() ? title(step.task()) : messages.say("work.line", title(step.task()), amount);
    return step.parts() == 1 ? line : messages.say("work.line.part", line, Integer.toString(step.part()), Integer.toString(step.parts()));
  }

  /** Several lines for a calendar: the season it belongs in and what to take care of. */
  String description(Schedule.Dated dated) {
    List<String> lines = new java.util.ArrayList<>();
    lines.add(time(dated.step().minutes()));
    String window = window(dated.step().task());
    if (!window.isEmpty()) {
      lines.add(window);
    }
    lines.addAll(advice(dated.step().task()));
    return String.join("\n", lines);
  }

  List<String> advice(WorkTask task) {
    return task.advice().stream().map(messages::say).toList();
  }

  /** Why a task cannot be begun. */
  List<String> reasons(Readiness readiness, WorkPlan plan) {
    return readiness.waitsFor().stream().map(reason -> reason(reason, plan)).toList();
  }

  private String reason(Finding reason, WorkPlan plan) {
    return switch (reason.code()) {
      case "work.waits" -> messages.say("finding.work.waits", plan.find(reason.args().get(0)).map(this::title).orElse(""));
      case "work.not-yet" -> messages.say("finding.work.not-yet", day(LocalDate.parse(reason.args().get(0))));
      default -> messages.say(reason);
    };
  }

  String time(double minutes) {
    return minutes < 60
        ? messages.say("work.minutes", Integer.toString((int) Math.max(5, 5 * Math.round(minutes / 5))))
        : messages.say("work.hours", Units.number(minutes / 60, 1));
  }

  /** The season of a task; empty where any day will do. */
  String window(WorkTask task) {
    return task.seasons().contains(InSeason.ALWAYS) && !task.kind().isRepeated() ? "" : window(task.window());
  }

  String window(Window window) {
    return messages.say("work.window", day(window.from()), day(window.to()));
  }

  String day(LocalDate day) {
    return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + day.getYear();
  }

  String weekday(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
