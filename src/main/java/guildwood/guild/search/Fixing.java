package guildwood.guild.search;

import java.util.Arrays;

/** What is decided on the way to an exact answer: which items are in, out or still open. */
final class Fixing {
  static final byte OPEN = 0;
  static final byte IN = 1;
  static final byte OUT = 2;

  final byte[] state;

  private Fixing(byte[] state) {
    this.state = state;
  }

  static Fixing nothing(Selection selection) {
    return new Fixing(new byte[selection.items]);
  }

  Fixing copy() {
    return new Fixing(state.clone());
  }

  Fixing with(int item, byte what) {
    Fixing changed = copy();
    changed.state[item] = what;
    return changed;
  }

  @Override
  public String toString() {
    return Arrays.toString(state);
  }
}
