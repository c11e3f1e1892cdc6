package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.HardinessZone;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamedClassesTest {

  @ParameterizedTest
  @CsvSource({
    "LIGHT, 3, 6, part shade", "LIGHT, 4, 5, part shade", "LIGHT, 6, 6, full sun", "LIGHT, 2.5, 2.5, full shade",
    "LIGHT, 0, 3, full shade", "LIGHT, 2, 7, full shade to full sun", "LIGHT, 6, 16, full sun", "LIGHT, 17, 18, full sun",
    "MOISTURE, 3, 3, moist", "MOISTURE, 2, 3, dry to moist", "MOISTURE, 2.4, 3.4, dry to moist",
    "REACTION, 6.0, 6.4, moderately acid to slightly acid", "REACTION, 3, 4, below the classes to extremely acid",
    "FERTILITY, 3, 3, rich", "TEXTURE, 1, 2, coarse to medium", "SEASON, 150, 150, ''"})
  void aRangeIsNamedByTheClassesItLiesIn(Axis axis, double low, double high, String words) {
    assertEquals(words, NamedClasses.describe(axis, new Range(low, high)));
  }

  @ParameterizedTest
  @CsvSource({"5b, zone 5b", "5, zone 5", "13b, zone 13b", "1a, zone 1a"})
  void aZonesBandIsNamedByTheZoneAlone(String zone, String words) {
    assertEquals(words, NamedClasses.describe(Axis.WINTER_COLD, HardinessZone.read(zone).orElseThrow().celsius()));
  }

  @Test
  void degreesAreNamedByTheirZone() {
    assertEquals("zone 5a", NamedClasses.describe(Axis.WINTER_COLD, Range.of(-28)));
    assertEquals("zone 4b to 5a", NamedClasses.describe(Axis.WINTER_COLD, new Range(-30, -28)));
    assertEquals("", NamedClasses.describe(Axis.WINTER_COLD, Range.of(25)));
  }

  @Test
  void everyOfferedWordStandsForARangeOnItsScale() {
    for (Axis axis : Axis.values()) {
      for (String word : NamedClasses.of(axis)) {
        Range range = NamedClasses.range(axis, word).orElseThrow(() -> new AssertionError(axis + " does not know " + word));
        assertTrue(range.min() >= axis.lowest() && range.max() <= axis.highest(), axis + " " + word + " is " + range);
      }
    }
  }

  @Test
  void soilNamesFallIntoTheThreeGroups() {
    assertEquals(Optional.of(Range.of(1)), NamedClasses.range(Axis.TEXTURE, "loamy sand"));
    assertEquals(Optional.of(Range.of(2)), NamedClasses.range(Axis.TEXTURE, "sandy loam"));
    assertEquals(Optional.of(Range.of(3)), NamedClasses.range(Axis.TEXTURE, "clay"));
  }

  @Test
  void whatASpeciesBearsIsNoWordForAPlace() {
    assertEquals(Optional.empty(), NamedClasses.range(Axis.LIGHT, "shade-tolerant"));
  }
}
