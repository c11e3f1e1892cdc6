package guildwood.importing.web;

import guildwood.importing.ColumnMapping;
import guildwood.importing.Decisions;
import guildwood.importing.ImportDraft;
import guildwood.importing.Mapping;
import guildwood.importing.NameDecision;
import guildwood.importing.RowReader;
import guildwood.importing.RowReading;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.importing.Unread;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a person decides while looking a draft through: which species is meant, what stands in a cell, what stays out. */
final class DecisionPages implements Routes {
  private static final String CHOICE = "choice-";
  private static final int LONGEST_NAME = 300;
  private static final int LONGEST_CELL = 2_000;

  private final Pages pages;
  private final ImportDesk desk;
  private final ReviewPages review;

  DecisionPages(Pages pages, ImportDesk desk, ReviewPages review) {
    this.pages = pages;
    this.desk = desk;
    this.review = review;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/import/{id}/names", desk.unlessBrought(this::names), Access.OWNER);
    routes.post("/import/{id}/cells", desk.unlessBrought(this::cell), Access.OWNER);
    routes.post("/import/{id}/rows", desk.unlessBrought(this::row), Access.OWNER);
    routes.post("/import/{id}/rule", desk.unlessBrought(this::rule), Access.OWNER);
  }

  /** Which species near names mean: a choice for each name of the page; one without a choice stays undecided. */
  private void names(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Form form = Form.read(ctx, pages.messages());
    Decisions decisions = draft.decisions();
    for (String position : form.names(CHOICE)) {
      String written = form.value("written-" + position);
      Optional<NameDecision> decision = decision(form.value(CHOICE + position));
      if (written.isBlank() || written.length() > LONGEST_NAME || decision.isEmpty()) {
        pages.goOn(ctx, back(ctx, draft, "near"), Finding.of("done.import-not-decided", ""));
        return;
      }
      decisions = decisions.with(written, decision.get());
    }
    keep(ctx, draft, decisions, "near");
  }

  private Optional<NameDecision> decision(String choice) {
    return switch (choice) {
      case "new" -> Optional.of(NameDecision.NEW);
      case "leave-out" -> Optional.of(NameDecision.LEAVE_OUT);
      default -> desk.library().find(choice).map(species -> NameDecision.sameAs(species.id()));
    };
  }

  /** What stands in a cell instead; it must be readable, or empty. */
  private void cell(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Mapping mapping = draft.mapping().orElseThrow(NotFoundResponse::new);
    Form form = Form.read(ctx, pages.messages());
    long row = number(form, "row");
    ColumnMapping column = mapping.column((int) number(form, "column")).orElseThrow(NotFoundResponse::new);
    if (row <= mapping.heading().lastRow()) {
      throw new NotFoundResponse();
    }
    String text = form.optionalText("text", LONGEST_CELL);
    Optional<String> problem = form.isRefused() ? Optional.of(form.messageOf("text")) : problem(mapping, column, row, text);
    if (problem.isPresent()) {
      review.refuse(ctx, draft, new ReviewPages.Refused(row, column.column(), form.value("text"), problem.get()));
      return;
    }
    keep(ctx, draft, draft.decisions().with(new Decisions.Place(row, column.column()), text), "unread");
  }

  private static long number(Form form, String field) {
    if (!form.value(field).matches("\\d{1,9}")) {
      throw new NotFoundResponse();
    }
    return Long.parseLong(form.value(field));
  }

  /** Why the cell, alone in its row, cannot be read; empty where it can. */
  private Optional<String> problem(Mapping mapping, ColumnMapping column, long row, String text) {
    List<TableCell> cells = new ArrayList<>(Collections.nCopies(column.column() + 1, TableCell.EMPTY));
    cells.set(column.column(), TableCell.text(text));
    RowReading read = new RowReader(mapping).read(new TableRow(row, cells));
    return read.unreadOf(column.column()).stream().findFirst().map(Unread::reason).map(pages.messages()::say);
  }

  private void row(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Form form = Form.read(ctx, pages.messages());
    long row = number(form, "row");
    Decisions before = draft.decisions();
    Set<Long> leftOut = new HashSet<>(before.leftOut());
    if (form.ticked("keep")) {
      leftOut.remove(row);
    } else {
      leftOut.add(row);
    }
    keep(ctx, draft, new Decisions(before.names(), before.cells(), leftOut, before.importRules()), "unread");
  }

  private void rule(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    String rules = Form.read(ctx, pages.messages()).value("rules");
    if (!rules.matches("library|import")) {
      throw new NotFoundResponse();
    }
    keep(ctx, draft, draft.decisions().withImportRules(rules.equals("import")), "conflicts");
  }

  private void keep(Context ctx, ImportDraft draft, Decisions decisions, String section) {
    desk.decide(draft.with(decisions));
    pages.goOn(ctx, back(ctx, draft, section), Finding.of("done.import-decided", ""));
  }

  /** The page of the section the form stood on. */
  private static String back(Context ctx, ImportDraft draft, String section) {
    String page = ctx.queryParam("page");
    return "/import/" + draft.id() + "/review?section=" + section + (page != null && page.matches("[1-9]\\d{0,8}") ? "&page=" + page : "");
  }
}
