package guildwood.workplan.exchange;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.Status;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import guildwood.workplan.Schedule;
import guildwood.workplan.WorkTask;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Date;
import java.util.function.Function;

/** Writes a schedule as an iCalendar object (RFC 5545): one all-day event a step, under a name that stays. */
public final class WorkCalendar {
  private static final String PRODUCT = "-//Guildwood//Work plan//EN";
  private static final int LONGEST_LINE_OCTETS = 75;

  private final String name;
  private final long siteId;
  private final Instant stamp;
  private final Function<Schedule.Dated, String> title;
  private final Function<Schedule.Dated, String> description;

  /**
   * @param stamp when the plan was made, for every event
   * @param title one line
   */
  public WorkCalendar(String name, long siteId, Instant stamp, Function<Schedule.Dated, String> title,
      Function<Schedule.Dated, String> description) {
    this.name = name;
    this.siteId = siteId;
    this.stamp = stamp;
    this.title = title;
    this.description = description;
  }

  public String write(Schedule schedule) {
    ICalendar calendar = new ICalendar();
    calendar.setVersion(ICalVersion.V2_0);
    calendar.setProductId(PRODUCT);
    calendar.setName(name);
    schedule.steps().forEach(dated -> calendar.addEvent(event(dated)));
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      // The library folds after 75 characters, the standard after 75 octets.
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folded(text.toString());
  }

  /** Lines of at most 75 octets, cut between characters (RFC 5545, 3.1). */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      String character = Character.toString(text.codePointAt(i));
      int more = character.getBytes(StandardCharsets.UTF_8).length;
      boolean lineEnd = character.equals("\r") || character.equals("\n");
      if (!lineEnd && octets + more > LONGEST_LINE_OCTETS) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(character);
      octets = lineEnd ? 0 : octets + more;
    }
    return folded.toString();
  }

  private VEvent event(Schedule.Dated dated) {
    WorkTask task = dated.step().task();
    VEvent event = new VEvent();
    event.setUid("guildwood-site-" + siteId + "-" + dated.step().key());
    event.setDateTimeStamp(Date.from(stamp));
    event.setDateStart(day(dated.day()), false);
    event.setDateEnd(day(dated.day().plusDays(1)), false);
    event.setSummary(title.apply(dated));
    event.setDescription(description.apply(dated));
    event.setLocation(task.place());
    event.setStatus(Status.confirmed());
    event.setTransparency(true);
    if (task.kind().isRepeated() && dated.day().isBefore(task.window().to())) {
      event.setRecurrenceRule(new Recurrence.Builder(Frequency.WEEKLY).until(day(task.window().to()), false).build());
    }
    return event;
  }

  /** The library writes days in the machine's own time zone, so they are made in it. */
  private static Date day(LocalDate day) {
    return Date.from(day.atStartOfDay(ZoneId.systemDefault()).toInstant());
  }
}
