package guildwood.materials.exchange;

import guildwood.materials.Material;
import guildwood.materials.PlantsToBuy;
import guildwood.materials.SiteNeeds;
import guildwood.materials.Volume;
import guildwood.species.exchange.SafeCell;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes what is still to be brought as a table (RFC 4180, header row): materials first, then plants. */
public final class ShoppingListWriter {
  private ShoppingListWriter() {}

  /**
   * @param names of the materials in the reader's words
   * @param to where the text goes; the caller encodes it as UTF-8
   */
  public static void write(SiteNeeds needs, List<PlantsToBuy> plants, Function<Material, String> names, Appendable to) throws IOException {
    CSVPrinter printer = new CSVPrinter(to, CSVFormat.RFC4180);
    printer.printRecord("item", "scientific_name", "amount", "unit", "cubic_yards", "loads", "bed");
    for (Map.Entry<Material, Double> missing : needs.missing().entrySet()) {
      printer.printRecord(safe(material(needs, missing.getKey(), missing.getValue(), names)));
    }
    for (PlantsToBuy each : plants) {
      printer.printRecord(safe(Stream.of(each.name(), each.scientificName(), Integer.toString(each.count()), "plants", "", "", each.bed())));
    }
    printer.flush();
  }

  private static Stream<String> material(SiteNeeds needs, Material material, double amount, Function<Material, String> names) {
    return material.inSheets()
        ? Stream.of(names.apply(material), "", Long.toString((long) Math.ceil(amount)), "sheets", "", "", "")
        : Stream.of(names.apply(material), "", number(amount), "m3", number(Volume.cubicYards(amount)),
            Integer.toString(needs.settings().loads(amount)), "");
  }

  private static List<String> safe(Stream<String> cells) {
    return cells.map(SafeCell::mark).toList();
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }
}
