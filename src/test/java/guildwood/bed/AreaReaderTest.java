package guildwood.bed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaReaderTest {
  /** A square foot is 0.09290304 m2 exactly (the international foot of 0.3048 m, squared). */
  @ParameterizedTest
  @CsvSource({
    "24, false, 24", "24.5 m2, true, 24.5", "'24,5 m²', false, 24.5", "100, true, 9.290304", "100 sq ft, false, 9.290304",
    "100 sq. ft., false, 9.290304", "100 ft2, false, 9.290304", "24 sq m, true, 24", "100000, false, 100000", "0.1, false, 0.1"})
  void readsAreasIntoSquareMetres(String typed, boolean squareFeet, double areaM2) {
    assertEquals(areaM2, AreaReader.read(typed, squareFeet, "area").orThrow(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "'', value.missing", "0, area.out-of-scale", "0.05, area.out-of-scale", "10000000, area.out-of-scale", "10 km2, area.unreadable",
    "-5, area.unreadable", "large, area.unreadable", "'1,200', area.comma", "1e3, area.unreadable", "NaN, area.unreadable",
    "12 x 3, area.unreadable", "1234567890123, area.unreadable"})
  void refusesWhatIsNoBedsArea(String typed, String code) {
    assertEquals(code, AreaReader.read(typed, false, "area").findings().get(0).code());
  }
}
