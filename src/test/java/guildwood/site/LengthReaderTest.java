package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthReaderTest {
  private static final Range ANY = new Range(-1000, 1000);
  private final LengthReader metric = new LengthReader(false, OptionalDouble.of(0.75));
  private final LengthReader feet = new LengthReader(true, OptionalDouble.of(0.75));

  /** The international foot is 0.3048 m exactly, an inch a twelfth of it. */
  @ParameterizedTest
  @CsvSource({"12, 12, 3.6576", "'12,5', 12.5, 3.81", "-4, -4, -1.2192", "−4, -4, -1.2192", "+4, 4, 1.2192", "12 m, 12, 12", "12m, 12, 12",
    "40 ft, 12.192, 12.192", "40', 12.192, 12.192", "5 ft 6 in, 1.6764, 1.6764", "5'6\", 1.6764, 1.6764", "-5 ft 6, -1.6764, -1.6764",
    "6 in, 0.1524, 0.1524", "150 cm, 1.5, 1.5", "12 paces, 9, 9", "12 p, 9, 9", "1 PACE, 0.75, 0.75", "'0,125', 0.125, 0.0381"})
  void readsNumbersUnitsAndPaces(String typed, double metres, double asFeet) {
    assertEquals(metres, metric.read(typed, ANY, "x").orThrow(), 1e-12);
    assertEquals(asFeet, feet.read(typed, ANY, "x").orThrow(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"'', value.missing", "'  ', value.missing", "far, length.unreadable", "12 km, length.unreadable", "12 12, length.unreadable",
    "1e3, length.unreadable", "NaN, length.unreadable", "--3, length.unreadable", "'12.', length.unreadable",
    "'1,200', area.comma", "'-1,200 m', area.comma", "1001, length.out-of-scale", "9999999999, length.unreadable"})
  void refusesWhatIsNoLength(String typed, String code) {
    assertEquals(code, metric.read(typed, ANY, "x").findings().get(0).code());
  }

  @Test
  void namesBothMeaningsOfAComma() {
    assertEquals(Finding.of("area.comma", "x", "1200", "1.200"), metric.read("1,200", ANY, "x").findings().get(0));
  }

  @Test
  void withoutAPacePacesCannotBeRead() {
    assertEquals("length.unreadable", new LengthReader(false, OptionalDouble.empty()).read("12 paces", ANY, "x").findings().get(0).code());
  }

  @Test
  void saysTheScaleInBothUnits() {
    assertEquals(Finding.of("length.out-of-scale", "x", "0.2", "1000", "0.66", "3280.84"),
        metric.read("0.1", new Range(0.2, 1000), "x").findings().get(0));
  }
}
