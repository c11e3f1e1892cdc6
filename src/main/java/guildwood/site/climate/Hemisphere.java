package guildwood.site.climate;

import java.time.LocalDate;
import java.util.Locale;

/**
 * The half of the Earth, which decides when a year of growth begins and where its spring ends.
 *
 * <p>Spring and autumn frosts are told apart at 24 July in the north and 24 January in the south (Utah Climate
 * Center); that day itself counts to the autumn. The year around it runs from midwinter to midwinter: January to
 * December in the north, July to June in the south.
 */
public enum Hemisphere {
  NORTH(1, 7),
  SOUTH(7, 1);

  private static final int SPLIT_DAY = 24;

  private final int firstMonth;
  private final int splitMonth;

  Hemisphere(int firstMonth, int splitMonth) {
    this.firstMonth = firstMonth;
    this.splitMonth = splitMonth;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** First day of the year of growth that begins in a calendar year. */
  public LocalDate firstDay(int year) {
    return LocalDate.of(year, firstMonth, 1);
  }

  /** First day of the autumn side of that year of growth. */
  public LocalDate split(int year) {
    return LocalDate.of(this == NORTH ? year : year + 1, splitMonth, SPLIT_DAY);
  }

  /** The calendar year in which the year of growth with this day begins. */
  public int yearOf(LocalDate date) {
    return date.getMonthValue() >= firstMonth ? date.getYear() : date.getYear() - 1;
  }

  /** '2024' in the north, '2024/2025' in the south. */
  public String label(int year) {
    return this == NORTH ? Integer.toString(year) : year + "/" + (year + 1);
  }
}
