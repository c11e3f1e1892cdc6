package guildwood.importing.web;

import guildwood.importing.Decisions;
import guildwood.importing.Heading;
import guildwood.importing.ImportDraft;
import guildwood.importing.ImportDrafts;
import guildwood.importing.Imports;
import guildwood.importing.MappingSuggestion;
import guildwood.importing.Table;
import guildwood.importing.exchange.KeptReview;
import guildwood.importing.exchange.TableFiles;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.DataPackageReader;
import guildwood.web.Address;
import guildwood.web.SentFile;
import guildwood.web.Tokens;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What the pages of the import share: what is kept of each draft, its file, its review, and the work under way. */
public final class ImportDesk {
  /** So many drafts with their files are kept; then one must go before the next comes. */
  static final int MOST_DRAFTS = 20;
  private static final String REVIEW_ENDING = ".review";

  private final ImportDrafts drafts;
  private final Imports imports;
  private final ImportJobs jobs;
  private final Supplier<SpeciesLibrary> library;
  private final Path directory;
  private final Clock clock;
  private Optional<Sample> latest = Optional.empty();

  /** @param directory where the files of drafts lie; those of no draft are removed */
  public ImportDesk(ImportDrafts drafts, Imports imports, ImportJobs jobs, Supplier<SpeciesLibrary> library, Path directory, Clock clock) {
    this.drafts = drafts;
    this.imports = imports;
    this.jobs = jobs;
    this.library = library;
    this.directory = directory;
    this.clock = clock;
    removeStrays();
  }

  ImportDrafts drafts() {
    return drafts;
  }

  Imports imports() {
    return imports;
  }

  ImportJobs jobs() {
    return jobs;
  }

  SpeciesLibrary library() {
    return library.get();
  }

  Clock clock() {
    return clock;
  }

  /** The draft that the address names; nothing is found where it is none, or where its file is lost. */
  ImportDraft draft(Context ctx) {
    return drafts.find(Address.id(ctx)).filter(draft -> Files.exists(file(draft))).orElseThrow(NotFoundResponse::new);
  }

  /** A page of a draft; while the draft is being brought in, its progress is shown instead. */
  Handler unlessBrought(Handler handler) {
    return ctx -> {
      if (jobs.isRunning(Kind.BRING, Address.id(ctx))) {
        ctx.redirect("/import/" + Address.id(ctx) + "/bring", HttpStatus.SEE_OTHER);
      } else {
        handler.handle(ctx);
      }
    };
  }

  /** Keeps a file that was sent as a new draft; refused where it is neither a table nor a data package. */
  Checked<ImportDraft> begin(SentFile sent) {
    if (drafts.all().size() >= MOST_DRAFTS) {
      return Checked.refused(Finding.of("import.too-many-drafts", "file", MOST_DRAFTS));
    }
    Checked<List<Table>> tables = TableFiles.open(sent.path(), sent.name());
    if (tables.isRefused() && !DataPackageReader.isPackage(sent.path())) {
      return Checked.refused(tables.findings().stream().map(f -> new Finding(f.code(), "file", f.args())).toList());
    }
    ImportDraft draft = new ImportDraft(0, sent.name(), Tokens.fresh() + ".table", "", clock.instant(), Optional.empty(), Optional.empty(),
        Decisions.NONE);
    sent.moveTo(file(draft));
    long id = drafts.add(draft);
    return Checked.of(drafts.find(id).orElseThrow());
  }

  /** Removes a draft with all that belongs to it. */
  void remove(ImportDraft draft) {
    jobs.of(Kind.REVIEW, draft.id()).ifPresent(ImportJobs.Job::cancel);
    drafts.remove(draft.id());
    removeStrays();
  }

  /** The sheets of its file. */
  Checked<List<Table>> tables(ImportDraft draft) {
    return TableFiles.open(file(draft), draft.fileName());
  }

  /** The sheet that was chosen. */
  Checked<Table> table(ImportDraft draft) {
    Checked<List<Table>> tables = tables(draft);
    if (tables.isRefused()) {
      return Checked.refused(tables.findings());
    }
    return tables.orThrow().stream().filter(t -> t.name().equals(draft.sheet())).findFirst().map(Checked::of)
        .orElseGet(() -> Checked.refused(Finding.of("import.sheet-gone", "", draft.sheet())));
  }

  /** The beginning of a sheet. Only the one asked for last is held, whoever asks. */
  synchronized Checked<Sample> sample(ImportDraft draft, String sheet) {
    Optional<Sample> held = latest.filter(s -> s.isOf(draft, sheet));
    if (held.isPresent()) {
      return Checked.of(held.get());
    }
    Checked<Sample> read = table(draft.onSheet(sheet)).value().map(t -> Sample.read(draft, t))
        .orElseGet(() -> Checked.refused(Finding.of("import.sheet-gone", "", sheet)));
    latest = read.value();
    return read;
  }

  /** What the columns of a sheet probably mean. */
  MappingSuggestion suggestion(Sample sample, Heading heading) {
    return sample.suggestion(heading, library());
  }

  /** What looking it through has found, as long as nothing was mapped otherwise since. */
  Optional<KeptReview> review(ImportDraft draft) {
    return jobs.isRunning(Kind.REVIEW, draft.id()) ? Optional.empty() : KeptReview.open(reviewDirectory(draft));
  }

  Path reviewDirectory(ImportDraft draft) {
    return directory.resolve(draft.storedAs() + REVIEW_ENDING);
  }

  /** Keeps a draft that is mapped otherwise now: what was found before does not hold any more. */
  void changeMapping(ImportDraft draft) {
    jobs.of(Kind.REVIEW, draft.id()).ifPresent(ImportJobs.Job::cancel);
    drafts.change(draft);
    if (!jobs.isRunning(Kind.REVIEW, draft.id())) {
      KeptReview.remove(reviewDirectory(draft));
    }
  }

  /** Keeps what was decided; what was found before holds but for that. */
  void decide(ImportDraft draft) {
    jobs.of(Kind.REVIEW, draft.id()).ifPresent(ImportJobs.Job::cancel);
    drafts.change(draft);
    review(draft).ifPresent(KeptReview::outdate);
  }

  Path file(ImportDraft draft) {
    return directory.resolve(draft.storedAs());
  }

  private void removeStrays() {
    Set<String> used = new HashSet<>();
    for (ImportDraft draft : drafts.all()) {
      used.add(draft.storedAs());
      used.add(draft.storedAs() + REVIEW_ENDING);
    }
    try {
      Files.createDirectories(directory);
      try (DirectoryStream<Path> all = Files.newDirectoryStream(directory)) {
        for (Path path : all) {
          if (!used.contains(path.getFileName().toString())) {
            KeptReview.remove(path);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the directory " + directory + " cannot be used", e);
    }
  }
}
