package guildwood.site.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Simple chill hours as they are defined here; common practice, no source stands behind the limits. */
class ChillTest {
  @ParameterizedTest
  @CsvSource({"40, 24", "32, 24", "45, 24", "50, 0", "31.9, 0", "45.1, 0"})
  void countsTheHoursBetweenItsLimits(double fahrenheit, int hours) {
    double[] day = new double[24];
    Arrays.fill(day, fahrenheit);
    assertEquals(hours, Chill.chillHours(day));
  }

  @Test
  void aTemperatureThatIsNoNumberIsABug() {
    assertThrows(IllegalArgumentException.class, () -> Chill.utahUnitsPerHourF(Double.NaN));
  }
}
