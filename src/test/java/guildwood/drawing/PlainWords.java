package guildwood.drawing;

import guildwood.site.LengthReader;
import guildwood.species.Layer;

/** The words of a drawing in a test, in metres or feet. */
record PlainWords(boolean feet) implements BedDrawing.Words {
  @Override
  public String title() {
    return "A bed";
  }

  @Override
  public String description() {
    return "A bed from above";
  }

  @Override
  public String heading() {
    return "A bed – year 5";
  }

  @Override
  public String north() {
    return "N";
  }

  @Override
  public String metres(double lengthM) {
    return feet ? Math.round(lengthM / LengthReader.FOOT_M * 10) / 10.0 + " ft" : lengthM + " m";
  }

  @Override
  public double unitM() {
    return feet ? LengthReader.FOOT_M : 1;
  }

  @Override
  public String scale(int scale, Paper paper) {
    return "1:" + scale + ", true on " + paper.key();
  }

  @Override
  public String layer(Layer layer) {
    return layer.key();
  }

  @Override
  public String key(PlantKind kind) {
    return kind.name() + " x" + kind.plants();
  }

  @Override
  public String leftOut(int labels) {
    return labels + " labels left out";
  }

  @Override
  public String handle(PlantKind kind, Spot spot) {
    return kind.name() + " " + spot.number();
  }
}
