package guildwood.importing.exchange;

import guildwood.importing.exchange.TextFormat.CellStyle;
import guildwood.importing.exchange.TextFormat.Quotes;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The records of a text file, one by one; a record that is not well formed is refused with its number. */
final class TextRecords implements AutoCloseable {
  private final BoundedRecords bounded;
  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private long last;

  TextRecords(Reader reader, CellStyle style) throws IOException {
    bounded = new BoundedRecords(reader);
    parser = CSVParser.parse(bounded, format(style));
    records = parser.iterator();
  }

  private static CSVFormat format(CellStyle style) {
    CSVFormat.Builder format = CSVFormat.RFC4180.builder().setDelimiter(style.separator()).setIgnoreEmptyLines(false);
    return switch (style.quotes()) {
      case DOUBLED -> format.get();
      case SPACED -> format.setIgnoreSurroundingSpaces(true).get();
      case BACKSLASH -> format.setEscape('\\').get();
      case PLAIN -> format.setQuote(null).get();
    };
  }

  /** The next record; null at the end. */
  CSVRecord next() throws IOException {
    try {
      if (!records.hasNext()) {
        return null;
      }
      CSVRecord record = records.next();
      last = record.getRecordNumber();
      bounded.next(last + 1);
      return record;
    } catch (UncheckedIOException | IllegalStateException e) {
      throw refusal(e);
    }
  }

  private RefusedRead refusal(RuntimeException e) {
    for (Throwable at = e; at != null; at = at.getCause()) {
      if (at instanceof RefusedRead refused) {
        return refused;
      }
      if (at instanceof java.nio.charset.CharacterCodingException) {
        return new RefusedRead("encoding", last + 1);
      }
    }
    return new RefusedRead("quotes", last + 1);
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
