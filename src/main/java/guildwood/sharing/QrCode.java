package guildwood.sharing;

import io.nayuki.qrcodegen.QrCode.Ecc;

/**
 * An address as a QR code (ISO/IEC 18004), drawn as one SVG path on a grid of unit squares.
 *
 * @param size modules on a side, the quiet zone of four modules included
 * @param path the dark modules
 */
public record QrCode(int size, String path) {
  private static final int QUIET_ZONE = 4;

  public static QrCode of(String address) {
    io.nayuki.qrcodegen.QrCode code = io.nayuki.qrcodegen.QrCode.encodeText(address, Ecc.MEDIUM);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x + QUIET_ZONE).append(' ').append(y + QUIET_ZONE).append("h1v1h-1z");
        }
      }
    }
    return new QrCode(code.size + 2 * QUIET_ZONE, path.toString());
  }
}
