package guildwood.species.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
  @ParameterizedTest
  @CsvSource({"rubrum, rubrum, 0", "rubrum, rubrun, 1", "rubrum, ruburm, 1", "rubrum, rubum, 1", "rubrum, rubrrum, 1",
      "acer, care, 2", "acer rubrum, acre rubrun, 2"})
  void countsLettersChangedMissingAddedAndSwapped(String a, String b, int distance) {
    assertEquals(distance, Spelling.distance(a, b, 5));
    assertEquals(distance, Spelling.distance(b, a, 5));
  }

  /** The narrow band must agree with a band that leaves nothing out. */
  @Test
  void stoppingEarlyChangesNoDistanceThatCounts() {
    Random random = new Random(7);
    for (int n = 0; n < 3000; n++) {
      String a = word(random);
      String b = random.nextBoolean() ? word(random) : a.substring(random.nextInt(2)) + (random.nextBoolean() ? "a" : "");
      int whole = Spelling.distance(a, b, 20);
      for (int most = 1; most <= 3; most++) {
        int counted = Spelling.distance(a, b, most);
        assertTrue(whole <= most ? counted == whole : counted > most, a + " " + b + ": " + whole + ", " + counted);
      }
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    for (int i = 1 + random.nextInt(9); i > 0; i--) {
      word.append((char) ('a' + random.nextInt(3)));
    }
    return word.toString();
  }
}
