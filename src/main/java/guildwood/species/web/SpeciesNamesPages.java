package guildwood.species.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesNames;
import guildwood.species.SpeciesRecords;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A new species, and other names for one that is there. */
public final class SpeciesNamesPages implements Routes {
  private final Pages pages;
  private final SpeciesRecords records;
  private final Shelf shelf;

  public SpeciesNamesPages(Pages pages, SpeciesRecords records) {
    this.pages = pages;
    this.records = records;
    this.shelf = new Shelf(records);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/library/new", ctx -> pages.show(ctx, "species/new", Map.of("form", Form.blank(Map.of(), pages.messages()))),
        Access.OWNER);
    routes.post("/library/new", this::add, Access.OWNER);
    routes.get("/library/{id}/names", this::ask, Access.OWNER);
    routes.post("/library/{id}/names", this::rename, Access.OWNER);
  }

  private void add(Context ctx) {
    Form form = Form.read(ctx, pages.messages());
    Optional<String> id = keep(form, records::add);
    if (id.isEmpty()) {
      pages.refuse(ctx, "species/new", Map.of("form", form));
      return;
    }
    pages.goOn(ctx, "/library/" + id.get(), Finding.of("done.species-added", "", shelf.library().find(id.get()).orElseThrow().name()));
  }

  private void ask(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    Map<String, String> typed = Map.of(
        "scientific_name", species.scientificName(), "common_names", String.join("; ", species.commonNames()),
        "family", species.family(), "synonyms", String.join("; ", species.synonyms()));
    pages.show(ctx, "species/names", Map.of("form", Form.blank(typed, pages.messages()), "species", species));
  }

  private void rename(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    Form form = Form.read(ctx, pages.messages());
    if (keep(form, names -> records.rename(species.id(), names)).isEmpty()) {
      pages.refuse(ctx, "species/names", Map.of("form", form, "species", species));
      return;
    }
    pages.goOn(ctx, "/library/" + species.id(), Finding.of("done.names-kept", ""));
  }

  private static Optional<String> keep(Form form, Function<SpeciesNames, Checked<String>> work) {
    Checked<SpeciesNames> names = SpeciesNames.read(
        form.value("scientific_name"), form.value("common_names"), form.value("family"), form.value("synonyms"));
    return form.take(names).flatMap(n -> form.take(work.apply(n)));
  }
}
