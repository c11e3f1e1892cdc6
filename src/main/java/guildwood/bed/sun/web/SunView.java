package guildwood.bed.sun.web;

import guildwood.bed.sun.BedSun;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.kernel.Range;
import guildwood.site.sun.LightClass;
import guildwood.site.sun.SunHours;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The sun on a bed in words.
 *
 * @param mean over the season and the bed
 * @param lightClass of that mean
 * @param middle range over the middle of the ground
 * @param darkest cell
 * @param brightest cell
 * @param shares of the ground by class, those that there are
 * @param cells how many of what size
 */
record SunView(String mean, String lightClass, String middle, String darkest, String brightest, List<String> shares,
    String dayLength, String cells, String description, List<MonthRow> months, CellTable table) {

  /** One month's hours, in figures. */
  record MonthRow(String name, boolean inSeason, String dayLength, String mean, String least, String most) {}

  static SunView of(BedScene scene, BedSun sun, Units units, Messages messages) {
    Range extremes = sun.extremeHours();
    Range middle = sun.middleHours();
    List<String> shares = new ArrayList<>();
    for (Map.Entry<LightClass, Double> share : sun.classShares().entrySet()) {
      if (share.getValue() > 0) {
        shares.add(messages.say("sun.share", share.getKey().word(), percent(share.getValue())));
      }
    }
    return new SunView(SunWords.hours(sun.meanHours()), LightClass.of(sun.meanHours()).word(), SunWords.hours(middle.min(), middle.max()),
        SunWords.hours(extremes.min()), SunWords.hours(extremes.max()), List.copyOf(shares),
        SunWords.hours(sun.hours().openMeanHours()),
        messages.say(scene.traced().isPresent() ? "sun.cells.traced" : "sun.cells", sun.cells(), SunWords.length(sun.grid().cellM(), units), SunWords.length(sun.ground().lengthM(), units),
            SunWords.length(sun.ground().widthM(), units)),
        description(scene, sun, messages), months(scene, sun, messages), CellTable.of(sun, units, messages));
  }

  /** What somebody who does not see the map is told. */
  static String description(BedScene scene, BedSun sun, Messages messages) {
    SunHours hours = sun.hours();
    int darkest = 0;
    int brightest = 0;
    for (int i = 1; i < sun.cells(); i++) {
      darkest = hours.seasonMeanHours(i) < hours.seasonMeanHours(darkest) ? i : darkest;
      brightest = hours.seasonMeanHours(i) > hours.seasonMeanHours(brightest) ? i : brightest;
    }
    boolean even = hours.seasonMeanHours(brightest) - hours.seasonMeanHours(darkest) < 0.05;
    String mean = SunWords.hours(sun.meanHours());
    return even ? messages.say("sun.map.even", scene.bed().name(), mean)
        : messages.say("sun.map.text", scene.bed().name(), mean,
            SunWords.hours(hours.seasonMeanHours(darkest)), messages.say("sun.side." + SunWords.side(hours.points().get(darkest), sun.ground())),
            SunWords.hours(hours.seasonMeanHours(brightest)), messages.say("sun.side." + SunWords.side(hours.points().get(brightest), sun.ground())));
  }

  private static List<MonthRow> months(BedScene scene, BedSun sun, Messages messages) {
    List<MonthRow> rows = new ArrayList<>();
    List<BedSun.Month> months = sun.months();
    for (int i = 0; i < 12; i++) {
      BedSun.Month month = months.get(i);
      LocalDate first = LocalDate.of(scene.year(), i + 1, 1);
      boolean inSeason = first.datesUntil(first.plusMonths(1)).anyMatch(scene.season().days()::contains);
      rows.add(new MonthRow(messages.say("term.month." + (i + 1)), inSeason, figure(month.dayLength()), figure(month.mean()),
          figure(month.extremes().min()), figure(month.extremes().max())));
    }
    return rows;
  }

  /** Always with a decimal, so that a column can be compared at a glance. */
  private static String figure(double hours) {
    return String.format(Locale.ROOT, "%.1f", hours);
  }

  private static String percent(double share) {
    return share < 0.005 ? "under 1" : Units.number(100 * share, 0);
  }
}
