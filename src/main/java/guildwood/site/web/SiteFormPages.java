package guildwood.site.web;

import guildwood.kernel.Finding;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.species.Axis;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Describing a site, and describing it anew. */
public final class SiteFormPages implements Routes {
  private static final List<String> MONTHS =
      Stream.concat(Stream.of(""), IntStream.rangeClosed(1, 12).mapToObj(Integer::toString)).toList();

  private final Pages pages;
  private final Sites sites;

  public SiteFormPages(Pages pages, Sites sites) {
    this.pages = pages;
    this.sites = sites;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/new", ctx -> show(ctx, Form.blank(SiteForm.blank(), pages.messages()), null), Access.OWNER);
    routes.post("/sites/new", this::add, Access.OWNER);
    routes.get("/sites/{id}/edit", this::edit, Access.OWNER);
    routes.post("/sites/{id}/edit", this::change, Access.OWNER);
  }

  private void add(Context ctx) {
    Form form = Form.read(ctx, pages.messages());
    Optional<Site> site = SiteForm.read(form, Map.of());
    if (site.isEmpty()) {
      show(ctx, form, null);
      return;
    }
    long id = sites.add(site.get());
    pages.goOn(ctx, "/sites/" + id, Finding.of("done.site-added", "", site.get().name()));
  }

  private void edit(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    show(ctx, Form.blank(SiteForm.filled(site), pages.messages()), site);
  }

  private void change(Context ctx) {
    Site before = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    Form form = Form.read(ctx, pages.messages());
    Optional<Site> site = SiteForm.read(form, before.conditions());
    if (site.isEmpty()) {
      show(ctx, form, before);
      return;
    }
    sites.change(before.id(), s -> site.get()).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/sites/" + before.id(), Finding.of("done.site-changed", "", site.get().name()));
  }

  private void show(Context ctx, Form form, Site before) {
    Map<Axis, Condition> conditions = before == null ? Map.of() : before.conditions();
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("isNew", before == null);
    model.put("name", before == null ? "" : before.name());
    model.put("cancel", before == null ? "/sites" : "/sites/" + before.id());
    model.put("months", MONTHS);
    model.put("bases", ConditionFields.BASES);
    model.put("rows", ConditionFields.rows(conditions, Map.of(), pages.messages()));
    model.put("phClasses", ConditionFields.phClasses(pages.messages()));
    model.put("conditionsOpen", ConditionFields.anyTyped(form));
    if (form.isRefused()) {
      pages.refuse(ctx, "site/form", model);
    } else {
      pages.show(ctx, "site/form", model);
    }
  }
}
