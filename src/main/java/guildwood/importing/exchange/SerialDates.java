package guildwood.importing.exchange;

import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import guildwood.species.exchange.PlainNumber;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Locale;

/**
 * Dates that a spreadsheet counts in days. Day 1 is 1 January 1900, and 29 February 1900, which never was, is counted
 * too (ECMA-376 part 1, 18.17.4.1); files of another origin begin on 1 January 1904.
 */
final class SerialDates {
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);
  private static final LocalDate ORIGIN_1904 = LocalDate.of(1904, 1, 1);
  private static final int DAY_THAT_NEVER_WAS = 60;
  private static final int LAST_DAY = 2_958_465;
  private static final int SECONDS_OF_A_DAY = 86_400;

  private SerialDates() {}

  static TableCell cell(double serial, boolean timeOnly, boolean from1904) {
    if (serial < 0 || serial > LAST_DAY) {
      return new TableCell(PlainNumber.of(serial), Kind.NUMBER);
    }
    long seconds = Math.round(serial * SECONDS_OF_A_DAY);
    return new TableCell(timeOnly ? elapsed(seconds) : date(seconds, from1904), Kind.DATE);
  }

  private static String elapsed(long seconds) {
    return String.format(Locale.ROOT, "%02d:%02d", seconds / 3600, seconds / 60 % 60)
        + (seconds % 60 == 0 ? "" : String.format(Locale.ROOT, ":%02d", seconds % 60));
  }

  private static String date(long seconds, boolean from1904) {
    long day = seconds / SECONDS_OF_A_DAY;
    LocalDate date = from1904 ? ORIGIN_1904.plusDays(day) : BEFORE_1900.plusDays(day >= DAY_THAT_NEVER_WAS ? day - 1 : day);
    return text(date.atTime(LocalTime.ofSecondOfDay(seconds % SECONDS_OF_A_DAY)));
  }

  /** The day alone where the hour is midnight. */
  static String text(LocalDateTime moment) {
    String time = moment.toLocalTime().toString();
    return moment.toLocalDate() + (moment.toLocalTime().equals(LocalTime.MIDNIGHT) ? "" : " " + time);
  }
}
