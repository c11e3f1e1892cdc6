package guildwood.species.exchange;

import guildwood.species.LibraryExtract;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a library as a Frictionless Data Package: a zip of {@code datapackage.json} and one CSV file a table.
 * The same library gives the same bytes, wherever and whenever it is written.
 */
public final class DataPackageWriter {
  private DataPackageWriter() {}

  /** @param to stays open */
  public static void write(LibraryExtract extract, Messages messages, OutputStream to) throws IOException {
    PackageRows rows = new PackageRows(extract, messages);
    List<StoredZip.Measured> tables = new ArrayList<>();
    for (PackageTable table : PackageTable.values()) {
      tables.add(StoredZip.measure(table.file(), out -> rows.write(table, out)));
    }
    byte[] descriptor = new PackageDescriptor(messages).write(extract.sources(), tables);
    try (StoredZip zip = new StoredZip(to)) {
      zip.add(StoredZip.measure(PackageDescriptor.FILE, out -> out.write(descriptor)));
      for (StoredZip.Measured table : tables) {
        zip.add(table);
      }
    }
  }
}
