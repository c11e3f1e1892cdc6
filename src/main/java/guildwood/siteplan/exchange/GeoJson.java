package guildwood.siteplan.exchange;

import java.util.Map;

/** What the features of a plan tell in GeoJSON (RFC 7946) beside their geometry. Lengths and heights are metres. */
final class GeoJson {
  static final String NAME = "name";
  static final String KIND = "kind";
  static final String EVERGREEN = "evergreen";
  static final String WIDTH = "widthM";
  static final String DEPTH = "depthM";
  static final String START_HEIGHT = "startHeightM";
  static final String END_HEIGHT = "endHeightM";
  static final String HEIGHT = "heightM";
  static final String CROWN_RADIUS = "crownRadiusM";
  static final String CROWN_BASE = "crownBaseM";

  /** Fields of the forms by the properties that fill them. */
  static final Map<String, String> FIELDS = Map.of(WIDTH, "width", DEPTH, "depth", START_HEIGHT, "start-height", END_HEIGHT, "end-height",
      HEIGHT, "height", CROWN_RADIUS, "crown-radius", CROWN_BASE, "crown-base");

  private GeoJson() {}
}
