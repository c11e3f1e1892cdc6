package guildwood.drawing;

import guildwood.site.GroundShapes;
import guildwood.site.sun.DrawingWords;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Draws an arranged guild to scale as one {@code svg} element in millimetres, north up: printed at its own size it is
 * true. Layers differ in line, hatching and stem, so colour carries nothing alone. Every label has a place of its own.
 */
public final class BedDrawing {
  private final Grown grown;
  private final Arrangement arrangement;
  private final Sheet sheet;
  private final Words words;
  private final String id;
  private final Svg svg = new Svg();

  private BedDrawing(Grown grown, Sheet sheet, Words words, String id) {
    this.grown = grown;
    arrangement = grown.arrangement();
    this.sheet = sheet;
    this.words = words;
    this.id = id;
  }

  /** What the drawing says, in the reader's language and units. */
  public interface Words extends DrawingWords {
    /** The bed and the year. */
    String heading();

    /** The scale and the paper it is true on. */
    String scale(int scale, Paper paper);

    String layer(Layer layer);

    /** A species in the key, without its number. */
    String key(PlantKind kind);

    /** That so many labels found no room. */
    String leftOut(int labels);

    /** One plant, for those who move it by its handle: name, number, place. */
    String handle(PlantKind kind, Spot spot);
  }

  /** The drawing on small paper. */
  public static String svg(Grown grown, Words words, String id) {
    return svg(grown, Sheet.of(grown.arrangement()), words, id);
  }

  /**
   * The drawing.
   *
   * @param id begins with a letter and is used by nothing else on the page
   */
  public static String svg(Grown grown, Sheet sheet, Words words, String id) {
    BedDrawing drawing = new BedDrawing(grown, sheet, words, id);
    drawing.open();
    drawing.surroundings();
    drawing.patches();
    drawing.outline();
    drawing.plants();
    drawing.labels();
    drawing.foot();
    drawing.svg.add("</svg>");
    return drawing.svg.toString();
  }

  private void open() {
    svg.add("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"0 0 %.2f %.2f\" role=\"img\""
        + " aria-labelledby=\"%s-title %s-text\" font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\" fill=\"#1d2b22\" data-scale=\"%d\""
        + " data-west=\"%.4f\" data-north=\"%.4f\" data-top=\"%.2f\">",
        sheet.widthMm(), sheet.heightMm(), sheet.widthMm(), sheet.heightMm(), id, id, sheet.scale(),
        sheet.northWest().xM(), sheet.northWest().yM(), sheet.frame().top());
    svg.add("<title id=\"%s-title\">%s</title>", id, Svg.escaped(words.title()));
    svg.add("<desc id=\"%s-text\">%s</desc>", id, Svg.escaped(words.description()));
    svg.add("<defs><clipPath id=\"%s-frame\"><rect x=\"0\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\"/></clipPath>", id,
        sheet.frame().top(), sheet.frame().width(), sheet.frame().height());
    for (Layer layer : Layer.values()) {
      LayerStyle.of(layer).define(svg, hatch(layer));
    }
    svg.add("</defs>");
    svg.add("<rect width=\"%.2f\" height=\"%.2f\" fill=\"#fff\"/>", sheet.widthMm(), sheet.heightMm());
    svg.line(1, 5, 4, words.heading(), "font-weight=\"bold\"");
    svg.line(1, 9.6, 2.9, words.scale(sheet.scale(), sheet.paper()), "");
    svg.add("<path d=\"M%.2f 11l-2.2 -8.5l2.2 1.9l2.2 -1.9z\" transform=\"rotate(180 %.2f 6.5)\"/>", sheet.widthMm() - 9, sheet.widthMm() - 9);
    svg.line(sheet.widthMm() - 5, 8, 4, words.north(), "");
  }

  private String hatch(Layer layer) {
    return id + "-" + layer.key();
  }

  /** Paths and the crowns of trees that are there already, cut off at the frame. */
  private void surroundings() {
    svg.add("<g clip-path=\"url(#%s-frame)\">", id);
    for (BedGround.Strip path : arrangement.ground().paths()) {
      svg.add("<path d=\"%s\" fill=\"#f2eee4\" stroke=\"#6b6b6b\" stroke-width=\"0.25\" stroke-dasharray=\"2 0.7\"/>", path(GroundShapes.strip(path.line(), path.widthM())));
    }
    for (Tree tree : arrangement.ground().trees()) {
      svg.add("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"none\" stroke=\"#6b6b6b\" stroke-width=\"0.4\" stroke-dasharray=\"0.4 1.6\"/>",
          sheet.x(tree.foot().xM()), sheet.y(tree.foot().yM()), sheet.mm(tree.crownRadiusM()));
      svg.add("<path d=\"M-1.2 -1.2l2.4 2.4m0 -2.4l-2.4 2.4\" transform=\"translate(%.2f %.2f)\" stroke=\"#1d2b22\" stroke-width=\"0.4\"/>",
          sheet.x(tree.foot().xM()), sheet.y(tree.foot().yM()));
    }
    svg.add("</g>");
  }

