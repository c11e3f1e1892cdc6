package guildwood.drawing.web;

import guildwood.drawing.BedDrawing;
import guildwood.drawing.DrawnBed;
import guildwood.drawing.Grown;
import guildwood.drawing.Sheet;
import guildwood.web.Messages;
import guildwood.web.Units;

/** The picture of a drawn bed, for every page that shows it. */
public final class DrawnPicture {
  private DrawnPicture() {}

  /** The drawing of a year as SVG on small paper, in the reader's units. */
  public static String svg(DrawnBed drawn, int year, Units units, Messages messages) {
    return svg(drawn, year, Sheet.of(drawn.arrangement()), units, messages);
  }

  static String svg(DrawnBed drawn, int year, Sheet sheet, Units units, Messages messages) {
    Grown grown = drawn.in(year);
    String bed = drawn.scene().bed().name();
    String name = DrawingView.name(drawn, year, messages);
    DrawingText text = new DrawingText(messages.say("drawing.title", bed), DrawingView.description(drawn, year, grown.cover(), messages),
        bed + " – " + name, units, messages);
    return BedDrawing.svg(grown, sheet, text, "drawing");
  }

  /** Scale and paper in words. */
  static String scale(Sheet sheet, Messages messages) {
    return messages.say("drawing.sheet." + sheet.paper().key(), "1:" + sheet.scale());
  }
}
