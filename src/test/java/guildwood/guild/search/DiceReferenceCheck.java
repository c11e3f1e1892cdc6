package guildwood.guild.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The JDK's own SplittableRandom is the reference for SplitMix64. */
class DiceReferenceCheck {
  @Test
  void drawsWhatSplittableRandomDraws() {
    for (long seed : new long[] {0, 1, -7, 123_456_789_012_345L}) {
      Dice dice = new Dice(seed);
      SplittableRandom reference = new SplittableRandom(seed);
      for (int i = 0; i < 100; i++) {
        assertEquals((reference.nextLong() >>> 11) * 0x1.0p-53, dice.unit());
      }
    }
  }
}
