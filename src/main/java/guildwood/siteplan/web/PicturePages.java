package guildwood.siteplan.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PicturePlace;
import guildwood.siteplan.PlanPicture;
import guildwood.siteplan.SitePlan;
import guildwood.siteplan.exchange.PictureFile;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import guildwood.web.Upload;
import guildwood.web.Uploads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/** The picture under a plan: taking one in, laying it to scale and north, and taking it away. */
public final class PicturePages implements Routes {
  private final Pages pages;
  private final PlanPages plans;
  private final Uploads uploads;

  public PicturePages(Pages pages, PlanPages plans, Uploads uploads) {
    this.pages = pages;
    this.plans = plans;
    this.uploads = uploads;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    uploads.post(routes, "/sites/{id}/plan/picture/new", PictureFile.MOST_BYTES, this::take, Access.OWNER);
    routes.get("/sites/{id}/plan/picture/new", ctx -> ctx.redirect("/sites/" + Address.id(ctx) + "/plan", HttpStatus.SEE_OTHER), Access.OWNER);
    routes.get("/sites/{id}/plan/picture", this::show, Access.OWNER);
    routes.post("/sites/{id}/plan/picture", this::place, Access.OWNER);
    routes.get("/sites/{id}/plan/picture/file", this::send, Access.OWNER);
    routes.post("/sites/{id}/plan/picture/remove", this::remove, Access.OWNER);
  }

  private void take(Context ctx) {
    SitePlan plan = plans.find(ctx);
    Upload upload = Upload.of(ctx);
    Optional<Checked<PlanPicture>> picture = upload.file().value().map(sent -> PictureFile.read(sent.path()));
    List<Finding> findings = picture.map(Checked::findings).orElseGet(() -> upload.file().findings());
    if (!findings.isEmpty()) {
      plans.refuse(ctx, plan, findings);
      return;
    }
    PlanPicture kept = picture.orElseThrow().orThrow();
    if (!plans.desk().sheets().keep(plan.site().id(), kept, PicturePlace.first(kept))) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, address(plan), Finding.of("done.plan-picture", "", kept.widthPx(), kept.heightPx()));
  }

  private static String address(SitePlan plan) {
    return "/sites/" + plan.site().id() + "/plan/picture";
  }

  private static PicturePlace place(SitePlan plan) {
    return plan.picture().orElseThrow(NotFoundResponse::new);
  }

  private void show(Context ctx) {
    SitePlan plan = plans.find(ctx);
    show(ctx, plan, Form.blank(PictureForm.filled(place(plan), Units.of(ctx)), pages.messages()));
  }

  private void place(Context ctx) {
    SitePlan plan = plans.find(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<PicturePlace> laid = new PictureForm(form, place(plan)).read();
    if (laid.isEmpty()) {
      show(ctx, plan, form);
      return;
    }
    if (!plans.desk().sheets().place(plan.site().id(), laid.get())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of("done.plan-picture-laid", ""));
  }

  private void show(Context ctx, SitePlan plan, Form form) {
    Units units = Units.of(ctx);
    PicturePlace place = place(plan);
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("siteId", plan.site().id());
    model.put("siteName", plan.site().name());
    model.put("widthPx", place.widthPx());
    model.put("heightPx", place.heightPx());
    model.put("viewBox", "0 0 " + place.widthPx() + " " + place.heightPx());
    model.put("covers", pages.messages().say("plan.picture.covers", PlanWords.length(place.widthPx() * place.metresPerPx(), units),
        PlanWords.length(place.heightPx() * place.metresPerPx(), units)));
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("spots", PictureForm.SPOTS);
    if (form.isRefused()) {
      pages.refuse(ctx, "siteplan/picture", model);
    } else {
      pages.show(ctx, "siteplan/picture", model);
    }
  }

  /** The picture itself; a browser that has it already is told so. */
  private void send(Context ctx) {
    PlanPicture picture = plans.desk().sheets().picture(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    CRC32 sum = new CRC32();
    sum.update(picture.content());
    String tag = String.format(Locale.ROOT, "\"%x-%x\"", picture.content().length, sum.getValue());
    ctx.header("Cache-Control", "private, no-cache");
    ctx.header("ETag", tag);
    if (tag.equals(ctx.header("If-None-Match"))) {
      ctx.status(HttpStatus.NOT_MODIFIED);
      return;
    }
    ctx.contentType(picture.kind().mediaType());
    ctx.result(picture.content());
  }

  private void remove(Context ctx) {
    SitePlan plan = plans.find(ctx);
    if (!plans.desk().sheets().removePicture(plan.site().id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of("done.plan-picture-removed", ""));
  }
}
