package guildwood.importing.exchange;

import guildwood.importing.ImportCounts;
import guildwood.importing.RowFate;
import guildwood.importing.RowOutcome;
import guildwood.importing.RowReading;
import guildwood.importing.Unread;
import guildwood.importing.ValueOutcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Writes down what becomes of every row, as it is reckoned. */
public final class ReviewWriter implements AutoCloseable {
  private final Path directory;
  private final Spool.Writer<ReviewedName> near;
  private final Spool.Writer<ReviewedCell> unread;
  private final Spool.Writer<ReviewedConflict> conflicts;
  private final Spool.Writer<ReviewedRow> fresh;
  private final Spool.Writer<ReviewedRow> known;
  private final Spool.Writer<ReviewedCell> notes;
  private final Tallies tallies = new Tallies();
  private final Set<String> nearNames = new HashSet<>();

  ReviewWriter(Path directory) throws IOException {
    this.directory = directory;
    near = new Spool<>(directory, ReviewSection.NEAR.key(), ReviewedName.class).write();
    unread = new Spool<>(directory, ReviewSection.UNREAD.key(), ReviewedCell.class).write();
    conflicts = new Spool<>(directory, ReviewSection.CONFLICTS.key(), ReviewedConflict.class).write();
    fresh = new Spool<>(directory, ReviewSection.NEW.key(), ReviewedRow.class).write();
    known = new Spool<>(directory, ReviewSection.KNOWN.key(), ReviewedRow.class).write();
    notes = new Spool<>(directory, ReviewSection.NOTES.key(), ReviewedCell.class).write();
  }

  /** Takes the next row. */
  public void take(RowOutcome outcome) {
    tallies.take(outcome);
    RowReading reading = outcome.reading();
    // A name that stands in many rows is decided once.
    if (!outcome.near().isEmpty() && nearNames.add(reading.writtenName())) {
      near.add(new ReviewedName(outcome.row(), reading.writtenName(), outcome.near()));
    }
    for (Unread cell : outcome.unread()) {
      unread.add(new ReviewedCell(cell.row(), outcome.name(), cell.column(), cell.header(), cell.text(), cell.reason().code(),
          cell.reason().args()));
    }
    if (outcome.fate().isBrought()) {
      brought(outcome);
    }
  }

  private void brought(RowOutcome outcome) {
    for (ValueOutcome value : outcome.values()) {
      if (value.fate() == ValueOutcome.Fate.CONFLICT) {
        conflicts.add(new ReviewedConflict(outcome.row(), outcome.name(), outcome.speciesId(), ReviewedValue.of(value.value()),
            value.existing().stream().map(ReviewedValue::of).toList()));
      }
    }
    for (RowReading.Note note : outcome.notes()) {
      notes.add(new ReviewedCell(outcome.row(), outcome.name(), note.column(), note.header(), note.text(), "", List.of()));
    }
    (outcome.fate() == RowFate.KNOWN ? known : fresh).add(row(outcome));
  }

  private static ReviewedRow row(RowOutcome outcome) {
    List<ReviewedValue> added = outcome.values().stream().filter(v -> v.fate() != ValueOutcome.Fate.SAME)
        .map(v -> ReviewedValue.of(v.value())).toList();
    return new ReviewedRow(outcome.row(), outcome.name(), outcome.reading().writtenName(), outcome.speciesId(), outcome.fate().key(),
        outcome.namesChange(), added, outcome.values().size() - added.size());
  }

  /** The review is whole. */
  public KeptReview finish(ImportCounts counts) {
    try {
      close();
      new ReviewSummary(counts, tallies.list()).write(directory);
      return KeptReview.open(directory).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be finished", e);
    }
  }

  @Override
  public void close() throws IOException {
    near.close();
    unread.close();
    conflicts.close();
    fresh.close();
    known.close();
    notes.close();
  }
}
