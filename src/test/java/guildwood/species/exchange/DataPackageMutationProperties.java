package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.LibraryContents;
import guildwood.species.LibraryExtract;
import guildwood.species.LibraryMerge;
import guildwood.species.SpeciesLibrary;
import guildwood.species.WrittenStatement;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Data packages spoilt in every way: the zip itself, and the files inside it. Each is read whole or refused in words;
 * what is read can be kept whole. The seed is fixed, so that a failure comes back.
 */
class DataPackageMutationProperties {
  private static final int CASES = 5_000;
  /** Of those that can be read, every so many are brought into a database; all of them are checked without one. */
  private static final int EVERY = 60;
  private static final Messages MESSAGES = new Messages();
  private static final List<String> BITS = List.of("\"", ",", "\r\n", "\n", "'", "=", ";", "-", "\u0000", "\uFEFF", "{", "}", "é", "木",
      "9999999999999", "NaN", "1e400", "../../x", "new", "yes", "no", "own-experience", "species", "a".repeat(400), "a".repeat(25_000));

  @TempDir
  private static Path folder;
  private static byte[] zip;
  private static Map<String, byte[]> files;

  @BeforeAll
  static void write() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataPackageWriter.write(extract(), MESSAGES, out);
    zip = out.toByteArray();
    files = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), in.readAllBytes());
      }
    }
  }

  private static LibraryExtract extract() {
    try (Database database = Database.inMemory()) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      records.addAll(AnyContents.of(7, 2));
      return LibraryExtract.whole(records.library(), LibraryExtract.Beside.of(records));
    }
  }

  @Test
  void aSpoiltPackageIsReadWholeOrRefusedInWords() throws IOException {
    Random random = new Random(2026);
    int read = 0;
    int refused = 0;
    try (Database database = Database.inMemory()) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      for (int i = 0; i < CASES; i++) {
        Path file = Files.write(folder.resolve("spoilt.zip"), random.nextInt(3) == 0 ? spoilt(zip, random) : repacked(random));
        DataPackageReader.isPackage(file);
        Checked<LibraryPackage> found = DataPackageReader.read(file);
        found.findings().stream().limit(10).forEach(DataPackageMutationProperties::said);
        if (found.isRefused()) {
          refused++;
          assertFalse(found.findings().isEmpty() || found.findings().size() > DataPackageReader.MOST_FINDINGS);
        } else {
          found.orThrow().remarks().forEach(DataPackageMutationProperties::said);
          isWhole(found.orThrow().contents());
          if (read++ % EVERY == 0) {
            isKeptWhole(records, found.orThrow().contents());
          }
        }
      }
    }
    assertTrue(read > CASES / 20 && refused > CASES / 3, read + " read, " + refused + " refused");
  }

  private static void said(Finding finding) {
    String sentence = MESSAGES.say(finding);
    assertTrue(!sentence.isBlank() && sentence.length() < 30_000, sentence);
  }

  private static void isWhole(LibraryContents contents) {
    for (WrittenStatement statement : contents.statements()) {
      assertTrue(contents.species().containsKey(statement.speciesId()), statement.toString());
      assertTrue(contents.sources().stream().anyMatch(s -> s.id().equals(statement.sourceId())), statement.toString());
    }
    LibraryMerge merge = LibraryMerge.of(new SpeciesLibrary(0, List.of(), List.of(), Map.of()), LibraryExtract.Beside.NOTHING, contents, id -> true);
    assertEquals(contents, merge.additions(), "nothing is there yet, so all of it is new");
  }

  private static void isKeptWhole(SqlSpeciesRecords records, LibraryContents contents) {
    SpeciesLibrary before = records.library();
    LibraryMerge merge = records.addAll(contents);
    SpeciesLibrary after = records.library();
    assertEquals(before.species().size() + merge.additions().species().size(), after.species().size());
    assertEquals(values(before) + merge.additions().statements().size(), values(after));
  }

  private static int values(SpeciesLibrary library) {
    return library.unread().size() + library.species().stream().mapToInt(s -> s.statements().size()).sum();
  }

  /** One of the files inside spoilt, dropped, doubled or given another's contents. */
  private static byte[] repacked(Random random) throws IOException {
    Map<String, byte[]> changed = new LinkedHashMap<>(files);
    List<String> names = new ArrayList<>(changed.keySet());
    String name = names.get(random.nextInt(names.size()));
    switch (random.nextInt(8)) {
      case 0 -> changed.remove(name);
      case 1 -> changed.put(name, files.get(names.get(random.nextInt(names.size()))));
      case 2 -> changed.put(name, spoilt(files.get(name), random));
      default -> changed.put(name, edited(files.get(name), random));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream to = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : changed.entrySet()) {
        to.putNextEntry(new ZipEntry(each.getKey()));
        to.write(each.getValue());
      }
    }
    return out.toByteArray();
  }

  /** As somebody does with a text editor: a few characters here or there, a line more or less. */
  private static byte[] edited(byte[] bytes, Random random) {
    StringBuilder text = new StringBuilder(new String(bytes, StandardCharsets.UTF_8));
    for (int n = 1 + random.nextInt(2); n > 0; n--) {
      int at = random.nextInt(text.length() + 1);
      int end = Math.min(text.length(), at + random.nextInt(8));
      switch (random.nextInt(4)) {
        case 0 -> text.delete(at, end);
        case 1 -> text.insert(at, text.substring(at, end));
        case 2 -> text.replace(at, end, Integer.toString(random.nextInt(100)));
        default -> text.insert(at, BITS.get(random.nextInt(BITS.size())));
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] spoilt(byte[] bytes, Random random) {
    byte[] copy = bytes.clone();
    if (copy.length == 0) {
      return copy;
    }
    int at = random.nextInt(copy.length);
    switch (random.nextInt(4)) {
      case 0 -> {
        return Arrays.copyOf(copy, at);
      }
      case 1 -> {
        int end = Math.min(copy.length, at + 1 + random.nextInt(200));
        byte[] doubled = Arrays.copyOf(copy, copy.length + end - at);
        System.arraycopy(copy, at, doubled, end, copy.length - at);
        return doubled;
      }
      default -> {
        for (int n = 1 + random.nextInt(6); n > 0; n--) {
          // The end of a zip holds its list of contents: half of the changes go there.
          int place = random.nextBoolean() ? random.nextInt(copy.length) : copy.length - 1 - random.nextInt(Math.min(copy.length, 600));
          copy[place] = (byte) random.nextInt(256);
        }
        return copy;
      }
    }
  }
}
