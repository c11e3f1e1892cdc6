package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.materials.MaterialRecords;
import guildwood.materials.MaterialSettings;
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
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What the owner says about materials on a site: depths, loads, barrows, gaps, card, pace of work. */
public final class MaterialSettingsPages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final MaterialRecords records;

  public MaterialSettingsPages(Pages pages, Sites sites, MaterialRecords records) {
    this.pages = pages;
    this.sites = sites;
    this.records = records;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/materials/settings", this::ask, Access.OWNER);
    routes.post("/sites/{id}/materials/settings", this::keep, Access.OWNER);
  }

  private Site site(Context ctx) {
    return sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void ask(Context ctx) {
    Site site = site(ctx);
    show(ctx, site, Form.blank(SettingsForm.filled(records.settings(site.id()), Units.of(ctx)), pages.messages()));
  }

  private void keep(Context ctx) {
    Site site = site(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<MaterialSettings> settings = SettingsForm.read(form, records.settings(site.id()));
    if (settings.isEmpty()) {
      show(ctx, site, form);
      return;
    }
    if (!records.keep(site.id(), settings.get())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, MaterialPages.home(site), Finding.of("done.material-settings-kept", ""));
  }

  private void show(Context ctx, Site site, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("siteId", site.id());
    model.put("siteName", site.name());
    model.put("form", form);
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("materials", CoveringFields.ON_TOP);
    if (form.isRefused()) {
      pages.refuse(ctx, "materials/settings", model);
    } else {
      pages.show(ctx, "materials/settings", model);
    }
  }
}
