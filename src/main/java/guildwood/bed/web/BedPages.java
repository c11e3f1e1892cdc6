package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.Bed.Standing;
import guildwood.bed.Beds;
import guildwood.bed.Near;
import guildwood.bed.NearPlants;
import guildwood.bed.SurveyReadings;
import guildwood.bed.survey.web.SurveyLine;
import guildwood.bed.survey.web.SurveyView;
import guildwood.bed.sun.Surroundings;
import guildwood.kernel.Finding;
import guildwood.site.PhClass;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.web.LengthFields;
import guildwood.species.ClassWords;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Supplier;

/** The page of one bed: what it offers, what stands there, where to go from here; and removing it. */
public final class BedPages implements Routes {
  /** Beyond this many names a list in the page would weigh more than the page; typing still finds all of them. */
  private static final int MOST_NAMES_LISTED = 1000;

  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final NearPlants nearPlants;
  private final Surroundings surroundings;
  private final Supplier<SpeciesLibrary> library;
  private final SurveyReadings readings;

  public BedPages(Pages pages, Sites sites, Beds beds, NearPlants nearPlants, Surroundings surroundings,
      Supplier<SpeciesLibrary> library, SurveyReadings readings) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.nearPlants = nearPlants;
    this.surroundings = surroundings;
    this.library = library;
    this.readings = readings;
  }

  /** A species by its two names. */
  public record Named(String id, String name, String scientificName) {
    static Named of(Species species) {
      return new Named(species.id(), species.name(), species.scientificName());
    }
  }

  /** Plants of one species that stand in the bed. */
  public record Plants(Named species, int count) {}

  /** A species that grows near the bed, and how far off. */
  public record Neighbour(Named species, String distance) {}

  /** A form and the species that may have been meant in it. */
  private record Asked(Form form, List<Named> suggested) {}

  /** Where a survey speaks against what was found out on the spot. */
  public record Contradiction(long survey, String words) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}", ctx -> show(ctx, bed(ctx), askPlants(), askNear(ctx)), Access.OWNER);
    routes.post("/beds/{id}/standing", this::addPlants, Access.OWNER);
    // A refused form is shown under this address; whoever loads it anew gets the bed.
    routes.get("/beds/{id}/standing", ctx -> ctx.redirect("/beds/" + Address.id(ctx), HttpStatus.SEE_OTHER), Access.OWNER);
    routes.post("/beds/{id}/standing/remove", this::removePlants, Access.OWNER);
    routes.get("/beds/{id}/remove", this::askToRemove, Access.OWNER);
    routes.post("/beds/{id}/remove", this::remove, Access.OWNER);
  }

  Bed bed(Context ctx) {
    return beds.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private Asked askPlants() {
    return new Asked(Form.blank(Map.of("count", "1"), pages.messages()), List.of());
  }

  private Asked askNear(Context ctx) {
    return new Asked(Form.blank(Map.of(LengthFields.UNIT, Units.of(ctx).key()), pages.messages()), List.of());
  }

  /** The page with a refused form of what grows near. */
  void refuseNear(Context ctx, Bed bed, Form form, List<Named> suggested) {
    show(ctx, bed, askPlants(), new Asked(form, suggested));
  }

  private void show(Context ctx, Bed bed, Asked plants, Asked near) {
    Site site = sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new);
    SpeciesLibrary now = library.get();
    Map<String, Object> model = new HashMap<>();
    model.put("bed", BedView.of(bed, site, Units.of(ctx), pages.messages()));
    model.put("siteId", site.id());
    model.put("siteName", site.name());
    model.put("standing", bed.standing().stream().map(s -> plants(s, now)).toList());
    model.put("names", now.species().size() > MOST_NAMES_LISTED ? List.of() : now.species().stream().map(Named::of).toList());
    model.put("libraryEmpty", now.species().isEmpty());
    model.put("surveys", readings.surveys().ofBed(bed.id()).stream().map(s -> SurveyLine.of(s, "", pages.messages())).toList());
    model.put("contradictions", readings.contradictions(bed, site).stream()
        .map(e -> new Contradiction(e.survey().id(), SurveyView.contradiction(e, Units.of(ctx), pages.messages()))).toList());
    model.put("form", plants.form());
    model.put("suggested", plants.suggested());
    model.put("near", nearPlants.ofBed(bed.id()).stream().map(n -> neighbour(n, now, Units.of(ctx))).toList());
    model.put("nearForm", near.form());
    model.put("nearSuggested", near.suggested());
    model.put("isFeet", LengthFields.isFeet(near.form()));
    model.put("lightScheme", ClassWords.LIGHT_SCHEME);
    model.put("phScheme", PhClass.SCHEME);
    if (plants.form().isRefused() || near.form().isRefused()) {
      pages.refuse(ctx, "bed/bed", model);
    } else {
      pages.show(ctx, "bed/bed", model);
    }
  }

  private static Plants plants(Standing standing, SpeciesLibrary library) {
    return new Plants(named(standing.speciesId(), library), standing.count());
  }

  private static Neighbour neighbour(Near near, SpeciesLibrary library, Units units) {
    return new Neighbour(named(near.speciesId(), library), units.length(near.distanceM()));
  }

  private static Named named(String speciesId, SpeciesLibrary library) {
    return library.find(speciesId).map(Named::of).orElse(new Named(speciesId, speciesId, speciesId));
  }

  private void addPlants(Context ctx) {
    Bed bed = bed(ctx);
    Form form = Form.read(ctx, pages.messages());
    SpeciesPick pick = SpeciesPick.read(form, "species", "pick", library.get());
    OptionalInt count = form.wholeNumber("count", 1, Standing.MOST);
    if (count.isEmpty() && form.messageOf("count").isEmpty()) {
      form.refuse(Finding.of("value.missing", "count"));
    }
    if (count.isPresent() && pick.species().isPresent()
        && bed.standingOf(pick.species().get().id()) + count.getAsInt() > Standing.MOST) {
      form.refuse(Finding.of("number.out-of-scale", "count", 1, Standing.MOST));
    }
    if (form.isRefused()) {
      show(ctx, bed, new Asked(form, pick.suggested()), askNear(ctx));
      return;
    }
    Species species = pick.species().orElseThrow();
    Optional<Bed> after = beds.change(bed.id(), now ->
        now.withStanding(species.id(), Math.min(Standing.MOST, now.standingOf(species.id()) + count.getAsInt())));
    int all = after.orElseThrow(NotFoundResponse::new).standingOf(species.id());
    pages.goOn(ctx, "/beds/" + bed.id(), Finding.of("done.plants-added", "", species.name(), all));
  }

  private void removePlants(Context ctx) {
    Bed bed = bed(ctx);
    String id = Optional.ofNullable(ctx.formParam("species")).orElse("");
    if (bed.standingOf(id) == 0) {
      throw new NotFoundResponse();
    }
    beds.change(bed.id(), now -> now.withStanding(id, 0)).orElseThrow(NotFoundResponse::new);
    String name = library.get().find(id).map(Species::name).orElse(id);
    pages.goOn(ctx, "/beds/" + bed.id(), Finding.of("done.plants-removed", "", name));
  }

  private void askToRemove(Context ctx) {
    Bed bed = bed(ctx);
    Site site = sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new);
    BedView view = BedView.of(bed, site, Units.of(ctx), pages.messages());
    pages.show(ctx, "bed/bed-remove", Map.of("bed", view, "siteId", site.id(), "siteName", site.name(),
        "losses", Losses.inWords(beds.belongings(bed.id()), view.plants(), measuredFromHereAlone(bed),
            readings.surveys().ofBed(bed.id()).size(), pages.messages())));
  }

  /** How many trees and buildings were measured from a bed whose own place nobody knows: theirs is lost with it. */
  private int measuredFromHereAlone(Bed bed) {
    return bed.middle().isPresent() ? 0 : (int) surroundings.ofSite(bed.siteId()).stream()
        .filter(nearby -> nearby.fromBed().equals(OptionalLong.of(bed.id()))).count();
  }

  private void remove(Context ctx) {
    Bed bed = bed(ctx);
    if (!beds.remove(bed.id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/sites/" + bed.siteId(), Finding.of("done.bed-removed", "", bed.name()));
  }
}
