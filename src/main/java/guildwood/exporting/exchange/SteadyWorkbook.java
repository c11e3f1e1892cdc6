package guildwood.exporting.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A workbook without the moment it was made, so that the same library gives the same file. */
final class SteadyWorkbook {
  private static final LocalDateTime FIRST_MOMENT = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final String CREATED = "(<dcterms:created[^>]*>)[^<]*(</dcterms:created>)";

  private SteadyWorkbook() {}

  /** Writes a workbook somewhere. */
  interface Making {
    void to(OutputStream out) throws IOException;
  }

  /** @param out stays open */
  static void write(Making making, OutputStream out) throws IOException {
    Path made = Files.createTempFile("guildwood", ".xlsx");
    try {
      try (OutputStream to = Files.newOutputStream(made)) {
        making.to(to);
      }
      copy(made, out);
    } finally {
      Files.deleteIfExists(made);
    }
  }

  private static void copy(Path made, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    try (ZipFile from = new ZipFile(made.toFile())) {
      // The list of contents first, as most readers expect.
      List<? extends ZipEntry> entries = from.stream()
          .sorted(Comparator.comparing((ZipEntry e) -> !e.getName().startsWith("[")).thenComparing(ZipEntry::getName)).toList();
      for (ZipEntry entry : entries) {
        ZipEntry copied = new ZipEntry(entry.getName());
        copied.setTimeLocal(FIRST_MOMENT);
        zip.putNextEntry(copied);
        try (InputStream in = from.getInputStream(entry)) {
          if (entry.getName().equals("docProps/core.xml")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            zip.write(text.replaceAll(CREATED, "$11980-01-01T00:00:00Z$2").getBytes(StandardCharsets.UTF_8));
          } else {
            in.transferTo(zip);
          }
        }
        zip.closeEntry();
      }
    }
    zip.finish();
  }
}
