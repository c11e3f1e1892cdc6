package guildwood.guild.search;

/**
 * What the scarce things cost, in thousandths of value: one price for the whole of every cap, one for the
 * whole budget, one for a unit of every aim, one for meeting each must, and one for all that the tally lacks. Any prices that are not negative
 * give a valid bound; good ones give a tight one.
 */
final class Prices {
  final double[] cap;
  double budget;
  final double[] aim;
  final double[] must;
  double tally;

  Prices(int caps, int aims) {
    cap = new double[caps];
    aim = new double[aims];
    must = new double[aims];
  }

  Prices copy() {
    Prices copy = new Prices(cap.length, aim.length);
    copy.take(this);
    return copy;
  }

  void take(Prices other) {
    System.arraycopy(other.cap, 0, cap, 0, cap.length);
    System.arraycopy(other.aim, 0, aim, 0, aim.length);
    System.arraycopy(other.must, 0, must, 0, must.length);
    budget = other.budget;
    tally = other.tally;
  }
}
