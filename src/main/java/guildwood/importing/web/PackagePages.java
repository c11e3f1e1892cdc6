package guildwood.importing.web;

import guildwood.importing.BroughtLibrary;
import guildwood.importing.ImportDraft;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.LibraryMerge;
import guildwood.species.SpeciesRecords;
import guildwood.species.exchange.DataPackageReader;
import guildwood.species.exchange.LibraryPackage;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A data package: there is nothing to map, only to see what it would bring, and to bring it. */
final class PackagePages implements Routes {
  private static final int SHOWN = 50;

  private final Pages pages;
  private final ImportDesk desk;
  private final SpeciesRecords records;

  PackagePages(Pages pages, ImportDesk desk, SpeciesRecords records) {
    this.pages = pages;
    this.desk = desk;
    this.records = records;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/package", this::show, Access.OWNER);
    routes.post("/import/{id}/package", this::bring, Access.OWNER);
  }

  private void show(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Checked<LibraryPackage> read = DataPackageReader.read(desk.file(draft));
    Map<String, Object> model = new HashMap<>();
    model.put("draft", draft);
    model.put("problems", lines(read.findings()));
    model.put("remarks", read.value().map(p -> lines(p.remarks())).orElse(List.of()));
    model.put("counts", List.of());
    model.put("inBin", List.of());
    read.value().ifPresent(p -> {
      LibraryMerge merge = records.wouldAdd(p.contents());
      model.put("counts", CountLine.of(BroughtLibrary.counts(merge)));
      model.put("inBin", merge.inBin());
    });
    if (read.isRefused()) {
      pages.refuse(ctx, "importing/package", model);
    } else {
      pages.show(ctx, "importing/package", model);
    }
  }

  /** Each with its place, so far as the eye can take them in. */
  private List<String> lines(List<Finding> findings) {
    Stream<String> shown = findings.stream().limit(SHOWN)
        .map(f -> f.field().isEmpty() ? pages.messages().say(f) : pages.messages().say("import.package.at", f.field(), pages.messages().say(f)));
    Stream<String> more = findings.size() <= SHOWN ? Stream.of()
        : Stream.of(pages.messages().say("import.package.more", findings.size() - SHOWN));
    return Stream.concat(shown, more).toList();
  }

  private void bring(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    Checked<LibraryPackage> read = DataPackageReader.read(desk.file(draft));
    if (read.isRefused()) {
      show(ctx);
      return;
    }
    BroughtLibrary brought = desk.imports().bring(read.orThrow().contents(), draft.fileName(), desk.clock().instant());
    desk.remove(draft);
    pages.goOn(ctx, "/imports/" + brought.run().id(), Finding.of("done.package-brought", ""));
  }
}
