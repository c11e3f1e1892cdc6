package guildwood.importing.web;

import guildwood.importing.ImportDraft;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.Table;
import guildwood.importing.web.ImportJobs.Job;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bringing a draft into the library: one step, whole or not at all, off the request thread. */
final class BringPages implements Routes {
  private final Pages pages;
  private final ImportDesk desk;

  BringPages(Pages pages, ImportDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/import/{id}/bring", desk.unlessBrought(this::start), Access.OWNER);
    routes.get("/import/{id}/bring", this::watch, Access.OWNER);
    routes.post("/import/{id}/bring/stop", this::stop, Access.OWNER);
  }

  private void start(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    // Nobody brings in what was not looked through.
    long rows = desk.review(draft).orElseThrow(NotFoundResponse::new).counts().rows();
    Optional<Job> job = desk.jobs().start(Kind.BRING, draft.id(), draft.fileName(), rows, progress -> bring(draft, progress));
    if (job.isEmpty()) {
      pages.goOn(ctx, "/import/" + draft.id() + "/review", Finding.of("done.import-busy", ""));
    } else {
      ctx.redirect(path(draft.id()), HttpStatus.SEE_OTHER);
    }
  }

  private Checked<Long> bring(ImportDraft draft, ImportProgress progress) {
    Checked<Table> table = desk.table(draft);
    if (table.isRefused()) {
      return Checked.refused(table.findings());
    }
    ImportPlan plan = new ImportPlan(draft.mapping().orElseThrow(), draft.source().orElseThrow(), draft.decisions());
    Checked<ImportRun> run = desk.imports().bring(table.orThrow(), plan, title(draft), desk.clock().instant(), progress);
    run.value().ifPresent(brought -> desk.remove(draft));
    return run.map(ImportRun::id);
  }

  private static String title(ImportDraft draft) {
    String whole = draft.fileName().equals(draft.sheet()) ? draft.fileName() : draft.fileName() + ", " + draft.sheet();
    return whole.length() > ImportRun.LONGEST_TITLE ? whole.substring(0, ImportRun.LONGEST_TITLE) : whole;
  }

  private static String path(long id) {
    return "/import/" + id + "/bring";
  }

  private void watch(Context ctx) {
    long id = Address.id(ctx);
    Optional<Job> found = desk.jobs().of(Kind.BRING, id);
    if (found.isEmpty()) {
      // The draft is still there where nothing came of it.
      ctx.redirect("/import/" + desk.draft(ctx).id(), HttpStatus.SEE_OTHER);
      return;
    }
    Job job = found.get();
    if (!job.isDone()) {
      // Not by the draft: that goes with the last row.
      new ProgressView(pages, path(id), "bring").show(ctx, job);
    } else if (Pages.wantsFragment(ctx)) {
      ctx.header("HX-Refresh", "true");
    } else if (job.result().isPresent()) {
      ctx.redirect("/imports/" + job.result().get(), HttpStatus.SEE_OTHER);
    } else {
      explain(ctx, job);
    }
  }

  private void explain(Context ctx, Job job) {
    ImportDraft draft = desk.draft(ctx);
    List<String> problems = job.findings().stream().map(pages.messages()::say).toList();
    pages.refuse(ctx, "importing/not-brought", Map.of("draft", draft, "problems", problems, "failed", job.isFailed()));
  }

  private void stop(Context ctx) {
    long id = Address.id(ctx);
    desk.jobs().of(Kind.BRING, id).ifPresent(Job::cancel);
    ctx.redirect(path(id), HttpStatus.SEE_OTHER);
  }
}
