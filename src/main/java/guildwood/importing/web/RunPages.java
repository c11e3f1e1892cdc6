package guildwood.importing.web;

import guildwood.importing.ImportRun;
import guildwood.importing.UndoReport;
import guildwood.importing.web.ImportJobs.Job;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an import has brought, and taking it out again. */
final class RunPages implements Routes {
  private static final int KEPT_SHOWN = 200;

  private final Pages pages;
  private final ImportDesk desk;

  RunPages(Pages pages, ImportDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/imports/{id}", this::show, Access.OWNER);
    routes.get("/imports/{id}/undo", this::ask, Access.OWNER);
    routes.post("/imports/{id}/undo", this::undo, Access.OWNER);
  }

  /** Something that stays although the import is undone. */
  record KeptLine(String speciesId, String name, String reason, String detail) {}

  private ImportRun run(Context ctx) {
    return desk.imports().find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void show(Context ctx) {
    ImportRun run = run(ctx);
    Map<String, Object> model = new HashMap<>();
    model.put("run", run);
    model.put("counts", CountLine.of(run.counts()));
    model.put("when", ImportPages.when(run.broughtAt()));
    model.put("undone", run.undoneAt().map(ImportPages::when).orElse(""));
    pages.show(ctx, "importing/run", model);
  }

  private void ask(Context ctx) {
    ImportRun run = run(ctx);
    Optional<Job> job = desk.jobs().of(Kind.UNDO, run.id());
    if (job.isPresent() && !job.get().isDone()) {
      new ProgressView(pages, "/imports/" + run.id() + "/undo", "undo").show(ctx, job.get());
    } else if (Pages.wantsFragment(ctx)) {
      ctx.header("HX-Refresh", "true");
    } else if (run.undoneAt().isPresent()) {
      ctx.redirect("/imports/" + run.id(), HttpStatus.SEE_OTHER);
    } else {
      UndoReport report = desk.imports().wouldUndo(run.id());
      List<KeptLine> kept = report.kept().stream().limit(KEPT_SHOWN).map(this::line).toList();
      pages.show(ctx, "importing/undo", Map.of("run", run, "when", ImportPages.when(run.broughtAt()), "goes", CountLine.of(report), "kept", kept,
          "more", report.kept().size() - kept.size(), "failed", job.filter(Job::isFailed).isPresent()));
    }
  }

  private KeptLine line(UndoReport.Kept kept) {
    String name = desk.library().find(kept.speciesId()).map(Species::name).orElse(kept.speciesId());
    return new KeptLine(kept.speciesId(), name, kept.reason(), kept.detail());
  }

  private void undo(Context ctx) {
    ImportRun run = run(ctx);
    if (run.undoneAt().isPresent()) {
      ctx.redirect("/imports/" + run.id(), HttpStatus.SEE_OTHER);
      return;
    }
    Optional<Job> job = desk.jobs().start(Kind.UNDO, run.id(), run.title(), 0,
        progress -> desk.imports().undo(run.id(), desk.clock().instant()).map(report -> run.id()));
    if (job.isEmpty()) {
      pages.goOn(ctx, "/imports/" + run.id(), Finding.of("done.import-busy", ""));
    } else {
      ctx.redirect("/imports/" + run.id() + "/undo", HttpStatus.SEE_OTHER);
    }
  }
}
