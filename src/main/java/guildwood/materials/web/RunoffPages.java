package guildwood.materials.web;

import guildwood.materials.web.RunoffForm.Question;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.water.GroundCover;
import guildwood.site.water.SoilGroup;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PathSlope;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.SitePlans;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How much rain runs off, and what a shallow basin across the slope holds back. The whole question stands in the address. */
public final class RunoffPages implements Routes {
  /** A path whose ends differ by less counts as level. Our own choice: what a long level shows. */
  private static final double LEVEL_WITHIN_M = 0.03;

  private final Pages pages;
  private final Sites sites;
  private final SitePlans plans;

  public RunoffPages(Pages pages, Sites sites, SitePlans plans) {
    this.pages = pages;
    this.sites = sites;
    this.plans = plans;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/runoff", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    Optional<PlanPath> path = path(ctx, site);
    boolean asked = ctx.queryParam("rain") != null;
    Form form = asked ? Form.filled(ctx.queryParamMap(), pages.messages())
        : Form.blank(path.map(p -> RunoffForm.along(p, Units.of(ctx))).orElseGet(() -> RunoffForm.blank(Units.of(ctx))), pages.messages());
    Optional<Question> question = asked ? RunoffForm.read(form) : Optional.empty();
    Map<String, Object> model = new HashMap<>();
    model.put("siteId", site.id());
    model.put("siteName", site.name());
    model.put("form", form);
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("rows", RunoffForm.ROWS);
    model.put("covers", Stream.concat(Stream.of(""), Arrays.stream(GroundCover.values()).map(GroundCover::key)).toList());
    model.put("soils", Stream.concat(Stream.of(""), Arrays.stream(SoilGroup.values()).map(SoilGroup::key)).toList());
    model.put("paths", plans.paths(site.id()));
    model.put("pathName", path.map(PlanPath::name).orElse(""));
    model.put("pathFalls", path.flatMap(RunoffPages::fallM).map(units(form)::length).orElse(""));
    model.put("pathId", path.map(p -> Long.toString(p.id())).orElse(""));
    model.put("answers", question.map(q -> List.of(RunoffView.of(q, units(form), pages.messages()))).orElse(List.of()));
    if (form.isRefused()) {
      pages.refuse(ctx, "materials/runoff", model);
    } else {
      pages.show(ctx, "materials/runoff", model);
    }
  }

  /** Answers come in the units the question was asked in. */
  private static Units units(Form form) {
    return LengthFields.isFeet(form) ? Units.US : Units.METRIC;
  }

  /** By how much a path falls from end to end, where it is enough to lead water away. */
  private static Optional<Double> fallM(PlanPath path) {
    return PathSlope.of(path).map(PathSlope::riseM).filter(fall -> fall > LEVEL_WITHIN_M);
  }

  private Optional<PlanPath> path(Context ctx, Site site) {
    String id = ctx.queryParam("path");
    return id == null || id.isEmpty() ? Optional.empty()
        : Optional.of(plans.paths(site.id()).stream().filter(p -> Long.toString(p.id()).equals(id)).findFirst()
            .orElseThrow(NotFoundResponse::new));
  }
}
