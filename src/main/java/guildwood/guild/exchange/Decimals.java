package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import guildwood.kernel.Months;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Month;

/** Numbers of the answer as exact decimals, the same on every Java. */
final class Decimals {
  private Decimals() {}

  /** Thousandths, such as points, as a decimal. */
  static BigDecimal milli(long thousandths) {
    return plain(BigDecimal.valueOf(thousandths, 3));
  }

  /** Hundredths, such as cents or square decimetres, as a decimal. */
  static BigDecimal hundredths(long hundredths) {
    return plain(BigDecimal.valueOf(hundredths, 2));
  }

  /** A measured or computed number to the thousandth. */
  static BigDecimal rounded(double number) {
    return plain(new BigDecimal(number).setScale(3, RoundingMode.HALF_UP));
  }

  /** A number the engine has written out already. */
  static BigDecimal read(String number) {
    return plain(new BigDecimal(number));
  }

  static ArrayNode months(Months months, ArrayNode to) {
    for (Month month : months.list()) {
      to.add(month.getValue());
    }
    return to;
  }

  /** Without zeros at the end and without an exponent. */
  private static BigDecimal plain(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }
}
