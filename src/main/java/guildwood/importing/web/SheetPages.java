package guildwood.importing.web;

import guildwood.importing.HeaderFinder;
import guildwood.importing.Heading;
import guildwood.importing.ImportDraft;
import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which sheet of the file, and which of its rows hold the headers. */
final class SheetPages implements Routes {
  private static final int ROWS_SHOWN = 15;
  private static final int COLUMNS_SHOWN = 12;
  private static final int LONGEST_TEXT = 40;
  private static final int LAST_ROW = 10_000;

  private final Pages pages;
  private final ImportDesk desk;

  SheetPages(Pages pages, ImportDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/sheet", desk.unlessBrought(this::ask), Access.OWNER);
    routes.post("/import/{id}/sheet", desk.unlessBrought(this::choose), Access.OWNER);
  }

  /** A row as it stands in the file. */
  record RowLine(long number, boolean heading, List<String> cells, int more) {}

  private void ask(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Checked<List<Table>> sheets = desk.tables(draft);
    String asked = ctx.queryParam("sheet");
    String sheet = asked != null ? asked : draft.sheet();
    Map<String, String> values = new HashMap<>();
    String chosen = sheets.value().map(all -> known(all, sheet)).orElse("");
    values.put("sheet", chosen);
    heading(draft, chosen).ifPresent(heading -> {
      values.put("first", Long.toString(heading.firstRow()));
      values.put("last", Long.toString(heading.lastRow()));
    });
    show(ctx, draft, sheets, Form.blank(values, pages.messages()));
  }

  private static String known(List<Table> sheets, String wanted) {
    return sheets.stream().map(Table::name).filter(wanted::equals).findFirst().orElse(sheets.get(0).name());
  }

  /** As it was chosen, or as it is found. */
  private Optional<Heading> heading(ImportDraft draft, String sheet) {
    return draft.sheet().equals(sheet) && draft.mapping().isPresent() ? draft.mapping().map(m -> m.heading())
        : desk.sample(draft, sheet).value().flatMap(sample -> HeaderFinder.find(sample).value());
  }

  private void show(Context ctx, ImportDraft draft, Checked<List<Table>> sheets, Form form) {
    sheets.findings().forEach(form::refuse);
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("draft", draft);
    model.put("sheets", sheets.value().map(all -> all.stream().map(Table::name).toList()).orElse(List.of()));
    Optional<Sample> sample = sheets.isRefused() ? Optional.empty() : form.take(desk.sample(draft, form.value("sheet")));
    model.put("rows", sample.map(s -> rows(s, form)).orElse(List.of()));
    if (form.isRefused()) {
      pages.refuse(ctx, "importing/sheet", model);
    } else {
      pages.show(ctx, "importing/sheet", model);
    }
  }

  private static List<RowLine> rows(Sample sample, Form form) {
    List<TableRow> rows = new ArrayList<>();
    sample.rows(row -> {
      rows.add(row);
      return rows.size() < ROWS_SHOWN;
    });
    int width = Math.min(COLUMNS_SHOWN, rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0));
    return rows.stream().map(row -> line(row, width, form)).toList();
  }

  private static RowLine line(TableRow row, int width, Form form) {
    List<String> cells = IntStream.range(0, width).mapToObj(row::cell).map(TableCell::text)
        .map(text -> text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "…" : text).toList();
    return new RowLine(row.number(), within(row.number(), form), cells, Math.max(0, row.cells().size() - width));
  }

  private static boolean within(long row, Form form) {
    return form.value("first").matches("\\d{1,9}") && form.value("last").matches("\\d{1,9}")
        && row >= Long.parseLong(form.value("first")) && row <= Long.parseLong(form.value("last"));
  }

  private void choose(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Form form = Form.read(ctx, pages.messages());
    Checked<List<Table>> sheets = desk.tables(draft);
    String sheet = form.value("sheet");
    if (sheets.isRefused() || sheets.orThrow().stream().noneMatch(t -> t.name().equals(sheet))) {
      Form first = Form.blank(Map.of("sheet", sheets.value().map(all -> all.get(0).name()).orElse("")), pages.messages());
      first.refuse(Finding.of("import.sheet-gone", "", sheet));
      show(ctx, draft, sheets, first);
      return;
    }
    boolean asFound = form.value("first").isBlank();
    int lowest = form.value("last").strip().equals("0") ? 0 : 1;
    int first = form.wholeNumber("first", lowest, LAST_ROW).orElse(0);
    int last = form.wholeNumber("last", lowest, LAST_ROW).orElse(first);
    Optional<Sample> sample = form.take(desk.sample(draft, sheet));
    Optional<Heading> heading = form.isRefused() || sample.isEmpty() ? Optional.empty()
        : form.take(asFound ? HeaderFinder.find(sample.get()) : HeaderFinder.at(sample.get(), first, Math.max(first, last)));
    if (heading.isEmpty()) {
      show(ctx, draft, sheets, form);
      return;
    }
    desk.changeMapping(draft.onSheet(sheet).with(desk.suggestion(sample.get(), heading.get()).mapping()));
    ctx.redirect("/import/" + draft.id() + "/columns", HttpStatus.SEE_OTHER);
  }
}
