package guildwood.importing.web;

import guildwood.importing.ImportDraft;
import guildwood.importing.ImportDrafts;
import guildwood.importing.Mapping;
import guildwood.importing.exchange.MappingFile;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.SentFile;
import guildwood.web.Upload;
import guildwood.web.Uploads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Optional;

/** Mappings to use again: kept under a name, or as a file to hand on. */
final class MappingPages implements Routes {
  private static final long MOST_BYTES = 2_000_000;

  private final Pages pages;
  private final ImportDesk desk;
  private final Uploads uploads;
  private final ColumnPages columns;

  MappingPages(Pages pages, ImportDesk desk, Uploads uploads, ColumnPages columns) {
    this.pages = pages;
    this.desk = desk;
    this.uploads = uploads;
    this.columns = columns;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/mapping.json", this::send, Access.OWNER);
    uploads.post(routes, "/import/{id}/mapping", MOST_BYTES, desk.unlessBrought(this::takeFile), Access.OWNER);
    routes.post("/import/{id}/mapping/keep", desk.unlessBrought(this::keep), Access.OWNER);
    routes.post("/import/{id}/mapping/use", desk.unlessBrought(this::use), Access.OWNER);
    routes.post("/import/{id}/mapping/forget", desk.unlessBrought(this::forget), Access.OWNER);
  }

  private void send(Context ctx) {
    Mapping mapping = desk.draft(ctx).mapping().orElseThrow(NotFoundResponse::new);
    ctx.contentType("application/json; charset=utf-8");
    ctx.header("Content-Disposition", "attachment; filename=\"mapping.json\"");
    ctx.result(MappingFile.write(mapping));
  }

  private void takeFile(Context ctx) {
    ImportDraft draft = mapped(ctx);
    Form form = Form.read(ctx, pages.messages());
    Checked<SentFile> sent = Upload.of(ctx).file();
    Checked<Mapping> read = sent.isRefused() ? Checked.refused(sent.findings()) : MappingFile.read(bytes(sent.orThrow()));
    if (read.isRefused()) {
      read.findings().forEach(f -> form.refuse(new Finding(f.code(), "file", f.args())));
      columns.refuseMapping(ctx, draft, form);
      return;
    }
    put(ctx, draft, read.orThrow(), sent.orThrow().name());
  }

  private static byte[] bytes(SentFile sent) {
    try {
      return Files.readAllBytes(sent.path());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void keep(Context ctx) {
    ImportDraft draft = mapped(ctx);
    Form form = Form.read(ctx, pages.messages());
    String name = form.text("mapping-name", ImportDrafts.LONGEST_MAPPING_NAME);
    if (form.isRefused()) {
      columns.refuseMapping(ctx, draft, form);
      return;
    }
    desk.drafts().keepMapping(name, draft.mapping().orElseThrow());
    pages.goOn(ctx, path(draft), Finding.of("done.mapping-kept", "", name));
  }

  private void use(Context ctx) {
    ImportDraft draft = mapped(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Mapping> kept = desk.drafts().mapping(form.value("mapping"));
    if (kept.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "mapping", form.value("mapping")));
      columns.refuseMapping(ctx, draft, form);
      return;
    }
    put(ctx, draft, kept.get(), form.value("mapping"));
  }

  private void forget(Context ctx) {
    ImportDraft draft = mapped(ctx);
    String name = Form.read(ctx, pages.messages()).value("mapping");
    desk.drafts().removeMapping(name);
    pages.goOn(ctx, path(draft), Finding.of("done.mapping-forgotten", "", name));
  }

  private ImportDraft mapped(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    draft.mapping().orElseThrow(NotFoundResponse::new);
    return draft;
  }

  /** Columns are found by their headers; those the mapping does not know keep what they are taken for. */
  private void put(Context ctx, ImportDraft draft, Mapping mapping, String name) {
    desk.changeMapping(draft.with(mapping.onto(draft.mapping().orElseThrow())));
    pages.goOn(ctx, path(draft), Finding.of("done.mapping-used", "", name));
  }

  private static String path(ImportDraft draft) {
    return "/import/" + draft.id() + "/columns";
  }
}
