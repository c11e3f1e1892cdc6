package guildwood.drawing.web;

import guildwood.drawing.BedDrawing;
import guildwood.drawing.Paper;
import guildwood.drawing.PlantKind;
import guildwood.drawing.Spot;
import guildwood.site.LengthReader;
import guildwood.site.sun.GroundPoint;
import guildwood.species.Layer;
import guildwood.web.Messages;
import guildwood.web.Units;

/** The words of a bed's drawing. */
record DrawingText(String title, String description, String heading, Units units, Messages messages) implements BedDrawing.Words {
  @Override
  public String north() {
    return messages.say("drawing.north");
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
  public String scale(int scale, Paper paper) {
    return messages.say("drawing.sheet." + paper.key(), "1:" + scale);
  }

  @Override
  public String layer(Layer layer) {
    return messages.say("term.layer." + layer.key());
  }

  @Override
  public String key(PlantKind kind) {
    return kind.name() + " ×" + kind.plants();
  }

  @Override
  public String leftOut(int labels) {
    return messages.say("drawing.labels-left-out", labels);
  }

  @Override
  public String handle(PlantKind kind, Spot spot) {
    return messages.say("drawing.handle", plant(kind, spot), place(spot.at(), units));
  }

  /** One plant by name, with its number where there are several of it. */
  static String plant(PlantKind kind, Spot spot) {
    return kind.plants() == 1 ? kind.name() : kind.name() + " " + spot.number();
  }

  /** A length in metres or feet, to the second decimal: things on the ground are compared with one another. */
  static String length(double metres, Units units) {
    return units == Units.US ? Units.number(metres / LengthReader.FOOT_M, 1) + " ft" : Units.number(metres, 2) + " m";
  }

  static String place(GroundPoint at, Units units) {
    return length(Math.abs(at.xM()), units) + (at.xM() < 0 ? " west" : " east") + ", "
        + length(Math.abs(at.yM()), units) + (at.yM() < 0 ? " south" : " north");
  }

  static String hours(double hours) {
    return Units.number(hours, 1) + " h";
  }

  static String percent(double share) {
    return Units.number(100 * share, 0) + " %";
  }
}
