package guildwood.workplan.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import guildwood.workplan.Raising;
import guildwood.workplan.WorkSettings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** How people work on a site: hours, hands, minutes, and how much of what they raise takes. */
public final class WorkSettingsPages implements Routes {
  private final Pages pages;
  private final WorkDesk desk;

  public WorkSettingsPages(Pages pages, WorkDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/work/settings", this::show, Access.OWNER);
    routes.post("/sites/{id}/work/settings", this::keep, Access.OWNER);
  }

  private void show(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    pages.show(ctx, "workplan/settings", model(site, Form.blank(typed(site.settings()), pages.messages())));
  }

  private static Map<String, String> typed(WorkSettings settings) {
    Map<String, String> typed = new HashMap<>();
    typed.put("sessionHours", Units.number(settings.sessionHours(), 2));
    typed.put("people", Integer.toString(settings.people()));
    typed.put("day", key(settings.day()));
    typed.put("tree", Integer.toString(settings.treeMinutes()));
    typed.put("shrub", Integer.toString(settings.shrubMinutes()));
    typed.put("herb", Integer.toString(settings.herbMinutes()));
    typed.put("cover", Integer.toString(settings.coverMinutes()));
    for (Raising way : Raising.values()) {
      typed.put("take." + way.key(), Integer.toString(settings.take(way)));
    }
    return typed;
  }

  private static Map<String, Object> model(SiteAtWork site, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("site", site.site());
    model.put("bed", null);
    model.put("form", form);
    model.put("days", Arrays.stream(DayOfWeek.values()).map(WorkSettingsPages::key).toList());
    model.put("ways", Arrays.stream(Raising.values()).map(Raising::key).toList());
    return model;
  }

  private static String key(DayOfWeek day) {
    return day.name().toLowerCase(Locale.ROOT);
  }

  private void keep(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    Form form = Form.read(ctx, pages.messages());
    OptionalDouble hours = form.number("sessionHours", WorkSettings.SESSION_HOURS.min(), WorkSettings.SESSION_HOURS.max());
    if (hours.isEmpty() && form.messageOf("sessionHours").isEmpty()) {
      form.refuse(Finding.of("value.missing", "sessionHours"));
    }
    int people = whole(form, "people", WorkSettings.PEOPLE);
    List<DayOfWeek> day = Arrays.stream(DayOfWeek.values()).filter(d -> key(d).equals(form.value("day"))).toList();
    if (day.isEmpty()) {
      form.refuse(Finding.of("value.missing", "day"));
    }
    int tree = whole(form, "tree", WorkSettings.MINUTES);
    int shrub = whole(form, "shrub", WorkSettings.MINUTES);
    int herb = whole(form, "herb", WorkSettings.MINUTES);
    int cover = whole(form, "cover", WorkSettings.MINUTES);
    Map<Raising, Integer> take = new EnumMap<>(Raising.class);
    for (Raising way : Raising.values()) {
      int percent = whole(form, "take." + way.key(), WorkSettings.TAKE_PERCENT);
      if (percent != way.usualTakePercent()) {
        take.put(way, percent);
      }
    }
    if (form.isRefused()) {
      pages.refuse(ctx, "workplan/settings", model(site, form));
      return;
    }
    if (!desk.records().keep(site.site().id(),
        new WorkSettings(hours.getAsDouble(), people, day.get(0), tree, shrub, herb, cover, take))) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, site.address("/work"), Finding.of("done.work-settings", ""));
  }

  private static int whole(Form form, String field, Range range) {
    OptionalInt number = form.wholeNumber(field, (int) range.min(), (int) range.max());
    if (number.isEmpty() && form.messageOf(field).isEmpty()) {
      form.refuse(Finding.of("value.missing", field));
    }
    return number.orElse((int) range.min());
  }
}
