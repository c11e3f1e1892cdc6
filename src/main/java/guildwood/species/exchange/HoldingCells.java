package guildwood.species.exchange;

import guildwood.kernel.Finding;
import guildwood.species.Holding;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;

/** What the owner has of a species, as it stands in cells: plants, and a price in the owner's currency with two decimals. */
final class HoldingCells {
  private static final int DECIMALS = 2;

  private HoldingCells() {}

  static String price(OptionalInt cents) {
    return cents.isEmpty() ? "" : BigDecimal.valueOf(cents.getAsInt(), DECIMALS).toPlainString();
  }

  /** A number of plants; 0 where the cell cannot be read and the findings say so. */
  static int plants(CsvTable.Row row, String column, List<Finding> findings) {
    String cell = row.cell(column);
    if (!cell.matches("\\d{1,9}")) {
      findings.add(row.finding("number.not-whole", column, cell));
      return 0;
    }
    int plants = Integer.parseInt(cell);
    if (plants > Holding.MOST_PLANTS) {
      findings.add(row.finding("number.out-of-scale", column, 0, Holding.MOST_PLANTS));
      return 0;
    }
    return plants;
  }

  /** A price; absent where the cell is empty, or cannot be read and the findings say so. */
  static OptionalInt cents(CsvTable.Row row, String column, List<Finding> findings) {
    String cell = row.cell(column);
    if (!cell.matches("|\\d{1,7}(\\.\\d{1,2})?")) {
      findings.add(row.finding("number.unreadable", column, cell));
      return OptionalInt.empty();
    }
    OptionalInt cents = cell.isEmpty() ? OptionalInt.empty() : OptionalInt.of(new BigDecimal(cell).movePointRight(DECIMALS).intValueExact());
    if (cents.isPresent() && cents.getAsInt() > Holding.MOST_CENTS) {
      findings.add(row.finding("number.out-of-scale", column, 0, Holding.MOST_CENTS / 100));
      return OptionalInt.empty();
    }
    return cents;
  }
}
