package guildwood.importing.web;

import guildwood.importing.ImportCounts;
import guildwood.importing.ImportDraft;
import guildwood.importing.exchange.KeptReview;
import guildwood.importing.exchange.ReviewSection;
import guildwood.importing.web.ImportJobs.Job;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Finding;
import guildwood.species.web.ValueWords;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Paging;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What bringing a draft in would do, section by section, page by page; nothing is changed yet. */
final class ReviewPages implements Routes {
  static final int ENTRIES_A_PAGE = 25;

  private final Pages pages;
  private final ImportDesk desk;
  private final Reviewing reviewing;

  ReviewPages(Pages pages, ImportDesk desk) {
    this.pages = pages;
    this.desk = desk;
    this.reviewing = new Reviewing(desk);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/review", desk.unlessBrought(this::show), Access.OWNER);
    routes.post("/import/{id}/review", desk.unlessBrought(this::start), Access.OWNER);
    routes.post("/import/{id}/review/stop", desk.unlessBrought(this::stop), Access.OWNER);
  }

  /** A section in the row of links. */
  record SectionLink(String key, String text, boolean shown) {}

  /** What was typed for a cell and cannot be read. */
  record Refused(long row, int column, String text, String reason) {
    static final Refused NONE = new Refused(0, 0, "", "");

    public boolean isAt(long otherRow, int otherColumn) {
      return row == otherRow && column == otherColumn;
    }
  }

  private void start(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    if (draft.mapping().isEmpty() || draft.source().isEmpty()) {
      throw new NotFoundResponse();
    }
    reviewing.start(draft).ifPresentOrElse(
        busy -> pages.goOn(ctx, "/import/" + draft.id() + "/review", busy),
        () -> ctx.redirect("/import/" + draft.id() + "/review", HttpStatus.SEE_OTHER));
  }

  private void stop(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    desk.jobs().of(Kind.REVIEW, draft.id()).ifPresent(Job::cancel);
    pages.goOn(ctx, "/import/" + draft.id() + "/columns", Finding.of("done.import-stopped", ""));
  }

  private void show(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Optional<Job> job = desk.jobs().of(Kind.REVIEW, draft.id());
    Optional<KeptReview> review = desk.review(draft);
    if (job.isPresent() && !job.get().isDone()) {
      new ProgressView(pages, "/import/" + draft.id() + "/review", "review").show(ctx, job.get());
    } else if (review.isPresent()) {
      show(ctx, draft, review.get(), Refused.NONE);
    } else {
      explain(ctx, draft, job);
    }
  }

  /** There is no review: it was stopped, could not be made, or was never begun. */
  private void explain(Context ctx, ImportDraft draft, Optional<Job> job) {
    if (Pages.wantsFragment(ctx)) {
      ctx.header("HX-Refresh", "true");
      return;
    }
    boolean failed = job.filter(Job::isFailed).isPresent();
    List<Finding> findings = job.map(Job::findings).orElse(List.of()).stream().filter(f -> !f.code().equals("import.stopped")).toList();
    if (!failed && findings.isEmpty()) {
      ctx.redirect("/import/" + draft.id() + "/columns", HttpStatus.SEE_OTHER);
      return;
    }
    Form form = Form.blank(Map.of(), pages.messages());
    findings.forEach(f -> form.refuse(new Finding(f.code(), "", f.args())));
    pages.refuse(ctx, "importing/unread-file", Map.of("draft", draft, "problems", form.wholeMessages(), "failed", failed));
  }

  /** Shows the section again with what was typed for a cell and why that cannot be read; nothing is found where there is no review. */
  void refuse(Context ctx, ImportDraft draft, Refused refused) {
    ctx.status(422);
    show(ctx, draft, desk.review(draft).orElseThrow(NotFoundResponse::new), refused);
  }

  private void show(Context ctx, ImportDraft draft, KeptReview review, Refused refused) {
    if (Pages.wantsFragment(ctx)) {
      // The page that watched the progress: now there is more to show.
      ctx.header("HX-Refresh", "true");
      return;
    }
    ReviewSection section = refused.equals(Refused.NONE) ? section(ctx, review) : ReviewSection.UNREAD;
    String address = "/import/" + draft.id() + "/review?section=" + section.key();
    Paging paging = Paging.of(ctx, review.size(section), ENTRIES_A_PAGE, address);
    Map<String, Object> model = new HashMap<>();
    model.put("draft", draft);
    model.put("counts", CountLine.of(review.counts()));
    model.put("outdated", review.isOutdated());
    model.put("importRules", draft.decisions().importRules());
    model.put("brings", brings(review.counts()));
    model.put("sections", Arrays.stream(ReviewSection.values()).map(s -> new SectionLink(s.key(), CountLine.number(review.size(s)), s == section)).toList());
    model.put("section", section.key());
    model.put("paging", paging);
    model.put("page", paging.page());
    model.put("refused", refused);
    ReviewViews views = new ReviewViews(pages.messages(), new ValueWords(pages.messages(), Units.of(ctx)), desk.library(), draft);
    model.putAll(views.entries(review, section, paging));
    pages.show(ctx, "importing/review", model);
  }

  private static boolean brings(ImportCounts counts) {
    return counts.newSpecies() + counts.valuesAdded() + counts.conflicts() + counts.namesChanged() + counts.notes() > 0;
  }

  /** The section that is asked for; otherwise the first one in which there is something to decide or to see. */
  private static ReviewSection section(Context ctx, KeptReview review) {
    String asked = ctx.queryParam("section");
    if (asked != null) {
      return ReviewSection.ofKey(asked).orElseThrow(NotFoundResponse::new);
    }
    return Arrays.stream(ReviewSection.values()).filter(s -> review.size(s) > 0).findFirst().orElse(ReviewSection.NEW);
  }
}
