package guildwood.drawing;

import guildwood.species.Layer;

/**
 * How a layer's crowns are drawn: line, hatching and stem differ from layer to layer, so that a drawing reads in black
 * and white; the tint only helps.
 *
 * @param line width, millimetres
 * @param dashes of the line; empty for a whole one
 * @param hatch lines of the hatching tile as an SVG path; empty for none
 */
record LayerStyle(double line, String dashes, String tint, String hatch) {
  private static final double TILE_MM = 2.4;

  static LayerStyle of(Layer layer) {
    return switch (layer) {
      case TALL_TREE -> new LayerStyle(0.8, "", "none", "");
      case SMALL_TREE -> new LayerStyle(0.55, "3.5 1", "none", "");
      case SHRUB -> new LayerStyle(0.4, "", "#dbe7cf", "M0 2.4L2.4 0");
      case CLIMBER -> new LayerStyle(0.45, "0.3 0.9", "#e9e0f0", "M0.6 1.2h1.2M1.2 0.6v1.2");
      case HERB -> new LayerStyle(0.25, "", "#f3ecc8", "");
      case GROUND_COVER -> new LayerStyle(0.3, "1.2 0.8", "#e3eee6", "M0 1.2h2.4");
      case ROOT -> new LayerStyle(0.25, "0.6 0.6", "#f1dfcf", "M0 0L2.4 2.4");
    };
  }

  /** The hatching as a pattern to be referred to; nothing where there is none. */
  void define(Svg svg, String id) {
    if (!hatch.isEmpty()) {
      svg.add("<pattern id=\"%s\" width=\"%.1f\" height=\"%.1f\" patternUnits=\"userSpaceOnUse\"><path d=\"%s\" stroke=\"#555\""
          + " stroke-width=\"0.15\" fill=\"none\"/></pattern>", id, TILE_MM, TILE_MM, hatch);
    }
  }

  String stroke() {
    return String.format(java.util.Locale.ROOT, "stroke=\"#1d2b22\" stroke-width=\"%.2f\"%s", line,
        dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
  }

  /** A mark for a stem of this layer, around the origin. */
  static String stem(Layer layer) {
    return switch (layer) {
      case TALL_TREE -> "<circle r=\"1.1\"/>";
      case SMALL_TREE -> "<circle r=\"0.8\"/>";
      case SHRUB -> "<path d=\"M-0.7 -0.7h1.4v1.4h-1.4z\"/>";
      case CLIMBER -> "<path d=\"M0 -1l1 1l-1 1l-1 -1z\"/>";
      case HERB -> "<circle r=\"0.45\"/>";
      case GROUND_COVER -> "<circle r=\"0.3\"/>";
      case ROOT -> "<path d=\"M-0.7 -0.5h1.4l-0.7 1.2z\"/>";
    };
  }
}
