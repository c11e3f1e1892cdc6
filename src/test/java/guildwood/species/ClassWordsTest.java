package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers back into class words. */
class ClassWordsTest {
  /** Six hours are full sun and two and a half never are, in every usage of the US extension services we know of. */
  @ParameterizedTest
  @CsvSource({
      "6, 6, full sun", "6, 16, full sun", "2.5, 2.5, full shade", "5, 5, part shade", "3, 6, part shade", "0, 3, full shade",
      "3, 16, part shade to full sun", "0.5, 16, full shade to full sun"})
  void lightHoursInWords(double low, double high, String words) {
    assertEquals(words, ClassWords.inWords(Unit.SUN_HOURS, new Range(low, high)).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"MOISTURE_CLASS, 2, 3, dry to moist", "MOISTURE_CLASS, 5, 5, waterlogged", "FERTILITY_CLASS, 1, 3, poor to rich"})
  void classNumbersInWords(Unit unit, double low, double high, String words) {
    assertEquals(words, ClassWords.inWords(unit, new Range(low, high)).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"MOISTURE_CLASS, 2.5, 3", "PH, 5, 7", "METRES, 1, 2"})
  void noWordsWhereThereIsNoClass(Unit unit, double low, double high) {
    assertEquals(java.util.Optional.empty(), ClassWords.inWords(unit, new Range(low, high)));
  }
}
