package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.Near;
import guildwood.bed.NearPlants;
import guildwood.kernel.Finding;
import guildwood.site.web.LengthFields;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import java.util.function.Supplier;

/** Recording on a bed's page what grows near it, so that partners outside the bed are known. */
public final class NearPlantPages implements Routes {
  private final Pages pages;
  private final BedPages bedPages;
  private final NearPlants nearPlants;
  private final Supplier<SpeciesLibrary> library;

  public NearPlantPages(Pages pages, BedPages bedPages, NearPlants nearPlants, Supplier<SpeciesLibrary> library) {
    this.pages = pages;
    this.bedPages = bedPages;
    this.nearPlants = nearPlants;
    this.library = library;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/beds/{id}/near", this::add, Access.OWNER);
    // A refused form is shown under this address; whoever loads it anew gets the bed.
    routes.get("/beds/{id}/near", ctx -> ctx.redirect("/beds/" + Address.id(ctx), HttpStatus.SEE_OTHER), Access.OWNER);
    routes.post("/beds/{id}/near/remove", this::remove, Access.OWNER);
  }

  private void add(Context ctx) {
    Bed bed = bedPages.bed(ctx);
    Form form = Form.read(ctx, pages.messages());
    SpeciesPick pick = SpeciesPick.read(form, "near-species", "near-pick", library.get());
    Optional<Double> distanceM = LengthFields.of(form).required("near-distance", Near.DISTANCE_M);
    if (form.isRefused()) {
      bedPages.refuseNear(ctx, bed, form, pick.suggested());
      return;
    }
    Species species = pick.species().orElseThrow();
    if (!nearPlants.keep(bed.id(), new Near(species.id(), distanceM.orElseThrow()))) {
      throw new NotFoundResponse();
    }
    Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
    pages.goOn(ctx, "/beds/" + bed.id(), Finding.of("done.near-added", "", species.name(), units.length(distanceM.orElseThrow())));
  }

  private void remove(Context ctx) {
    Bed bed = bedPages.bed(ctx);
    String id = Optional.ofNullable(ctx.formParam("species")).orElse("");
    if (!nearPlants.remove(bed.id(), id)) {
      throw new NotFoundResponse();
    }
    String name = library.get().find(id).map(Species::name).orElse(id);
    pages.goOn(ctx, "/beds/" + bed.id(), Finding.of("done.near-removed", "", name));
  }
}
