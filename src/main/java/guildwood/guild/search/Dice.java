package guildwood.guild.search;

/**
 * Chance from a seed, the same on every machine and in every Java version: SplitMix64, the generator
 * behind the JDK's SplittableRandom.
 */
final class Dice {
  private long state;

  Dice(long seed) {
    state = seed;
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** From 0 up to but not including 1. */
  double unit() {
    return (next() >>> 11) * 0x1.0p-53;
  }

  /** From 0 up to but not including {@code bound}. */
  int below(int bound) {
    return (int) (unit() * bound);
  }
}
