package guildwood.drawing;

/** A rectangle on a sheet, millimetres from its upper left corner. */
record Box(double left, double top, double right, double bottom) {
  static Box around(double x, double y, double halfWide, double halfHigh) {
    return new Box(x - halfWide, y - halfHigh, x + halfWide, y + halfHigh);
  }

  boolean meets(Box other) {
    return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
  }

  boolean holds(Box other) {
    return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
  }

  boolean holds(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  Box widened(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  double middleX() {
    return (left + right) / 2;
  }

  double middleY() {
    return (top + bottom) / 2;
  }
}
