package guildwood.importing.web;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ImportDraft;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.exchange.KeptReview;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.web.SourceForm;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is in which column: proposed from the headers and the cells, shown on real cells, put right by hand. */
final class ColumnPages implements Routes {
  private static final int COLUMNS_A_PAGE = 30;

  private final Pages pages;
  private final ImportDesk desk;
  private final Reviewing reviewing;

  ColumnPages(Pages pages, ImportDesk desk) {
    this.pages = pages;
    this.desk = desk;
    this.reviewing = new Reviewing(desk);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/columns", desk.unlessBrought(this::ask), Access.OWNER);
    routes.post("/import/{id}/columns", desk.unlessBrought(this::take), Access.OWNER);
  }

  private void ask(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    if (draft.mapping().isEmpty()) {
      ctx.redirect("/import/" + draft.id() + "/sheet", HttpStatus.SEE_OTHER);
      return;
    }
    show(ctx, draft, Form.blank(sourceOf(draft), pages.messages()), Form.blank(Map.of(), pages.messages()));
  }

  /** Shows the columns again with what is wrong with a mapping that was to be kept or used. */
  void refuseMapping(Context ctx, ImportDraft draft, Form mappingForm) {
    show(ctx, draft, Form.blank(sourceOf(draft), pages.messages()), mappingForm);
  }

  private static Map<String, String> sourceOf(ImportDraft draft) {
    String title = draft.fileName().replaceFirst("\\.[A-Za-z]{2,5}$", "");
    return draft.source().map(s -> Map.of("source_kind", s.kind().key(), "source_title", s.title(), "source_author", s.author(),
            "source_year", s.year().isPresent() ? Integer.toString(s.year().getAsInt()) : ""))
        .orElse(Map.of("source_title", title));
  }

  private void take(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Form form = Form.read(ctx, pages.messages());
    Mapping before = draft.mapping().orElseThrow(NotFoundResponse::new);
    Mapping after = new ColumnForm(form).over(before);
    ImportDraft changed = draft.with(after);
    if (form.isRefused()) {
      show(ctx, draft, form, Form.blank(Map.of(), pages.messages()));
      return;
    }
    if (!after.equals(before)) {
      desk.changeMapping(changed);
    }
    if (Pages.wantsFragment(ctx)) {
      show(ctx, changed, form, Form.blank(Map.of(), pages.messages()));
    } else if (form.value("then").equals("look")) {
      look(ctx, changed, form);
    } else {
      String page = form.value("then").matches("[1-9]\\d{0,8}") ? form.value("then") : Integer.toString(paging(ctx, changed).page());
      ctx.redirect("/import/" + draft.id() + "/columns?page=" + page, HttpStatus.SEE_OTHER);
    }
  }

  private static Paging paging(Context ctx, ImportDraft draft) {
    return Paging.of(ctx, draft.mapping().orElseThrow().columns().size(), COLUMNS_A_PAGE, "/import/" + draft.id() + "/columns");
  }

  /** Everything is said: the draft is looked through. */
  private void look(Context ctx, ImportDraft draft, Form form) {
    Optional<ImportSource> source = SourceForm.read(form, Optional.of("import"), desk.library())
        .map(s -> new ImportSource(s.kind(), s.title(), s.author(), s.year()));
    draft.mapping().orElseThrow().findings().forEach(form::refuse);
    if (form.isRefused()) {
      show(ctx, draft, form, Form.blank(Map.of(), pages.messages()));
      return;
    }
    ImportDraft settled = draft.with(source.orElseThrow());
    if (!settled.equals(draft)) {
      desk.drafts().change(settled);
    }
    reviewing.start(settled).ifPresentOrElse(
        busy -> pages.goOn(ctx, "/import/" + draft.id() + "/columns", busy),
        () -> ctx.redirect("/import/" + draft.id() + "/review", HttpStatus.SEE_OTHER));
  }

  private void show(Context ctx, ImportDraft draft, Form form, Form mappingForm) {
    Mapping mapping = draft.mapping().orElseThrow();
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("draft", draft);
    model.put("kinds", SourceForm.kinds());
    model.put("mappings", desk.drafts().mappingNames());
    model.put("mappingForm", mappingForm);
    model.put("reviewed", desk.review(draft).map(KeptReview::counts).isPresent());
    Checked<Sample> sample = desk.sample(draft, draft.sheet());
    sample.findings().forEach(form::refuse);
    Paging paging = paging(ctx, draft);
    model.put("paging", paging);
    model.put("findings", mapping.findings().stream().filter(f -> f.field().isEmpty()).map(pages.messages()::say).toList());
    model.put("unitsMissing", mapping.columns().stream().filter(ColumnMapping::asksForUnit).map(ColumnMapping::header).toList());
    model.put("groups", List.of());
    model.put("columns", List.of());
    sample.value().ifPresent(s -> fill(ctx, model, mapping, s, paging));
    if ((form.isRefused() || mappingForm.isRefused()) && !Pages.wantsFragment(ctx)) {
      pages.refuse(ctx, "importing/columns", model);
    } else {
      pages.show(ctx, Pages.wantsFragment(ctx) ? "importing/columns :: columns" : "importing/columns", model);
    }
  }

  private void fill(Context ctx, Map<String, Object> model, Mapping mapping, Sample sample, Paging paging) {
    ValueWords words = new ValueWords(pages.messages(), Units.of(ctx));
    ColumnViews views = new ColumnViews(pages.messages(), words, mapping, desk.suggestion(sample, mapping.heading()).columns(), sample);
    model.put("groups", views.topics().groups());
    model.put("columns", mapping.columns().stream().skip(paging.before()).limit(COLUMNS_A_PAGE).map(views::view).toList());
  }
}
