package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.materials.Delivery;
import guildwood.materials.Material;
import guildwood.materials.MaterialRecords;
import guildwood.materials.MaterialSettings;
import guildwood.materials.Need;
import guildwood.materials.Needs;
import guildwood.materials.SiteNeeds;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a site's beds and paths need, in the owner's order; what came, and what was laid. */
public final class MaterialPages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Needs needs;
  private final MaterialRecords records;
  private final Clock clock;

  public MaterialPages(Pages pages, Sites sites, Needs needs, MaterialRecords records, Clock clock) {
    this.pages = pages;
    this.sites = sites;
    this.needs = needs;
    this.records = records;
    this.clock = clock;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/materials", ctx -> show(ctx, site(ctx), blank(ctx)), Access.OWNER);
    routes.post("/sites/{id}/materials/order", this::move, Access.OWNER);
    routes.post("/sites/{id}/materials/load", this::addLoad, Access.OWNER);
    routes.post("/sites/{id}/materials/deliveries", this::addDelivery, Access.OWNER);
    // A refused form is shown under this address; whoever loads it anew gets the page.
    routes.get("/sites/{id}/materials/deliveries", ctx -> ctx.redirect(home(site(ctx)), HttpStatus.SEE_OTHER), Access.OWNER);
    routes.post("/sites/{id}/materials/deliveries/remove", this::removeDelivery, Access.OWNER);
    routes.post("/sites/{id}/materials/done", this::finish, Access.OWNER);
    routes.post("/sites/{id}/materials/laid/remove", this::takeBack, Access.OWNER);
  }

  private Site site(Context ctx) {
    return sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  static String home(Site site) {
    return "/sites/" + site.id() + "/materials";
  }

  private LocalDate today() {
    return LocalDate.now(clock);
  }

  private Form blank(Context ctx) {
    return Form.blank(DeliveryForm.blank(today(), Units.of(ctx)), pages.messages());
  }

  private void show(Context ctx, Site site, Form form) {
    SiteNeeds now = needs.ofSite(site.id());
    MaterialViews views = new MaterialViews(now, Units.of(ctx), pages.messages());
    Map<String, Object> model = new HashMap<>();
    model.put("siteId", site.id());
    model.put("siteName", site.name());
    model.put("view", views.view());
    model.put("came", views.came(records.deliveries(site.id())));
    model.put("laid", views.done(records.laid(site.id())));
    model.put("load", Units.of(ctx).volume(now.settings().loadM3()));
    model.put("form", form);
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("materials", Arrays.stream(Material.values()).map(Material::key).toList());
    if (form.isRefused()) {
      pages.refuse(ctx, "materials/materials", model);
    } else {
      pages.show(ctx, "materials/materials", model);
    }
  }

  /** Moves a bed or path one place up or down among all of the site. */
  private void move(Context ctx) {
    Site site = site(ctx);
    Form form = Form.read(ctx, pages.messages());
    boolean up = form.ticked("up");
    Target target = Target.ofKey(form.value(up ? "up" : "down")).orElseThrow(NotFoundResponse::new);
    List<Target> order = new ArrayList<>(needs.ofSite(site.id()).places().stream().map(place -> place.surface().target()).toList());
    int from = order.indexOf(target);
    int to = up ? from - 1 : from + 1;
    if (from < 0) {
      throw new NotFoundResponse();
    }
    if (to >= 0 && to < order.size()) {
      Collections.swap(order, from, to);
      records.keep(site.id(), order);
    }
    ctx.redirect(home(site) + "#needs", HttpStatus.SEE_OTHER);
  }

  private void addLoad(Context ctx) {
    Site site = site(ctx);
    MaterialSettings settings = records.settings(site.id());
    records.add(new Delivery(0, site.id(), Material.WOOD_CHIPS, settings.loadM3(), today(), "")).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, home(site), Finding.of("done.material-came", "",
        words(ctx).of(Material.WOOD_CHIPS, settings.loadM3())));
  }

  private void addDelivery(Context ctx) {
    Site site = site(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Delivery> delivery = DeliveryForm.read(form, site.id(), records.settings(site.id()), today());
    if (delivery.isEmpty()) {
      show(ctx, site, form);
      return;
    }
    records.add(delivery.get()).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, home(site), Finding.of("done.material-came", "", words(ctx).of(delivery.get().material(), delivery.get().amount())));
  }

  private void removeDelivery(Context ctx) {
    Site site = site(ctx);
    Form form = Form.read(ctx, pages.messages());
    switch (records.removeDelivery(site.id(), number(form, "delivery"))) {
      case REMOVED -> pages.goOn(ctx, home(site), Finding.of("done.delivery-removed", ""));
      case LAID_ALREADY -> pages.goOn(ctx, home(site), Finding.of("done.delivery-laid-already", ""));
      case NOT_THERE -> throw new NotFoundResponse();
    }
  }

  /** Calls a layer done: all that is left of it counts as laid today. */
  private void finish(Context ctx) {
    Site site = site(ctx);
    Form form = Form.read(ctx, pages.messages());
    Need need = Need.ofKey(needs.ofSite(site.id()).needs(), form.value("need")).orElseThrow(NotFoundResponse::new);
    if (!need.done()) {
      records.lay(site.id(), need, need.left(), today(), true).orElseThrow(NotFoundResponse::new);
    }
    pages.goOn(ctx, home(site), Finding.of("done.material-finished", "", need.name()));
  }

  private void takeBack(Context ctx) {
    Site site = site(ctx);
    if (!records.takeBack(site.id(), number(Form.read(ctx, pages.messages()), "laid"))) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, home(site), Finding.of("done.material-taken-back", ""));
  }

  private MaterialWords words(Context ctx) {
    return new MaterialWords(pages.messages(), Units.of(ctx));
  }

  private static long number(Form form, String field) {
    if (!form.value(field).matches("\\d{1,18}")) {
      throw new NotFoundResponse();
    }
    return Long.parseLong(form.value(field));
  }
}
