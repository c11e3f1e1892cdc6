package guildwood.siteplan.web;

import guildwood.bed.AreaReader;
import guildwood.site.LengthReader;
import guildwood.web.Units;

/** Lengths and areas on a plan in the visitor's units, never in centimetres or inches: they are compared with one another. */
final class PlanWords {
  private PlanWords() {}

  static String length(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 1) + " ft" : Units.number(metres, metres < 100 ? 2 : 1) + " m";
  }

  /** A round length, as under a scale. */
  static String round(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 2) + " ft" : Units.number(metres, 2) + " m";
  }

  /** A limit as its publication gives it: whole metres, whole feet. */
  static String whole(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 0) + " ft" : Units.number(metres, 0) + " m";
  }

  static String area(double squareMetres, Units units) {
    return units == Units.US ? Units.number(squareMetres / AreaReader.SQUARE_FOOT_M2, 0) + " sq ft"
        : Units.number(squareMetres, squareMetres < 100 ? 1 : 0) + " m²";
  }

  static double unitM(Units units) {
    return units == Units.US ? LengthReader.FOOT_M : 1;
  }
}
