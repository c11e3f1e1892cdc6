package guildwood.workplan;

import java.time.LocalDate;

/** Days in which a piece of work is in season, both ends included. */
public record Window(LocalDate from, LocalDate to) {
  public Window {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("a window from " + from + " to " + to);
    }
  }

  public boolean contains(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }
}
