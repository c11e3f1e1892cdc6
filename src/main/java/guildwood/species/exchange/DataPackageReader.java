package guildwood.species.exchange;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads a library's data package, as {@link DataPackageWriter} writes it, also after somebody changed its tables.
 * Every finding says file, row and column. Names inside the zip are only looked up, never written to.
 */
public final class DataPackageReader {
  /** More findings than these help nobody; the rest of the package is not read then. */
  public static final int MOST_FINDINGS = 500;
  private static final long MOST_BYTES = 400_000_000;
  private static final int MOST_DESCRIPTOR_BYTES = 5_000_000;
  private static final int MOST_ENTRIES = 100;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final ZipFile zip;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Finding> remarks = new ArrayList<>();

  private DataPackageReader(ZipFile zip) {
    this.zip = zip;
  }

  /** Whether a file is a zip that describes itself as a data package, of whatever contents. */
  public static boolean isPackage(Path file) {
    try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
      return zip.getEntry(PackageDescriptor.FILE) != null;
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }

  /** The library in a package, or everything that is wrong with it. */
  public static Checked<LibraryPackage> read(Path file) {
    // Names that are not UTF-8 are a ZipException or, in some places, an IllegalArgumentException.
    try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
      return new DataPackageReader(zip).read();
    } catch (ZipException | IllegalArgumentException e) {
      return Checked.refused(Finding.of("package.not-a-zip", ""));
    } catch (IOException | UncheckedIOException e) {
      return Checked.refused(Finding.of("package.damaged", ""));
    }
  }

  private Checked<LibraryPackage> read() throws IOException {
    Optional<JsonNode> descriptor = descriptor();
    if (descriptor.isEmpty()) {
      return Checked.refused(findings);
    }
    ContentsReader contents = new ContentsReader(ContentsReader.Tidiness.KEPT, findings);
    table(PackageTable.SOURCES, descriptor.get(), contents::source);
    table(PackageTable.SPECIES, descriptor.get(), contents::species);
    table(PackageTable.VALUES, descriptor.get(), row -> {
      contents.value(row);
      reckoned(row);
    });
    table(PackageTable.UNREAD, descriptor.get(), contents::unread);
    table(PackageTable.NOTES, descriptor.get(), contents::note);
    table(PackageTable.HOLDINGS, descriptor.get(), contents::holding);
    contents.finish();
    return findings.isEmpty()
        ? Checked.of(new LibraryPackage(contents.contents(), remarks))
        : Checked.refused(findings.size() <= MOST_FINDINGS ? findings : findings.subList(0, MOST_FINDINGS));
  }

  private Optional<JsonNode> descriptor() throws IOException {
    ZipEntry entry = zip.getEntry(PackageDescriptor.FILE);
    if (zip.size() > MOST_ENTRIES) {
      return refused("package.too-many-files", zip.size(), MOST_ENTRIES);
    } else if (entry == null) {
      return refused("package.no-descriptor", PackageDescriptor.FILE);
    }
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] bytes = in.readNBytes(MOST_DESCRIPTOR_BYTES + 1);
      if (bytes.length > MOST_DESCRIPTOR_BYTES) {
        return refused("package.too-large", PackageDescriptor.FILE, MOST_DESCRIPTOR_BYTES / 1_000_000);
      }
      JsonNode root = JSON.readTree(bytes);
      int shape = root.path(PackageDescriptor.LIBRARY_KEY).asInt(0);
      if (shape == 0) {
        return refused("package.not-a-library");
      }
      return shape > PackageDescriptor.SHAPE ? refused("package.newer") : Optional.of(root);
    } catch (JacksonException e) {
      return refused("package.bad-descriptor", PackageDescriptor.FILE);
    }
  }

  private <T> Optional<T> refused(String code, Object... args) {
    findings.add(Finding.of(code, "", args));
    return Optional.empty();
  }

  private void table(PackageTable table, JsonNode descriptor, Consumer<CsvTable.Row> taker) throws IOException {
    String file = table.file();
    ZipEntry entry = zip.getEntry(file);
    if (entry == null) {
      findings.add(Finding.of("seed.no-file", file));
      return;
    }
    try (Summed in = new Summed(zip.getInputStream(entry), MOST_BYTES)) {
      InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
      CsvTable.read(file, new ShortLines(text), table.columns(), findings, row -> {
        taker.accept(row.unmarked());
        return findings.size() < MOST_FINDINGS;
      });
      if (in.isCut()) {
        findings.add(Finding.of("package.too-large", "", file, MOST_BYTES / 1_000_000));
      } else if (findings.isEmpty() && !isAsDescribed(table, descriptor, in)) {
        remarks.add(Finding.of("package.changed", file));
      }
    }
  }

  /** Whether a table has the sum that the descriptor names for it; true where it names none. */
  private static boolean isAsDescribed(PackageTable table, JsonNode descriptor, Summed in) throws IOException {
    for (JsonNode resource : descriptor.path("resources")) {
      String hash = resource.path("hash").asText();
      if (resource.path("name").asText().equals(table.key()) && hash.startsWith("sha256:")) {
        return hash.substring("sha256:".length()).equalsIgnoreCase(in.sha256());
      }
    }
    return true;
  }

  /** The value as entered counts; that the numbers beside it say otherwise is worth a remark. */
  private void reckoned(CsvTable.Row row) {
    if (remarks.size() < MOST_FINDINGS) {
      ReckonedCells.difference(row).ifPresent(remarks::add);
    }
  }
}
