package guildwood.importing.exchange;

import com.github.miachm.sods.SpreadSheet;
import guildwood.importing.Table;
import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.ReadableWorkbook;

/**
 * How much heap and time the largest files need, beside other readers. Not a test: run its main method. Every reading
 * is a process of its own, with the smallest of some heaps in which it comes to an end.
 */
final class TableFilesBenchmark {
  private static final int ROWS = 200_000;
  private static final int TEXT_COLUMNS = 7;
  private static final int NUMBER_COLUMNS = 10;
  private static final int SMALL_ROWS = 20_000;
  private static final int[] HEAPS_MB = {16, 24, 32, 48, 64, 96, 128, 192, 256, 512, 1_024};
  private static final long PATIENCE_SECONDS = 300;

  private TableFilesBenchmark() {}

  public static void main(String[] args) throws Exception {
    if (args.length == 2) {
      System.out.println(read(args[0], Path.of(args[1])));
      return;
    }
    Path folder = Files.createTempDirectory("tables-benchmark");
    System.out.println("file                      MB     rows  reader       heap MB   seconds with 256 MB");
    for (String kind : List.of("csv", "xlsx", "ods")) {
      measure(folder, kind, ROWS, kind.equals("ods") ? "ours" : kind.equals("xlsx") ? "ours,fastexcel" : "ours");
    }
    measure(folder, "ods", SMALL_ROWS, "ours,sods");
  }

  private static void measure(Path folder, String kind, int rows, String readers) throws Exception {
    Path file = folder.resolve("plants." + kind);
    write(kind, file, rows);
    for (String reader : readers.split(",")) {
      int heap = smallestHeap(reader, file);
      long start = System.nanoTime();
      boolean done = run(reader, file, 256);
      double seconds = (System.nanoTime() - start) / 1e9;
      System.out.printf(Locale.ROOT, "%-20s %8.1f %8d  %-10s %9d   %s%n", file.getFileName(), Files.size(file) / 1e6, rows, reader, heap,
          done ? String.format(Locale.ROOT, "%.1f", seconds) : "does not end");
    }
    Files.delete(file);
  }

  private static int smallestHeap(String reader, Path file) throws Exception {
    for (int heap : HEAPS_MB) {
      if (run(reader, file, heap)) {
        return heap;
      }
    }
    return -1;
  }

  private static boolean run(String reader, Path file, int heapMb) throws Exception {
    Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + heapMb + "m", "-XX:+UseSerialGC",
        "-XX:+ExitOnOutOfMemoryError", "-cp", System.getProperty("java.class.path"), TableFilesBenchmark.class.getName(), reader, file.toString())
        .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      return false;
    }
    return process.exitValue() == 0;
  }

  /** How many rows a reader sees. */
  private static long read(String reader, Path file) throws IOException {
    if (reader.equals("ours")) {
      return TableFiles.open(file, "plants").orThrow().stream().mapToLong(sheet -> chars(sheet)).sum();
    }
    if (reader.equals("sods")) {
      return new SpreadSheet(new File(file.toString())).getSheet(0).getMaxRows();
    }
    try (ReadableWorkbook book = new ReadableWorkbook(file.toFile()); Stream<org.dhatim.fastexcel.reader.Row> rows = book.getFirstSheet().openStream()) {
      return rows.mapToLong(row -> row.stream().mapToLong(cell -> cell == null ? 0 : cell.getText().length()).sum()).sum();
    }
  }

  private static long chars(Table sheet) {
    long[] chars = new long[1];
    sheet.rows(row -> {
      row.cells().forEach(cell -> chars[0] += cell.text().length());
      return true;
    }).orThrow();
    return chars[0];
  }

  static void write(String kind, Path file, int rows) {
    Random random = new Random(1);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      switch (kind) {
        case "csv" -> writeText(out, rows, random);
        case "xlsx" -> writeWorkbook(out, rows, random);
        default -> writeOpenDocument(out, rows, random);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Hardly two alike: the worst case for a table of shared texts. */
  private static String words(Random random) {
    StringBuilder words = new StringBuilder();
    for (int i = 2 + random.nextInt(6); i >= 0; i--) {
      words.append(Integer.toString(random.nextInt(200_000), 36)).append(' ');
    }
    return words.toString().strip();
  }

  private static double number(Random random) {
    return random.nextInt(1_000) / 10.0;
  }

  private static void writeText(OutputStream out, int rows, Random random) throws IOException {
    Writer writer = new java.io.OutputStreamWriter(out, StandardCharsets.UTF_8);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < TEXT_COLUMNS + NUMBER_COLUMNS; column++) {
        writer.write(column < TEXT_COLUMNS ? '"' + words(random) + "\"," : number(random) + ",");
      }
      writer.write("\n");
    }
    writer.flush();
  }

  private static void writeWorkbook(OutputStream out, int rows, Random random) throws IOException {
    try (Workbook book = new Workbook(out, "benchmark", "1.0")) {
      Worksheet sheet = book.newWorksheet("Plants");
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < TEXT_COLUMNS; column++) {
          sheet.value(row, column, words(random));
        }
        for (int column = TEXT_COLUMNS; column < TEXT_COLUMNS + NUMBER_COLUMNS; column++) {
          sheet.value(row, column, number(random));
        }
        if (row % 1_000 == 0) {
          sheet.flush();
        }
      }
    }
  }

  private static void writeOpenDocument(OutputStream out, int rows, Random random) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    zip.putNextEntry(new ZipEntry("mimetype"));
    zip.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.UTF_8));
    zip.putNextEntry(new ZipEntry("META-INF/manifest.xml"));
    zip.write(("<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\"><manifest:file-entry manifest:full-path=\"/\""
        + " manifest:media-type=\"application/vnd.oasis.opendocument.spreadsheet\"/></manifest:manifest>").getBytes(StandardCharsets.UTF_8));
    zip.putNextEntry(new ZipEntry("content.xml"));
    Writer writer = new java.io.OutputStreamWriter(zip, StandardCharsets.UTF_8);
    writer.write("<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
        + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\" xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\">"
        // SODS finds no sheet in a file without styles.
        + "<office:automatic-styles/><office:body><office:spreadsheet><table:table table:name=\"Plants\">");
    for (int row = 0; row < rows; row++) {
      writer.write("<table:table-row>");
      for (int column = 0; column < TEXT_COLUMNS + NUMBER_COLUMNS; column++) {
        double number = number(random);
        writer.write(column < TEXT_COLUMNS
            ? "<table:table-cell office:value-type=\"string\"><text:p>" + words(random) + "</text:p></table:table-cell>"
            : "<table:table-cell office:value-type=\"float\" office:value=\"" + number + "\"><text:p>" + number + "</text:p></table:table-cell>");
      }
      writer.write("</table:table-row>");
    }
    writer.write("</table:table></office:spreadsheet></office:body></office:document-content>");
    writer.flush();
    zip.close();
  }
}
