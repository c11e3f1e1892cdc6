package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.materials.Covering;
import guildwood.materials.Material;
import guildwood.materials.MaterialRecords;
import guildwood.materials.Need;
import guildwood.materials.Needs;
import guildwood.materials.SiteNeeds;
import guildwood.materials.SiteNeeds.Place;
import guildwood.materials.Target;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.web.LengthFields;
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
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One bed or path: how it is covered, and what part of it was laid. */
public final class PlacePages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Needs needs;
  private final MaterialRecords records;
  private final Clock clock;

  public PlacePages(Pages pages, Sites sites, Needs needs, MaterialRecords records, Clock clock) {
    this.pages = pages;
    this.sites = sites;
    this.needs = needs;
    this.records = records;
    this.clock = clock;
  }

  /** A layer of the place that can be laid in part. */
  public record Layer(String key, String material, String left, boolean done, boolean sheets) {}

  private record Here(Site site, SiteNeeds needs, Place place) {
    String address() {
      return MaterialPages.home(site) + "/at/" + place.surface().target().key();
    }

    List<Need> layers() {
      return needs.needs().stream().filter(need -> need.target().equals(place.surface().target())).toList();
    }
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/materials/at/{target}", this::ask, Access.OWNER);
    routes.post("/sites/{id}/materials/at/{target}", this::keep, Access.OWNER);
    routes.post("/sites/{id}/materials/at/{target}/laid", this::lay, Access.OWNER);
    // A refused form is shown under this address; whoever loads it anew gets the page.
    routes.get("/sites/{id}/materials/at/{target}/laid", ctx -> ctx.redirect(here(ctx).address(), HttpStatus.SEE_OTHER), Access.OWNER);
  }

  private Here here(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    SiteNeeds all = needs.ofSite(site.id());
    return new Here(site, all, Target.ofKey(ctx.pathParam("target")).flatMap(all::find).orElseThrow(NotFoundResponse::new));
  }

  private void ask(Context ctx) {
    Here here = here(ctx);
    show(ctx, here, coveringForm(ctx, here), layForm(ctx));
  }

  private Form coveringForm(Context ctx, Here here) {
    Map<String, String> values = new HashMap<>(Map.of(LengthFields.UNIT, Units.of(ctx).key()));
    CoveringFields.put(values, "", here.place().covering(), Units.of(ctx));
    values.put("wanted", here.place().covering().wanted() ? "yes" : "");
    return Form.blank(values, pages.messages());
  }

  private Form layForm(Context ctx) {
    return Form.blank(Map.of(LengthFields.UNIT, Units.of(ctx).key(), "on", LocalDate.now(clock).toString()), pages.messages());
  }

  private void keep(Context ctx) {
    Here here = here(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Covering> covering = Optional.empty();
    if (!form.ticked("usual")) {
      covering = CoveringFields.read(form, "", form.ticked("wanted"), here.place().covering());
      if (form.isRefused()) {
        show(ctx, here, form, layForm(ctx));
        return;
      }
    }
    if (!records.keep(here.site().id(), here.place().surface().target(), covering)) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, MaterialPages.home(here.site()), Finding.of("done.covering-kept", "", here.place().surface().name()));
  }

  private void lay(Context ctx) {
    Here here = here(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Need> need = Need.ofKey(here.layers(), form.value("need"));
    if (need.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "need", form.value("need")));
    }
    Optional<Double> amount = need.flatMap(n -> DeliveryForm.amount(form, "amount", n.material(), here.needs().settings(), Optional.empty()));
    Optional<LocalDate> on = DeliveryForm.day(form, "on", LocalDate.now(clock));
    if (form.isRefused()) {
      show(ctx, here, coveringForm(ctx, here), form);
      return;
    }
    records.lay(here.site().id(), need.orElseThrow(), amount.orElseThrow(), on.orElseThrow(), form.ticked("finished"))
        .orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, MaterialPages.home(here.site()), Finding.of("done.material-laid", "", here.place().surface().name()));
  }

  private void show(Context ctx, Here here, Form covering, Form lay) {
    MaterialWords words = new MaterialWords(pages.messages(), Units.of(ctx));
    Map<String, Object> model = new HashMap<>();
    model.put("siteId", here.site().id());
    model.put("siteName", here.site().name());
    model.put("name", here.place().surface().name());
    model.put("address", here.address());
    model.put("bedId", here.place().surface().target().kind() == Target.Kind.BED ? Long.toString(here.place().surface().target().id()) : "");
    model.put("own", here.place().own());
    model.put("area", Units.of(ctx).area(here.place().surface().wholeM2()));
    model.put("free", here.place().surface().trunks() == 0 ? "" : pages.messages().say("materials.place.free",
        Units.of(ctx).area(here.place().surface().keptFreeM2()), here.place().surface().trunks()));
    model.put("form", covering);
    model.put("lay", lay);
    model.put("isFeet", LengthFields.isFeet(covering));
    model.put("isYards", LengthFields.isFeet(lay));
    model.put("materials", CoveringFields.ON_TOP);
    model.put("layers", here.layers().stream().map(need -> layer(need, words)).toList());
    if (covering.isRefused() || lay.isRefused()) {
      pages.refuse(ctx, "materials/place", model);
    } else {
      pages.show(ctx, "materials/place", model);
    }
  }

  private static Layer layer(Need need, MaterialWords words) {
    Material material = need.material();
    return new Layer(need.key(), words.name(material), words.amount(material, need.left()), need.done(), material.inSheets());
  }
}
