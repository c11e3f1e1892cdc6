package guildwood.materials.web;

import java.util.List;

/**
 * The materials of a site in words.
 *
 * @param headline how far the stock reaches, in one sentence
 * @param rows a layer each, in the owner's order
 * @param leftOut beds and paths that are not to be covered
 * @param stock what lies there
 * @param missing what is still to be brought
 * @param time one person's work left in all; empty where there is none
 * @param cautions what to know about the materials in use
 */
public record MaterialView(String headline, List<Row> rows, List<LeftOut> leftOut, List<Lying> stock, List<Missing> missing, String time,
    List<String> cautions) {
  /**
   * A layer of a bed or path.
   *
   * @param target its bed or path as it stands in addresses
   * @param up whether the bed or path can be moved up; only told at its first layer
   * @param enough what the stock is enough for; empty where it is enough for all
   */
  public record Row(String key, String target, String name, String kind, int order, boolean up, boolean down, String what, String where,
      String amount, String trips, String laid, String time, String state, String enough, boolean done) {}

  /** A bed or path that is not to be covered. */
  public record LeftOut(String target, String name, String kind) {}

  /**
   * Stock of one material.
   *
   * @param leaves what is left of it once all needs it reaches are met
   */
  public record Lying(String material, String amount, String leaves) {}

  /** What is to be brought of one material. */
  public record Missing(String material, String amount, String loads, String trips, String weight) {}

  /** A delivery. */
  public record Came(long id, String day, String what, String note) {}

  /**
   * Work done.
   *
   * @param elsewhere what of it did not come from the recorded stock; may be empty
   */
  public record Done(long id, String day, String name, String what, String elsewhere) {}
}
