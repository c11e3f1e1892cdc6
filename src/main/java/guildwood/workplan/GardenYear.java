package guildwood.workplan;

import guildwood.site.Site;
import guildwood.site.climate.Hemisphere;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The year of a garden between its mean frosts.
 *
 * @param assumed true where the site names no frost dates and usual ones of a cold-temperate place stand in
 */
public record GardenYear(Hemisphere hemisphere, MonthDay lastSpringFrost, MonthDay firstAutumnFrost, boolean assumed) {
  /** Taken where a site tells nothing; the page asks for the true dates. */
  private static final MonthDay USUAL_SPRING_NORTH = MonthDay.of(5, 10);
  private static final MonthDay USUAL_AUTUMN_NORTH = MonthDay.of(10, 5);
  private static final MonthDay USUAL_SPRING_SOUTH = MonthDay.of(11, 10);
  private static final MonthDay USUAL_AUTUMN_SOUTH = MonthDay.of(4, 5);
  /** A season squeezed to nothing by a short summer still lasts so long. */
  private static final int SHORTEST_DAYS = 14;

  public static GardenYear of(Site site) {
    if (site.lastSpringFrost().isPresent() && site.firstAutumnFrost().isPresent()) {
      MonthDay spring = site.lastSpringFrost().get();
      MonthDay autumn = site.firstAutumnFrost().get();
      // The dates tell the hemisphere themselves: in the south the autumn comes first in the calendar.
      return new GardenYear(autumn.isBefore(spring) ? Hemisphere.SOUTH : Hemisphere.NORTH, spring, autumn, false);
    }
    return site.latitudeDegrees().orElse(0) < 0
        ? new GardenYear(Hemisphere.SOUTH, USUAL_SPRING_SOUTH, USUAL_AUTUMN_SOUTH, true)
        : new GardenYear(Hemisphere.NORTH, USUAL_SPRING_NORTH, USUAL_AUTUMN_NORTH, true);
  }

  /** Mean last frost of the year of growth that begins in a calendar year. */
  public LocalDate lastSpringFrost(int year) {
    return on(lastSpringFrost, year);
  }

  /** Mean first frost of that year of growth. */
  public LocalDate firstAutumnFrost(int year) {
    return on(firstAutumnFrost, year);
  }

  private LocalDate on(MonthDay day, int year) {
    LocalDate date = day.atYear(year);
    return date.isBefore(hemisphere.firstDay(year)) ? day.atYear(year + 1) : date;
  }

  /** What is left, from a day on, of the season that is on then, or the whole of the next one. */
  public Window next(InSeason season, LocalDate from) {
    return next(List.of(season), from);
  }

  /** The first of several seasons, from a day on. */
  public Window next(List<InSeason> seasons, LocalDate from) {
    if (seasons.contains(InSeason.ALWAYS)) {
      return new Window(from, from.plusYears(1));
    }
    int year = hemisphere.yearOf(from);
    return IntStream.rangeClosed(year - 1, year + 2).boxed()
        .flatMap(y -> seasons.stream().flatMap(season -> season.spans().stream()).map(span -> window(span, y)))
        .filter(window -> !window.to().isBefore(from))
        .min(Comparator.comparing(Window::from))
        .map(window -> window.from().isBefore(from) ? new Window(from, window.to()) : window)
        .orElseThrow(() -> new IllegalStateException("no season " + seasons + " after " + from));
  }

  private Window window(InSeason.Span span, int year) {
    LocalDate from = anchor(span.from(), year).plusDays(span.fromDays());
    LocalDate to = anchor(span.to(), year).plusDays(span.toDays());
    LocalDate shortest = from.plusDays(SHORTEST_DAYS);
    return new Window(from, to.isBefore(shortest) ? shortest : to);
  }

  private LocalDate anchor(InSeason.Anchor anchor, int year) {
    return switch (anchor) {
      case LAST_FROST -> lastSpringFrost(year);
      case FIRST_FROST -> firstAutumnFrost(year);
      case NEXT_LAST_FROST -> lastSpringFrost(year + 1);
    };
  }
}
