package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.Outlines;
import guildwood.kernel.Finding;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.web.ConditionFields;
import guildwood.site.web.ConditionView;
import guildwood.site.web.LengthFields;
import guildwood.species.Axis;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Laying out a bed, and describing it anew. */
public final class BedFormPages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final Outlines outlines;

  public BedFormPages(Pages pages, Sites sites, Beds beds, Outlines outlines) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.outlines = outlines;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/beds/new", this::askForBed, Access.OWNER);
    routes.post("/sites/{id}/beds/new", this::add, Access.OWNER);
    routes.get("/beds/{id}/edit", this::edit, Access.OWNER);
    routes.post("/beds/{id}/edit", this::change, Access.OWNER);
  }

  private void askForBed(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    show(ctx, Form.blank(BedForm.blank(Units.of(ctx)), pages.messages()), site, Optional.empty());
  }

  private void add(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    Form form = Form.read(ctx, pages.messages());
    Optional<Bed> bed = BedForm.read(form, site.id(), Optional.empty());
    if (bed.isEmpty()) {
      show(ctx, form, site, Optional.empty());
      return;
    }
    long id = beds.add(bed.get()).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/beds/" + id, Finding.of("done.bed-added", "", bed.get().name()));
  }

  private void edit(Context ctx) {
    Bed bed = beds.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    show(ctx, Form.blank(BedForm.filled(bed, Units.of(ctx)), pages.messages()), siteOf(bed), Optional.of(bed));
  }

  private void change(Context ctx) {
    Bed before = beds.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    Form form = Form.read(ctx, pages.messages());
    Optional<Bed> read = BedForm.read(form, before.siteId(), Optional.of(before));
    if (read.isEmpty()) {
      show(ctx, form, siteOf(before), Optional.of(before));
      return;
    }
    Bed bed = read.get();
    // Plants are not part of this form: those that stand at the moment of the change stay.
    beds.change(before.id(), now -> new Bed(
            now.id(), now.siteId(), bed.name(), bed.areaM2(), bed.size(), bed.middle(), bed.conditions(), now.standing(), bed.note()))
        .orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/beds/" + before.id(), Finding.of("done.bed-changed", "", bed.name()));
  }

  private Site siteOf(Bed bed) {
    return sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new);
  }

  private void show(Context ctx, Form form, Site site, Optional<Bed> before) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("isNew", before.isEmpty());
    model.put("name", before.map(Bed::name).orElse(""));
    model.put("cancel", before.map(bed -> "/beds/" + bed.id()).orElse("/sites/" + site.id()));
    model.put("siteId", site.id());
    model.put("siteName", site.name());
    model.put("traced", before.flatMap(bed -> outlines.ofBed(bed.id())).isPresent());
    model.put("areaLabel", BedForm.isSquareFeet(form) ? "bed.area.us" : "bed.area.metric");
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("placeOpen", form.ticked("east") || form.ticked("north"));
    model.put("rows", ConditionFields.rows(before.map(Bed::conditions).orElse(Map.of()), ofSite(site, Units.of(ctx)), pages.messages()));
    model.put("phClasses", ConditionFields.phClasses(pages.messages()));
    if (form.isRefused()) {
      pages.refuse(ctx, "bed/form", model);
    } else {
      pages.show(ctx, "bed/form", model);
    }
  }

  /** What the site says, in words, for the axes a bed may say differently. */
  private Map<Axis, String> ofSite(Site site, Units units) {
    Map<Axis, String> words = new EnumMap<>(Axis.class);
    for (Map.Entry<Axis, Condition> stated : site.conditions().entrySet()) {
      words.put(stated.getKey(), ConditionView.of(stated.getValue(), units, pages.messages()).full());
    }
    return words;
  }
}
