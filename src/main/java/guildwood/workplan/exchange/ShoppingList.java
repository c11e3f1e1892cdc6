package guildwood.workplan.exchange;

import guildwood.species.Holding;
import guildwood.species.exchange.SafeCell;
import guildwood.workplan.PlantJob;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Plants to buy as a table (RFC 4180): one row a species and bed. */
public final class ShoppingList {
  private ShoppingList() {}

  /** @param holdings with the prices, where they are known */
  public static void write(List<PlantJob> toBuy, Map<String, Holding> holdings, Appendable to) throws IOException {
    CSVPrinter printer = new CSVPrinter(to, CSVFormat.RFC4180);
    printer.printRecord("species", "scientific_name", "bed", "plants", "price_each", "price_all");
    for (PlantJob job : toBuy) {
      Holding holding = holdings.getOrDefault(job.species().id(), Holding.none(job.species().id()));
      int plants = job.provision().buy();
      String each = holding.priceCents().isPresent() ? money(holding.priceCents().getAsInt()) : "";
      String all = holding.priceCents().isPresent() ? money((long) plants * holding.priceCents().getAsInt()) : "";
      printer.printRecord(Stream.of(job.species().name(), job.species().scientificName(), job.bed().name(), Integer.toString(plants), each, all)
          .map(SafeCell::mark).toList());
    }
    printer.flush();
  }

  private static String money(long cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