  private void outline() {
    svg.add("<path class=\"outline\" d=\"%s\" fill=\"none\" stroke=\"#1d2b22\" stroke-width=\"0.6\"/>", path(GroundShapes.polygon(arrangement.ground().outline())));
  }

  /** Ground covers as patches: one shape for all plants that have grown together. */
  private void patches() {
    for (PlantKind kind : arrangement.kinds()) {
      if (kind.layer() == Layer.GROUND_COVER) {
        String shape = path(grown.patch(kind));
        LayerStyle style = LayerStyle.of(kind.layer());
        svg.add("<path class=\"patch\" d=\"%s\" fill=\"%s\" fill-rule=\"evenodd\"/>", shape, style.tint());
        svg.add("<path d=\"%s\" fill=\"url(#%s)\" fill-rule=\"evenodd\" %s/>", shape, hatch(kind.layer()), style.stroke());
      }
    }
  }

  /**
   * Crowns from the lowest layer up, so that what stands above is drawn over it; tall crowns are lines only and hide
   * nothing. The stems come last: whoever plants must see every one.
   */
  private void plants() {
    Map<String, PlantKind> kinds = arrangement.byId();
    List<Map.Entry<Spot, GrownPlant>> all = new ArrayList<>(grown.bodies().entrySet());
    java.util.Collections.reverse(all);
    for (Map.Entry<Spot, GrownPlant> each : all) {
      PlantKind kind = kinds.get(each.getKey().speciesId());
      if (kind.layer() != Layer.GROUND_COVER) {
        crown(each.getKey(), kind, sheet.mm(each.getValue().radiusM()));
      }
    }
    all.forEach(each -> stem(each.getKey(), kinds.get(each.getKey().speciesId())));
  }

  private void crown(Spot spot, PlantKind kind, double radius) {
    LayerStyle style = LayerStyle.of(kind.layer());
    svg.add("<g data-crown=\"%s\" transform=\"%s\">", spot.id(), moved(spot));
    if (!style.tint().equals("none")) {
      svg.add("<circle r=\"%.2f\" fill=\"%s\" fill-opacity=\"0.6\"/>", radius, style.tint());
    }
    svg.add("<circle class=\"crown\" r=\"%.2f\" fill=\"%s\" %s/></g>", radius, style.hatch().isEmpty() ? "none" : "url(#" + hatch(kind.layer()) + ")",
        style.stroke());
  }

  private void stem(Spot spot, PlantKind kind) {
    svg.add("<g class=\"spot\" data-spot=\"%s\" data-name=\"%s\" data-x=\"%.3f\" data-y=\"%.3f\" transform=\"%s\">", spot.id(),
        Svg.escaped(words.handle(kind, spot)), spot.at().xM(), spot.at().yM(), moved(spot));
    if (spot.number() <= kind.standing()) {
      svg.add("<circle r=\"1.9\" fill=\"none\" stroke=\"#1d2b22\" stroke-width=\"0.3\"/>");
    }
    svg.add("%s</g>", LayerStyle.stem(kind.layer()));
  }

  private String moved(Spot spot) {
    return String.format(java.util.Locale.ROOT, "translate(%.2f %.2f)", sheet.x(spot.at().xM()), sheet.y(spot.at().yM()));
  }

  private void labels() {
    List<double[]> stems = arrangement.spots().stream().map(s -> new double[] {sheet.x(s.at().xM()), sheet.y(s.at().yM())}).toList();
    Labels labels = Labels.place(sheet.frame().widened(-0.5), stems, wanted());
    for (Label label : labels.placed()) {
      if (label.led()) {
        double[] line = Labels.leader(label);
        svg.add("<path class=\"leader\" d=\"M%.2f %.2fL%.2f %.2f\" stroke=\"#1d2b22\" stroke-width=\"0.18\"/>", line[0], line[1], line[2], line[3]);
      }
    }
    for (Label label : labels.placed()) {
      Box box = label.box();
      svg.add("<rect class=\"label-ground\" x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"#fff\" fill-opacity=\"0.8\"/>",
          box.left(), box.top() + 0.2, box.width(), box.height() - 0.4);
      svg.line(box.left() + 0.3, box.middleY() + Labels.LETTERS_MM * 0.35, Labels.LETTERS_MM, label.words(), "class=\"label\"");
    }
    if (labels.leftOut() > 0) {
      svg.line(1, sheet.frame().bottom() + 2.5, 2.6, words.leftOut(labels.leftOut()), "");
    }
  }

