package guildwood.workplan.web;

import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import guildwood.workplan.SessionPick;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkSettings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What can be done today in the hours at hand, with what is here. */
public final class NowPages implements Routes {
  private static final int LATER_SHOWN = 30;

  private final Pages pages;
  private final WorkDesk desk;

  public NowPages(Pages pages, WorkDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  /** Work that cannot be begun, and why. */
  public record LaterRow(String title, List<String> reasons) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/work/now", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    WorkWords words = new WorkWords(pages.messages(), Units.of(ctx));
    Form form = Form.filled(asked(ctx, site.settings()), pages.messages());
    OptionalDouble hours = form.number("hours", WorkSettings.SESSION_HOURS.min(), WorkSettings.SESSION_HOURS.max());
    OptionalInt people = form.wholeNumber("people", (int) WorkSettings.PEOPLE.min(), (int) WorkSettings.PEOPLE.max());
    if (form.messageOf("hours").isEmpty() && hours.isEmpty()) {
      form.refuse(Finding.of("value.missing", "hours"));
    }
    Map<String, Object> model = new HashMap<>();
    model.put("site", site.site());
    model.put("bed", site.bed().orElse(null));
    model.put("at", site);
    model.put("form", form);
    model.put("today", words.day(site.today()));
    if (form.isRefused()) {
      pages.refuse(ctx, "workplan/now", model);
      return;
    }
    SessionPick pick = SessionPick.of(site.plan(), site.today(), hours.getAsDouble() * 60 * people.orElse(1));
    model.put("toGet", rows(pick, true, words));
    model.put("rows", rows(pick, false, words));
    model.put("time", words.time(pick.minutes()));
    model.put("later", pick.later().stream().limit(LATER_SHOWN)
        .map(later -> new LaterRow(words.title(later.task()), words.reasons(later, site.plan()))).toList());
    pages.show(ctx, "workplan/now", model);
  }

  private static List<WorkView.Row> rows(SessionPick pick, boolean toGet, WorkWords words) {
    return pick.steps().stream().filter(step -> (step.task().kind() == WorkKind.BUY_PLANTS) == toGet)
        .map(step -> WorkView.row(step, false, words)).toList();
  }

  private static Map<String, List<String>> asked(Context ctx, WorkSettings settings) {
    Map<String, List<String>> asked = new HashMap<>();
    asked.put("hours", List.of(Optional.ofNullable(ctx.queryParam("hours")).orElse(Units.number(settings.sessionHours(), 2))));
    asked.put("people", List.of(Optional.ofNullable(ctx.queryParam("people")).orElse(Integer.toString(settings.people()))));
    return asked;
  }
}
