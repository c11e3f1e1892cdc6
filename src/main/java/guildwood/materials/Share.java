package guildwood.materials;

/**
 * What the stock gives to one need.
 *
 * @param there set aside for it from the stock, cubic metres or sheets; never more than what is left to lay
 */
public record Share(Need need, double there) {
  /** How far it can be taken with what is there. */
  public enum State {
    DONE,
    CAN_BE_FINISHED,
    CAN_BE_BEGUN,
    NOTHING_THERE
  }

  public Share {
    if (!(there >= 0 && there <= need.left())) {
      throw new IllegalArgumentException(there + " set aside for " + need);
    }
  }

  /** Still to be brought. */
  public double missing() {
    double missing = need.left() - there;
    return missing < Volume.CLOSE_ENOUGH_M3 ? 0 : missing;
  }

  public State state() {
    if (need.done()) {
      return State.DONE;
    }
    if (missing() == 0) {
      return State.CAN_BE_FINISHED;
    }
    return there < Volume.CLOSE_ENOUGH_M3 ? State.NOTHING_THERE : State.CAN_BE_BEGUN;
  }
}
