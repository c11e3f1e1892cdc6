package guildwood.exporting.exchange;

import guildwood.species.LibraryExtract;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.DataPackageReader;
import guildwood.species.exchange.DataPackageWriter;
import guildwood.species.exchange.LibraryPackage;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.web.Messages;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How taking the library away grows with the library: processor time, for the shipped one and for it many times over. */
public final class ExportBenchmark {
  private static final Messages MESSAGES = new Messages();

  private ExportBenchmark() {}

  public static void main(String[] args) throws IOException {
    SpeciesLibrary shipped = ShippedLibrary.read("/seed-data").orThrow();
    double[] once = run(times(shipped, 3));
    once = run(times(shipped, 3));
    double[] many = run(times(shipped, 30));
    for (int i = 0; i < once.length; i++) {
      System.out.printf("10 times the species take %.1f times as long%n", many[i] / once[i]);
    }
  }

  private static SpeciesLibrary times(SpeciesLibrary shipped, int times) {
    List<Species> all = new ArrayList<>();
    for (int n = 0; n < times; n++) {
      String letters = "" + (char) ('a' + n / 26) + (char) ('a' + n % 26);
      for (Species s : shipped.species()) {
        all.add(new Species(s.id() + "-" + letters, s.scientificName() + " " + letters, s.commonNames(), s.family(), s.synonyms(), false,
            s.statements()));
      }
    }
    return new SpeciesLibrary(1, all, List.of(), shipped.sources());
  }

  private static double[] run(SpeciesLibrary library) throws IOException {
    LibraryExtract extract = LibraryExtract.whole(library, LibraryExtract.Beside.NOTHING);
    Path file = Files.createTempFile("guildwood", ".export");
    int species = library.species().size();
    int values = library.species().stream().mapToInt(s -> s.statements().size()).sum();
    System.out.println(species + " species, " + values + " values");
    double table = write("table", file, out -> {
      Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
      SpeciesTableWriter.write(library.species(), text);
      text.flush();
    });
    double workbook = write("workbook", file, new LibraryWorkbook(extract, library.species(), List.of(), MESSAGES)::write);
    double written = write("data package", file, out -> DataPackageWriter.write(extract, MESSAGES, out));
    double before = seconds();
    LibraryPackage read = DataPackageReader.read(file).orThrow();
    double reading = seconds() - before;
    System.out.printf("  data package read: %.2f s, %d values%n", reading, read.contents().statements().size());
    Files.delete(file);
    return new double[] {table, workbook, written, reading};
  }

  private interface Writing {
    void to(OutputStream out) throws IOException;
  }

  private static double write(String what, Path file, Writing writing) throws IOException {
    double before = seconds();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      writing.to(out);
    }
    double taken = seconds() - before;
    System.out.printf("  %s: %.2f s, %.1f MB%n", what, taken, Files.size(file) / 1e6);
    return taken;
  }

  private static double seconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }
}
