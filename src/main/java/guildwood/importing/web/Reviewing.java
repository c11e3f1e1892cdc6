package guildwood.importing.web;

import guildwood.importing.ImportCounts;
import guildwood.importing.ImportDraft;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.Review;
import guildwood.importing.Table;
import guildwood.importing.exchange.KeptReview;
import guildwood.importing.exchange.ReviewWriter;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;

/** Looks a draft through: reckons what bringing it in would do, and keeps that on the disk. */
final class Reviewing {
  private final ImportDesk desk;

  Reviewing(ImportDesk desk) {
    this.desk = desk;
  }

  /** Starts, or says why it cannot: other work is under way. */
  Optional<Finding> start(ImportDraft draft) {
    return desk.jobs().start(Kind.REVIEW, draft.id(), draft.fileName(), 0, progress -> look(draft, progress)).isPresent()
        ? Optional.empty() : Optional.of(Finding.of("done.import-busy", ""));
  }

  private Checked<Long> look(ImportDraft draft, ImportProgress progress) {
    Checked<Table> table = desk.table(draft);
    if (table.isRefused()) {
      return Checked.refused(table.findings());
    }
    ImportPlan plan = new ImportPlan(draft.mapping().orElseThrow(), draft.source().orElseThrow(), draft.decisions());
    Path directory = desk.reviewDirectory(draft);
    Checked<ImportCounts> counts;
    try (ReviewWriter writer = KeptReview.begin(directory)) {
      counts = new Review(plan, desk.library()).run(table.orThrow(), outcome -> {
        writer.take(outcome);
        return true;
      }, progress);
      counts.value().ifPresent(writer::finish);
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be written", e);
    }
    if (counts.isRefused()) {
      KeptReview.remove(directory);
    }
    return counts.map(c -> draft.id());
  }
}
