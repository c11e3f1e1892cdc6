package guildwood.importing.store;

import guildwood.importing.Decisions;
import guildwood.importing.HeaderFinder;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.ImportSource;
import guildwood.importing.MappingSuggester;
import guildwood.importing.Review;
import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Time and memory of a large import; run it with the heap in question, such as {@code -Xmx256m}. Arguments: rows, and
 * how many of the ten value columns are filled.
 */
public final class ImportBenchmark {
  private static final List<String> HEADERS = List.of("Scientific name", "Common name", "Family", "Height (ft)", "pH", "Zone", "Light",
      "Moisture", "Growth rate", "Spread (ft)", "Soil", "Bloom", "Uses", "Remarks");

  private ImportBenchmark() {}

  public static void main(String[] args) throws IOException {
    int rows = args.length > 0 ? Integer.parseInt(args[0]) : 200_000;
    int filled = args.length > 1 ? Integer.parseInt(args[1]) : 5;
    Path directory = Files.createTempDirectory("import-benchmark");
    try (Database database = Database.open(directory)) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      records.addAll(SeedFiles.read("/seed-data").orThrow());
      Table table = new Invented(rows, filled);
      System.out.printf("heap %d MB, %d rows, %d values a row%n", Runtime.getRuntime().maxMemory() >> 20, rows, filled);
      ImportPlan plan = new ImportPlan(new MappingSuggester(records.library()).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping(),
          new ImportSource(Source.Kind.HEARSAY, "Invented", "", OptionalInt.empty()), Decisions.NONE);
      long start = cpu();
      System.out.println(new Review(plan, records.library()).run(table, row -> true, ImportProgress.NONE).orThrow());
      System.out.printf("dry run %.1f s, used %d MB%n", seconds(start), used());
      start = cpu();
      Checked<ImportRun> run = new SqlImports(database, records).bring(table, plan, "invented", Instant.EPOCH, done -> {
        if (done % 50_000 == 0) {
          System.out.printf("  %d rows, used %d MB%n", done, used());
        }
        return true;
      });
      System.out.printf("brought and library read anew %.1f s, used %d MB%n", seconds(start), used());
      start = cpu();
      new SqlImports(database, records).undo(run.orThrow().id(), Instant.EPOCH).orThrow();
      System.out.printf("undone %.1f s%n", seconds(start));
    } finally {
      try (var files = Files.walk(directory)) {
        files.sorted(java.util.Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      }
    }
  }

  /** Seconds of the processor: others may share the machine. */
  private static double seconds(long start) {
    return (cpu() - start) / 1e9;
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long used() {
    System.gc();
    return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20;
  }

  /** Invented plants, made row by row so that the table itself takes no memory. */
  private record Invented(int rows, int filled) implements Table {
    private static final String[] SYLLABLES = {"ba", "ce", "di", "fo", "gu", "la", "me", "ni", "po", "ru", "sa", "te", "vi", "xo", "zu", "ca"};

    @Override
    public String name() {
      return "invented";
    }

    @Override
    public Checked<Long> rows(RowTaker taker) {
      taker.take(row(1, HEADERS));
      for (int i = 0; i < rows && taker.take(row(i + 2, cells(i))); i++) {
        // The row was taken.
      }
      return Checked.of((long) rows);
    }

    private static TableRow row(long number, List<String> texts) {
      return new TableRow(number, texts.stream().map(TableCell::text).toList());
    }

    private List<String> cells(int i) {
      List<String> values = new ArrayList<>(List.of(String.valueOf(3 + i % 90), 4 + i % 3 + "." + i % 10 + " to 7." + i % 9, "zone " + (1 + i % 9),
          "full sun to part shade", "moist", "Moderate", String.valueOf(2 + i % 30), "sandy, loamy", "May-June", "edible, fodder"));
      for (int v = filled; v < values.size(); v++) {
        values.set(v, "");
      }
      List<String> all = new ArrayList<>(List.of(genus(i) + " " + word(i) + "us", "Common " + word(i / 3) + " plant", "Inventaceae"));
      all.addAll(values);
      all.add(i % 20 == 0 ? "a remark about row " + i : "");
      return all;
    }

    private static String genus(int i) {
      String word = word(i / 40);
      return Character.toUpperCase(word.charAt(0)) + word.substring(1) + "a";
    }

    private static String word(int i) {
      StringBuilder word = new StringBuilder();
      for (int rest = i + 4096, n = 0; n < 5; n++, rest /= 16) {
        word.append(SYLLABLES[rest % 16]);
      }
      return word.toString();
    }
  }
}
