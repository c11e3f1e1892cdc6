package guildwood.workplan.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import guildwood.workplan.Count;
import guildwood.workplan.InSeason;
import guildwood.workplan.Schedule;
import guildwood.workplan.Window;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkStep;
import guildwood.workplan.WorkTask;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calendars as RFC 5545 wants them: lines of at most 75 octets ended by CRLF (3.1), text escaped (3.3.11), whole days (3.3.4). */
class WorkCalendarTest {
  private static final Instant STAMP = Instant.parse("2027-03-20T00:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2027, 4, 3);
  private static final String TITLE = "Plant 3 × “Größe”; commas, semicolons\\ and\na second line that goes on and on until it has to be folded somewhere";

  private final TimeZone before = TimeZone.getDefault();

  @AfterEach
  void putBack() {
    TimeZone.setDefault(before);
  }

  private static Schedule schedule() {
    Window window = new Window(DAY, DAY.plusDays(40));
    WorkTask plant = new WorkTask("plant.bed-3.ribes-nigrum.have", WorkKind.PLANT, "North; strip, long", "", "ribes-nigrum", 3, 3, Count.PLANTS, 20,
        List.of(InSeason.HARDY), window, Set.of(), "have", List.of());
    WorkTask water = new WorkTask("water.bed-3", WorkKind.WATER, "North", "", "", 3, 3, Count.PLANTS, 1, List.of(InSeason.ALWAYS), window, Set.of(), "", List.of());
    return new Schedule(List.of(new Schedule.Dated(new WorkStep(plant, 1, 2, 2), DAY, false),
        new Schedule.Dated(new WorkStep(plant, 2, 2, 1), DAY.plusWeeks(1), false), new Schedule.Dated(new WorkStep(water, 1, 1, 3), DAY, false)));
  }

  private static String text() {
    return new WorkCalendar("North", 1, STAMP, dated -> TITLE, dated -> "In season").write(schedule());
  }

  @Test
  void linesEndAndFoldAsTheStandardSays() {
    String text = text();
    assertTrue(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"), text);
    assertTrue(text.endsWith("END:VCALENDAR\r\n"), text);
    for (String line : text.split("\r\n", -1)) {
      assertFalse(line.contains("\n") || line.contains("\r"), line);
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
    }
    String unfolded = text.replace("\r\n ", "");
    assertTrue(unfolded.contains("SUMMARY:Plant 3 × “Größe”\\; commas\\, semicolons\\\\ and\\na second line"), unfolded);
    assertTrue(unfolded.contains("DTSTAMP:20270320T000000Z"), unfolded);
  }

  @Test
  void aReaderGetsBackWhatWasWritten() {
    ICalendar read = Biweekly.parse(text()).first();
    assertEquals(3, read.getEvents().size());
    Set<String> names = new HashSet<>();
    for (VEvent event : read.getEvents()) {
      assertEquals(TITLE, event.getSummary().getValue());
      assertFalse(event.getDateStart().getValue().hasTime());
      assertTrue(names.add(event.getUid().getValue()));
    }
    assertEquals("WEEKLY", read.getEvents().get(2).getRecurrenceRule().getValue().getFrequency().name());
    assertTrue(read.validate(biweekly.ICalVersion.V2_0).isEmpty(), () -> read.validate(biweekly.ICalVersion.V2_0).toString());
  }

  /** A day is the same day wherever the machine stands. */
  @ParameterizedTest
  @ValueSource(strings = {"UTC", "America/Chicago", "Pacific/Kiritimati", "America/Santiago"})
  void daysDoNotMoveWithTheTimeZone(String zone) {
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    String text = text();
    assertTrue(text.contains("DTSTART;VALUE=DATE:20270403\r\n"), text);
    assertTrue(text.contains("DTEND;VALUE=DATE:20270404\r\n"), text);
    assertTrue(text.contains("UNTIL=20270513"), text);
  }
}