  /** Labels for the tallest first; names where they have room, numbers of the key where they have not. */
  private List<Label.Wanted> wanted() {
    List<Label.Wanted> all = new ArrayList<>();
    for (int i = 0; i < arrangement.kinds().size(); i++) {
      PlantKind kind = arrangement.kinds().get(i);
      String number = Integer.toString(i + 1);
      List<Spot> spots = arrangement.spots().stream().filter(s -> s.speciesId().equals(kind.speciesId())).toList();
      for (List<Spot> group : Groups.of(kind, spots)) {
        String name = number + " " + kind.name() + (group.size() > 1 ? " ×" + group.size() : "");
        GroundPoint at = group.get(0).at();
        all.add(new Label.Wanted(sheet.x(at.xM()), sheet.y(at.yM()), name.length() > 34 ? List.of(number) : List.of(name, number)));
      }
    }
    for (Tree tree : arrangement.ground().trees()) {
      double x = sheet.x(tree.foot().xM());
      double y = sheet.y(tree.foot().yM());
      if (sheet.frame().holds(x, y)) {
        all.add(new Label.Wanted(x, y, List.of(tree.label())));
      }
    }
    return all;
  }

  /** Below the ground: the scale bar, the layers there are, and the key of numbers. */
  private void foot() {
    scaleBar(sheet.frame().bottom() + 6);
    double top = sheet.frame().bottom() + Sheet.LEGEND_MM;
    List<Layer> layers = arrangement.kinds().stream().map(PlantKind::layer).distinct().toList();
    int layerRows = (layers.size() + sheet.keyColumns() - 1) / sheet.keyColumns();
    double column = sheet.widthMm() / sheet.keyColumns();
    for (int i = 0; i < layers.size(); i++) {
      legend(layers.get(i), 1 + i / layerRows * column, top + i % layerRows * Sheet.ROW_MM);
    }
    double keyTop = top + layerRows * Sheet.ROW_MM + 2;
    for (int i = 0; i < arrangement.kinds().size(); i++) {
      PlantKind kind = arrangement.kinds().get(i);
      double x = 1 + i / sheet.keyRows() * column;
      double y = keyTop + i % sheet.keyRows() * Sheet.ROW_MM + 3.2;
      svg.line(x, y, Labels.LETTERS_MM, shortened((i + 1) + "  " + words.key(kind), column - 3), "class=\"key\"");
    }
  }

  /** Cut off where a column ends; the table of plants has the whole name. */
  private static String shortened(String words, double widthMm) {
    String text = words;
    while (Svg.widthMm(text, Labels.LETTERS_MM) > widthMm) {
      text = text.substring(0, text.offsetByCodePoints(text.length(), text.endsWith("…") ? -2 : -1)) + "…";
    }
    return text;
  }

  private void legend(Layer layer, double x, double y) {
    LayerStyle style = LayerStyle.of(layer);
    svg.add("<rect x=\"%.2f\" y=\"%.2f\" width=\"9\" height=\"3.4\" fill=\"%s\"/>", x, y, style.tint());
    svg.add("<rect x=\"%.2f\" y=\"%.2f\" width=\"9\" height=\"3.4\" fill=\"%s\" %s/>", x, y,
        style.hatch().isEmpty() ? "none" : "url(#" + hatch(layer) + ")", style.stroke());
    svg.add("<g transform=\"translate(%.2f %.2f)\">%s</g>", x + 4.5, y + 1.7, LayerStyle.stem(layer));
    svg.line(x + 11, y + 2.8, Labels.LETTERS_MM, words.layer(layer), "class=\"key\"");
  }

  private void scaleBar(double y) {
    double length = scaleM();
    double mm = sheet.mm(length);
    svg.add("<g class=\"scale-bar\" data-metres=\"%.4f\">", length);
    svg.add("<rect x=\"1\" y=\"%.2f\" width=\"%.3f\" height=\"1.6\" fill=\"#fff\" stroke=\"#1d2b22\" stroke-width=\"0.2\"/>", y, mm);
    svg.add("<rect x=\"1\" y=\"%.2f\" width=\"%.3f\" height=\"1.6\"/></g>", y, mm / 2);
    svg.line(1, y + 5, 2.9, "0", "class=\"key\"");
    svg.line(mm + 2.5, y + 1.8, 2.9, words.metres(length), "class=\"key\"");
  }

  /** The roundest length near a third of the sheet. */
  private double scaleM() {
    double wanted = sheet.widthMm() * sheet.scale() / 1000 / 3 / words.unitM();
    double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
    return words.unitM() * (wanted >= 5 * ten ? 5 * ten : wanted >= 2 * ten ? 2 * ten : ten);
  }

  private String path(Geometry shape) {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      if (shape.getGeometryN(i) instanceof Polygon polygon) {
        ring(polygon.getExteriorRing().getCoordinates(), d);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          ring(polygon.getInteriorRingN(hole).getCoordinates(), d);
        }
      }
    }
    return d.toString();
  }

  private void ring(Coordinate[] ring, StringBuilder d) {
    for (int i = 0; i < ring.length - 1; i++) {
      d.append(String.format(java.util.Locale.ROOT, "%s%.2f %.2f", i == 0 ? "M" : "L", sheet.x(ring[i].x), sheet.y(ring[i].y)));
    }
    d.append('z');
  }
}
