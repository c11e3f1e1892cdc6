package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.species.HardinessZone;
import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClimateReaderTest {

  @ParameterizedTest
  @CsvSource({"5b, 5b", "zone 5b, 5b", "Zone 5B, 5b", "5, 5", "zone 13a, 13a", "zone5b, 5b"})
  void aZoneIsItsWholeBand(String typed, String zone) {
    assertEquals(HardinessZone.read(zone).orElseThrow().celsius(), winter(typed));
  }

  @ParameterizedTest
  @CsvSource({
    "-28 C, -28, -28", "−28 °C, -28, -28", "'-28,5C', -28.5, -28.5", "-15 F, -26.1111, -26.1111", "-15 °F, -26.1111, -26.1111",
    "-28 degrees C, -28, -28", "5 C, 5, 5", "-20 to -15 F, -28.8889, -26.1111", "-30 C to -28 C, -30, -28"})
  void degreesNeedTheirUnit(String typed, double low, double high) {
    Range range = winter(typed);
    assertEquals(low, range.min(), 1e-4);
    assertEquals(high, range.max(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({
    "14, winter.no-zone", "zone 0, winter.no-zone", "-28, winter.no-unit", "5.5, winter.no-unit", "very cold, winter.unreadable",
    "zone 5c, winter.unreadable", "-80 C, winter.out-of-scale", "90 F, winter.out-of-scale", "-15 to -20 F, winter.backwards",
    "-15 K, winter.unreadable"})
  void refusesWhatIsNoWinter(String typed, String code) {
    assertEquals(code, ClimateReader.winter(typed, Basis.PUBLISHED, "winter").findings().get(0).code());
  }

  @ParameterizedTest
  @CsvSource({"44.9, 44.9", "'44,9 N', 44.9", "44.9° N, 44.9", "-44.9, -44.9", "44.9 S, -44.9", "−44.9, -44.9", "+3, 3", "0, 0", "90, 90"})
  void readsLatitude(String typed, double degrees) {
    assertEquals(OptionalDouble.of(degrees), ClimateReader.latitude(typed, "latitude").orThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"north", "91", "-44 S", "44 W", "44.9.1", "1e1", "999"})
  void refusesWhatIsNoLatitude(String typed) {
    assertTrue(ClimateReader.latitude(typed, "latitude").isRefused());
  }

  @ParameterizedTest
  @CsvSource({"13.4, 13.4", "'13,4 E', 13.4", "89.6 W, -89.6", "-89.6, -89.6", "180, 180"})
  void readsLongitudes(String typed, double degrees) {
    assertEquals(OptionalDouble.of(degrees), ClimateReader.longitude(typed, "longitude").orThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"181", "east", "44.9 N", "-10 W", "10 20"})
  void refusesWhatIsNoLongitude(String typed) {
    assertTrue(ClimateReader.longitude(typed, "longitude").isRefused());
  }

  @Test
  void readsDatesAndRefusesDaysThatDoNotExist() {
    assertEquals(Optional.of(MonthDay.of(5, 5)), ClimateReader.date("5", "5", "spring").orThrow());
    assertEquals(Optional.of(MonthDay.of(2, 29)), ClimateReader.date("29", "2", "spring").orThrow());
    assertEquals(Optional.empty(), ClimateReader.date(" ", "", "spring").orThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "30, 2, spring-day, date.no-such-day", "31, 4, spring-day, date.no-such-day", "0, 5, spring-day, date.no-such-day",
    "5, 13, spring-month, date.month", "5, 0, spring-month, date.month", "5, May, spring-month, date.month", "x, 5, spring-day, date.day",
    "5, '', spring-month, value.missing", "'', 5, spring-day, value.missing", "-3, 5, spring-day, date.day"})
  void refusesDates(String day, String month, String field, String code) {
    var finding = ClimateReader.date(day, month, "spring").findings().get(0);
    assertEquals(field + " " + code, finding.field() + " " + finding.code());
  }

  /** Last frost in spring before the first in autumn: by the calendar in the north, over the new year in the south. */
  @Test
  void frostDatesMustBelongToTheHemisphere() {
    MonthDay may = MonthDay.of(5, 5);
    MonthDay october = MonthDay.of(10, 5);
    assertTrue(ClimateReader.frostOrder(may, october, 45, "spring-day").isEmpty());
    assertTrue(ClimateReader.frostOrder(october, may, 45, "spring-day").isPresent());
    assertTrue(ClimateReader.frostOrder(october, may, -45, "spring-day").isEmpty());
    assertTrue(ClimateReader.frostOrder(may, october, -45, "spring-day").isPresent());
    assertTrue(ClimateReader.frostOrder(october, may, 10, "spring-day").isEmpty());
  }

  private static Range winter(String typed) {
    return ClimateReader.winter(typed, Basis.PUBLISHED, "winter").orThrow().orElseThrow().range();
  }
}
