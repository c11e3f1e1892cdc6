package guildwood.sharing.web;

import guildwood.drawing.Drawings;
import guildwood.drawing.DrawnBed;
import guildwood.drawing.web.DrawnPicture;
import guildwood.guild.BedPlan;
import guildwood.guild.Evaluator;
import guildwood.guild.GuildProblem;
import guildwood.guild.SavedGuild;
import guildwood.guild.web.Desk;
import guildwood.guild.web.GuildViews;
import guildwood.sharing.ShareLink;
import guildwood.sharing.ShareLinks;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Tokens;
import guildwood.web.Units;
import guildwood.workplan.web.CalendarRoute;
import guildwood.workplan.web.WorkDesk;
import guildwood.workplan.web.WorkView;
import guildwood.workplan.web.WorkWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.GoneResponse;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Map;

/** The helpers' page: one plan, read-only, without an account, for a phone in the bed and for paper. */
public final class SharedPage implements Routes {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);

  private final Pages pages;
  private final Desk desk;
  private final ShareLinks links;
  private final Drawings drawings;
  private final WorkDesk work;
  private final Clock clock;

  public SharedPage(Pages pages, Desk desk, ShareLinks links, Drawings drawings, WorkDesk work, Clock clock) {
    this.pages = pages;
    this.desk = desk;
    this.links = links;
    this.drawings = drawings;
    this.work = work;
    this.clock = clock;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/shared/{token}", this::show, Access.LINK_HOLDER);
    routes.get("/shared/{token}/drawing.svg", this::drawing, Access.LINK_HOLDER);
    routes.get("/shared/{token}/work.ics", this::calendar, Access.LINK_HOLDER);
  }

  /** The guild the link leads to, where the link still works. */
  private SavedGuild saved(Context ctx) {
    ctx.header("X-Robots-Tag", "noindex, nofollow");
    String token = ctx.pathParam("token");
    ShareLink link = (token.length() == Tokens.LENGTH ? links.find(Tokens.hash(token)) : java.util.Optional.<ShareLink>empty())
        .orElseThrow(NotFoundResponse::new);
    if (!link.works(clock.instant())) {
      throw new GoneResponse();
    }
    return desk.guilds().find(link.guildId()).orElseThrow(NotFoundResponse::new);
  }

  /** The drawing as the plan is now, its plants grown. */
  private void drawing(Context ctx) {
    SavedGuild saved = saved(ctx);
    BedPlan plan = desk.plan(saved.bedId());
    DrawnBed drawn = drawings.of(saved.bedId(), saved.guild(), desk.problem(plan), plan.library()).orElseThrow(NotFoundResponse::new);
    ctx.contentType("image/svg+xml; charset=utf-8");
    ctx.result(DrawnPicture.svg(drawn, drawn.untilGrown(), Units.of(ctx), pages.messages()));
  }

  /** A calendar that follows the plan: whoever subscribes to it sees its changes. */
  private void calendar(Context ctx) {
    BedPlan plan = desk.plan(saved(ctx).bedId());
    new CalendarRoute(work, pages.messages()).send(ctx, work.ofBed(plan.bed()));
  }

  private void show(Context ctx) {
    SavedGuild saved = saved(ctx);
    BedPlan plan = desk.plan(saved.bedId());
    GuildProblem problem = desk.problem(plan);
    Units units = Units.of(ctx);
    GuildViews views = new GuildViews(pages.messages(), units, plan, problem);
    pages.show(ctx, "sharing/shared", Map.of(
        "name", saved.name(),
        "bedName", plan.bed().name(),
        "bedNote", plan.bed().note(),
        "area", units.area(plan.bed().areaM2()),
        "drawing", "/shared/" + ctx.pathParam("token") + "/drawing.svg",
        "work", WorkView.of(work.ofBed(plan.bed()), new WorkWords(pages.messages(), units)),
        "calendar", "/shared/" + ctx.pathParam("token") + "/work.ics",
        "savedOn", DAY.format(saved.savedAt()),
        "guild", views.view(new Evaluator(problem).evaluate(saved.guild()))));
  }
}
