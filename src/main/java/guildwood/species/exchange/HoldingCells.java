package guildwood.species.exchange;

import java.math.BigDecimal;
import java.util.OptionalInt;

/** What a plant costs, as it stands in a cell: in the owner's currency, with two decimals. */
final class HoldingCells {
  private static final int DECIMALS = 2;

  private HoldingCells() {}

  static String price(OptionalInt cents) {
    return cents.isEmpty() ? "" : BigDecimal.valueOf(cents.getAsInt(), DECIMALS).toPlainString();
  }

  /** @param cell digits with at most two decimals, or empty */
  static OptionalInt cents(String cell) {
    return cell.isEmpty() ? OptionalInt.empty() : OptionalInt.of(new BigDecimal(cell).movePointRight(DECIMALS).intValueExact());
  }
}
