package guildwood.importing.exchange;

import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.exchange.EncodingGuess.Encoding;
import guildwood.importing.exchange.TextFormat.CellStyle;
import guildwood.species.exchange.SafeCell;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** Text files with one row a line and any separator. */
final class TextFiles {
  private static final int SAMPLE_CHARS = 1 << 18;
  private static final String END_OF_FILE_OF_OLD = "\u001A";

  private TextFiles() {}

  static Table open(Path file, String name) throws IOException {
    TextFormat format = format(file);
    return new ReadTable(name, gate -> read(file, format, gate));
  }

  static TextFormat format(Path file) throws IOException {
    Encoding encoding = EncodingGuess.of(file);
    char[] begin = new char[SAMPLE_CHARS];
    int length = 0;
    boolean cut;
    try (Reader reader = reader(file, encoding.charset(), encoding.markBytes())) {
      for (int read = 0; length < SAMPLE_CHARS && read >= 0; length += Math.max(0, read)) {
        read = reader.read(begin, length, SAMPLE_CHARS - length);
      }
      cut = reader.read() >= 0;
    } catch (CharacterCodingException e) {
      throw new RefusedRead("encoding", 1);
    }
    String sample = new String(begin, 0, length);
    if (sample.isBlank() && !cut) {
      throw new RefusedRead("empty");
    }
    Optional<Character> named = SeparatorGuess.named(sample);
    CellStyle cells = named.map(sign -> SeparatorGuess.withSeparator(sign, withoutFirstLine(sample), cut))
        .orElseGet(() -> SeparatorGuess.of(sample, cut));
    return new TextFormat(encoding.charset(), encoding.markBytes(), named.isPresent(), cells);
  }

  private static String withoutFirstLine(String sample) {
    return sample.substring(sample.startsWith("\r\n", 5) ? 7 : 6);
  }

  private static void read(Path file, TextFormat format, RowGate gate) throws IOException {
    try (TextRecords records = new TextRecords(reader(file, format.charset(), format.markBytes()), format.cells())) {
      if (format.separatorLine()) {
        records.next();
      }
      long before = format.separatorLine() ? 1 : 0;
      boolean more = true;
      for (CSVRecord record = records.next(); record != null && more; record = more ? records.next() : null) {
        long row = record.getRecordNumber() - before;
        for (int column = 0; column < record.size(); column++) {
          gate.put(row, column, cell(record.get(column)));
        }
        more = gate.end(row, 1);
      }
    }
  }

  private static TableCell cell(String text) {
    return text.equals(END_OF_FILE_OF_OLD) ? TableCell.EMPTY : TableCell.text(SafeCell.unmark(text));
  }

  /** A fresh decoder reports what it cannot read instead of replacing it. */
  private static Reader reader(Path file, Charset charset, int markBytes) throws IOException {
    InputStream in = Files.newInputStream(file);
    in.skipNBytes(markBytes);
    return new InputStreamReader(in, charset.newDecoder());
  }
}
