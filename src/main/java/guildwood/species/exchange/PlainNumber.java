package guildwood.species.exchange;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as decimals without an exponent. */
public final class PlainNumber {
  private static final int DIGITS_OF_A_DOUBLE = 17;

  private PlainNumber() {}

  /**
   * The shortest decimal that reads back as the same number. {@code Double.toString} will not do: before
   * Java 19 it was not always the shortest, so files would differ from one Java to another.
   */
  public static String of(double number) {
    BigDecimal exact = new BigDecimal(number);
    for (int digits = 1; digits < DIGITS_OF_A_DOUBLE; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits));
      if (rounded.doubleValue() == number) {
        return plain(rounded);
      }
    }
    return plain(exact.round(new MathContext(DIGITS_OF_A_DOUBLE)));
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
