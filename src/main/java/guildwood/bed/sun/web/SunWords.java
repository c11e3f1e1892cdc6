package guildwood.bed.sun.web;

import guildwood.site.LengthReader;
import guildwood.site.sun.Building;
import guildwood.site.sun.Compass;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Rectangle;
import guildwood.site.sun.Season;
import guildwood.site.sun.SunBand;
import guildwood.site.sun.SunMap;
import guildwood.site.sun.Tree;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** The words of the sun pages: hours, places, seasons, and what the map says. */
record SunWords(String title, String description, Units units, Messages messages) implements SunMap.Words {
  private static final List<String> EIGHT = List.of("n", "ne", "e", "se", "s", "sw", "w", "nw");

  @Override
  public String north() {
    return "N";
  }

  @Override
  public String metres(double lengthM) {
    return length(lengthM, units);
  }

  @Override
  public double unitM() {
    return units == Units.US ? LengthReader.FOOT_M : 1;
  }

  @Override
  public String band(SunBand band) {
    String key = band.toHours() < 24 ? "sun.band" : "sun.band.top";
    return messages.say(key, Units.number(band.fromHours(), 1), Units.number(band.toHours(), 1), band.lightClass().word());
  }

  static String hours(double hours) {
    return Units.number(hours, 1) + " h";
  }

  static String hours(double from, double to) {
    String low = Units.number(from, 1);
    String high = Units.number(to, 1);
    return low.equals(high) ? low + " h" : low + " to " + high + " h";
  }

  /** A length in metres or feet, never in centimetres or inches: things on the ground are compared with one another. */
  static String metres(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 1) + " ft" : Units.number(metres, 1) + " m";
  }

  /** The same to the second decimal, for cells and scales. */
  static String length(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 2) + " ft" : Units.number(metres, 2) + " m";
  }

  static String east(GroundPoint point, Units units) {
    return metres(Math.abs(point.xM()), units) + (point.xM() < 0 ? " west" : " east");
  }

  static String north(GroundPoint point, Units units) {
    return metres(Math.abs(point.yM()), units) + (point.yM() < 0 ? " south" : " north");
  }

  /** Where a point lies, seen from the bed's middle: {@code 7.3 m SW}. */
  static String whereabouts(GroundPoint point, Units units) {
    return metres(Math.hypot(point.xM(), point.yM()), units) + " " + Compass.nearest(Compass.towards(point));
  }

  /** The foot of a tree; the middle of the box around a building's corners. */
  static GroundPoint middle(Obstacle obstacle) {
    if (obstacle instanceof Tree tree) {
      return tree.foot();
    }
    var corners = ((Building) obstacle).footprint().corners();
    var across = corners.stream().mapToDouble(GroundPoint::xM).summaryStatistics();
    var up = corners.stream().mapToDouble(GroundPoint::yM).summaryStatistics();
    return new GroundPoint((across.getMin() + across.getMax()) / 2, (up.getMin() + up.getMax()) / 2);
  }

  /** The part of a bed in which a point lies, as a key: a compass point, or {@code middle}. */
  static String side(GroundPoint point, Rectangle ground) {
    double near = Math.min(ground.lengthM(), ground.widthM()) / 6;
    double away = Math.hypot(point.xM(), point.yM());
    return away <= near ? "middle" : EIGHT.get((int) Math.floorMod(Math.round(Compass.towards(point) / 45), 8L));
  }

  static String season(Season season) {
    return day(season.first()) + " to " + day(season.last());
  }

  private static String day(MonthDay day) {
    return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
