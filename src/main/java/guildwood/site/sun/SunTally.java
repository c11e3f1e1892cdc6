package guildwood.site.sun;

/** Hours taken from each point, summed over days: by month, by obstacle and by half of the day. */
final class SunTally {
  final double[] openByMonth = new double[12];
  final int[] daysByMonth = new int[12];
  final double[] hiddenByMonth = new double[12];
  final double[][] takenByMonth;

  /** From here on only days of the season count. */
  final double[][] takenBy;

  /** Hours that would come back if one obstacle alone were gone. */
  final double[][] wonBackBy;

  final double[] takenMornings;
  final double[] takenAfternoons;
  double open;
  double openMornings;
  double hidden;
  double hiddenMornings;
  int days;

  /** Where the days outside the season are written. */
  private final double[] outOfSeason;

  private int month;
  private boolean inSeason;

  SunTally(int obstacles, int points) {
    takenByMonth = new double[12][points];
    takenBy = new double[obstacles][points];
    wonBackBy = new double[obstacles][points];
    takenMornings = new double[points];
    takenAfternoons = new double[points];
    outOfSeason = new double[points];
  }

  void begin(SunPath.Day day, boolean isInSeason) {
    month = day.date().getMonthValue() - 1;
    inSeason = isInSeason;
    openByMonth[month] += day.lengthHours();
    daysByMonth[month]++;
    if (inSeason) {
      days++;
      open += day.lengthHours();
      openMornings += day.steps().stream().filter(SunPath.Step::morning).mapToDouble(SunPath.Step::hours).sum();
    }
  }

  void hidden(SunPath.Step step) {
    hiddenByMonth[month] += step.hours();
    if (inSeason) {
      hidden += step.hours();
      hiddenMornings += step.morning() ? step.hours() : 0;
    }
  }

  double[] takenThisMonth() {
    return takenByMonth[month];
  }

  double[] takenThisHalf(SunPath.Step step) {
    return !inSeason ? outOfSeason : step.morning() ? takenMornings : takenAfternoons;
  }
}
