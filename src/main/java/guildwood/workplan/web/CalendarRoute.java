package guildwood.workplan.web;

import guildwood.web.Access;
import guildwood.web.Messages;
import guildwood.web.Routes;
import guildwood.web.Units;
import guildwood.workplan.Schedule;
import guildwood.workplan.exchange.WorkCalendar;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneOffset;

/** The season's work as a calendar file. */
public final class CalendarRoute implements Routes {
  private final WorkDesk desk;
  private final WorkWords words;

  public CalendarRoute(WorkDesk desk, Messages messages) {
    this.desk = desk;
    this.words = new WorkWords(messages, Units.METRIC);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/work.ics", ctx -> send(ctx, desk.atWork(ctx)), Access.OWNER);
  }

  /** Sends the work of a site or bed. */
  public void send(Context ctx, SiteAtWork site) {
    // The plan is made anew for each day; within a day the file stays the same.
    Instant stamp = site.today().atStartOfDay(ZoneOffset.UTC).toInstant();
    String name = site.bed().map(bed -> bed.name()).orElse(site.site().name());
    WorkCalendar calendar = new WorkCalendar(name, site.site().id(), stamp, dated -> words.line(dated.step()), words::description);
    ctx.contentType("text/calendar; charset=utf-8");
    ctx.header("Content-Disposition", "attachment; filename=\"work.ics\"");
    ctx.result(calendar.write(Schedule.of(site.plan(), site.settings(), site.year(), site.today())));
  }
}
