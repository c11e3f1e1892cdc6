package guildwood.drawing;

import java.util.List;

/**
 * A label that found its place.
 *
 * @param atX where the plant stands that it belongs to, millimetres
 * @param led whether a line leads from the plant to it
 */
record Label(String words, Box box, double atX, double atY, boolean led) {

  /**
   * A label that seeks a place.
   *
   * @param choices the same in fewer and fewer letters, the fullest first
   */
  record Wanted(double atX, double atY, List<String> choices) {}
}
