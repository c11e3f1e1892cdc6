package guildwood.guild.search;

import java.util.Arrays;

/** What is decided on the way to an exact answer: which items are in, out or still open; the tally likewise. */
final class Fixing {
  static final byte OPEN = 0;
  static final byte IN = 1;
  static final byte OUT = 2;

  final byte[] state;

  /** {@link #IN} where the tally's goal is to be reached, {@link #OUT} where it is given up. */
  final byte tally;

  private Fixing(byte[] state, byte tally) {
    this.state = state;
    this.tally = tally;
  }

  static Fixing nothing(Selection selection) {
    return new Fixing(new byte[selection.items], OPEN);
  }

  Fixing copy() {
    return new Fixing(state.clone(), tally);
  }

  Fixing withTally(byte what) {
    return new Fixing(state.clone(), what);
  }

  Fixing with(int item, byte what) {
    Fixing changed = copy();
    changed.state[item] = what;
    return changed;
  }

  @Override
  public String toString() {
    return Arrays.toString(state) + " " + tally;
  }
}
