package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Frost-free days: the first autumn freeze less the last spring freeze, checked by counting days of the calendar. */
class FrostFreeDaysTest {
  /** 5 May to 5 October: 26 + 30 + 31 + 31 + 30 + 5 days, leap year or not. */
  @Test
  void northernSeason() {
    assertEquals(OptionalInt.of(153), days(MonthDay.of(5, 5), MonthDay.of(10, 5)));
  }

  /** 5 October to 5 May: 26 + 30 + 31 + 31 + 28 + 31 + 30 + 5 days. */
  @Test
  void southernSeasonRunsOverTheNewYear() {
    assertEquals(OptionalInt.of(212), days(MonthDay.of(10, 5), MonthDay.of(5, 5)));
  }

  @Test
  void oneDateAloneTellsNothing() {
    assertEquals(OptionalInt.empty(), site(Optional.of(MonthDay.of(5, 5)), Optional.empty()).frostFreeDays());
  }

  private static OptionalInt days(MonthDay spring, MonthDay autumn) {
    return site(Optional.of(spring), Optional.of(autumn)).frostFreeDays();
  }

  private static Site site(Optional<MonthDay> spring, Optional<MonthDay> autumn) {
    return new Site(1, "Orchard edge", "", OptionalDouble.empty(), spring, autumn, Map.of(), "");
  }
}
