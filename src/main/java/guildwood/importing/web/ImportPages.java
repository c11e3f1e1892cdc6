package guildwood.importing.web;

import guildwood.importing.ImportDraft;
import guildwood.importing.ImportRun;
import guildwood.importing.exchange.TableFiles;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.exchange.DataPackageReader;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.SentFile;
import guildwood.web.Upload;
import guildwood.web.Uploads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Where imports begin: bringing a file, going on with a draft, and what was brought before. */
final class ImportPages implements Routes {
  private static final int RUNS_SHOWN = 100;

  private final Pages pages;
  private final ImportDesk desk;
  private final Uploads uploads;

  ImportPages(Pages pages, ImportDesk desk, Uploads uploads) {
    this.pages = pages;
    this.desk = desk;
    this.uploads = uploads;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import", ctx -> show(ctx, Form.blank(Map.of(), pages.messages())), Access.OWNER);
    uploads.post(routes, "/import", TableFiles.MOST_BYTES, this::take, Access.OWNER);
    routes.get("/import/{id}", this::goOn, Access.OWNER);
    routes.post("/import/{id}/remove", desk.unlessBrought(this::remove), Access.OWNER);
  }

  /** A draft in the list. */
  record DraftLine(long id, String fileName, String sheet, String begun) {}

  /** An import in the list. */
  record RunLine(long id, String title, String when, String species, String values, boolean undone) {}

  private void show(Context ctx, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("mostMegabytes", TableFiles.MOST_BYTES >> 20);
    model.put("drafts", desk.drafts().all().stream().map(d -> new DraftLine(d.id(), d.fileName(), d.sheet(), when(d.startedAt()))).toList());
    List<ImportRun> runs = desk.imports().runs();
    model.put("runs", runs.stream().limit(RUNS_SHOWN).map(ImportPages::line).toList());
    if (form.isRefused()) {
      pages.refuse(ctx, "importing/start", model);
    } else {
      pages.show(ctx, "importing/start", model);
    }
  }

  private static RunLine line(ImportRun run) {
    return new RunLine(run.id(), run.title(), when(run.broughtAt()), CountLine.number(run.counts().newSpecies()),
        CountLine.number(run.counts().valuesAdded()),
        run.undoneAt().isPresent());
  }

  /** A moment as the owner's clock shows it. */
  static String when(Instant moment) {
    return DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH).withZone(ZoneId.systemDefault()).format(moment);
  }

  private void take(Context ctx) {
    Form form = Form.read(ctx, pages.messages());
    Checked<SentFile> sent = Upload.of(ctx).file();
    Checked<ImportDraft> begun = sent.isRefused() ? Checked.refused(sent.findings()) : desk.begin(sent.orThrow());
    form.take(begun).ifPresentOrElse(draft -> ctx.redirect("/import/" + draft.id(), HttpStatus.SEE_OTHER), () -> show(ctx, form));
  }

  /** Leads to where the draft stands. */
  private void goOn(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    if (DataPackageReader.isPackage(desk.file(draft))) {
      ctx.redirect("/import/" + draft.id() + "/package", HttpStatus.SEE_OTHER);
      return;
    }
    String at = draft.mapping().isEmpty() ? "/sheet" : desk.review(draft).isEmpty() ? "/columns" : "/review";
    ctx.redirect("/import/" + draft.id() + at, HttpStatus.SEE_OTHER);
  }

  private void remove(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    desk.remove(draft);
    pages.goOn(ctx, "/import", Finding.of("done.import-draft-removed", "", draft.fileName()));
  }
}
