package guildwood.importing;

/** A set of 64-bit numbers that takes 8 bytes for each and a little air, for tables of hundreds of thousands of rows. */
final class LongSet {
  private long[] slots = new long[1 << 10];
  private int size;
  private boolean hasZero;

  /** Whether it was not there before. */
  boolean add(long number) {
    if (number == 0) {
      boolean fresh = !hasZero;
      hasZero = true;
      return fresh;
    }
    if (size * 10L > slots.length * 7L) {
      grow();
    }
    int at = slotOf(number);
    if (slots[at] == number) {
      return false;
    }
    slots[at] = number;
    size++;
    return true;
  }

  boolean contains(long number) {
    return number == 0 ? hasZero : slots[slotOf(number)] == number;
  }

  private int slotOf(long number) {
    int mask = slots.length - 1;
    int at = (int) (mixed(number) & mask);
    while (slots[at] != 0 && slots[at] != number) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private void grow() {
    long[] old = slots;
    slots = new long[old.length * 2];
    for (long number : old) {
      if (number != 0) {
        slots[slotOf(number)] = number;
      }
    }
  }

  /** A 64-bit digest of texts; two different ones share it once in billions. */
  static long digest(Object... parts) {
    long hash = 0xcbf29ce484222325L;
    for (Object part : parts) {
      String text = part.toString();
      for (int i = 0; i < text.length(); i++) {
        hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
      }
      hash = mixed(hash ^ 0x1F);
    }
    return hash;
  }

  private static long mixed(long number) {
    long mixed = (number ^ (number >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    return mixed ^ (mixed >>> 31);
  }
}
