package guildwood.workplan.web;

import guildwood.bed.Bed;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.materials.VolumeReader;
import guildwood.site.web.LengthFields;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import guildwood.workplan.Count;
import guildwood.workplan.Done;
import guildwood.workplan.WorkStep;
import guildwood.workplan.WorkTask;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The season's work on a site or in a bed, and ticking it off. */
public final class WorkPages implements Routes {
  private static final int DONE_SHOWN = 20;

  private final Pages pages;
  private final WorkDesk desk;

  public WorkPages(Pages pages, WorkDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  /** Work that was done, in words. */
  public record DoneRow(long id, String words, String on) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}/work", this::ofBed, Access.OWNER);
    routes.get("/sites/{id}/work", this::show, Access.OWNER);
    routes.post("/sites/{id}/work/done", this::finish, Access.OWNER);
    routes.post("/sites/{id}/work/done/{done}/take-back", this::takeBack, Access.OWNER);
  }

  private void ofBed(Context ctx) {
    Bed bed = desk.bed(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    ctx.redirect("/sites/" + bed.siteId() + "/work?bed=" + bed.id(), HttpStatus.SEE_OTHER);
  }

  private WorkWords words(Context ctx) {
    return new WorkWords(pages.messages(), Units.of(ctx));
  }

  private void show(Context ctx) {
    pages.show(ctx, "workplan/work", model(desk.atWork(ctx), words(ctx), Form.blank(Map.of(), pages.messages())));
  }

  private Map<String, Object> model(SiteAtWork site, WorkWords words, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("site", site.site());
    model.put("bed", site.bed().orElse(null));
    model.put("at", site);
    model.put("work", WorkView.of(site, words));
    model.put("day", words.weekday(site.settings().day()));
    model.put("session", words.time(site.settings().sessionHours() * 60));
    model.put("people", site.settings().people());
    model.put("lastFrost", words.day(site.year().lastSpringFrost(site.today().getYear())));
    model.put("firstFrost", words.day(site.year().firstAutumnFrost(site.today().getYear())));
    model.put("done", doneRows(site, words));
    model.put("form", form);
    return model;
  }

  private List<DoneRow> doneRows(SiteAtWork site, WorkWords words) {
    return site.done().stream().filter(d -> site.bed().map(bed -> bed.id() == d.bedId()).orElse(true)).limit(DONE_SHOWN)
        .map(d -> new DoneRow(d.id(), d.words(), words.day(d.on()))).toList();
  }

  private void finish(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    WorkWords words = words(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<WorkTask> task = site.plan().find(form.value("task"));
    if (task.isEmpty()) {
      // The plan has changed since the page was opened: nothing is guessed.
      form.refuse(Finding.of("work.changed", ""));
      pages.refuse(ctx, "workplan/work", model(site, words, form));
      return;
    }
    OptionalDouble amount = amount(form, task.get(), site.needs().settings().loadM3());
    if (form.isRefused()) {
      pages.refuse(ctx, "workplan/work", model(site, words, form));
      return;
    }
    double done = amount.orElse(task.get().amount());
    String line = words.line(new WorkStep(task.get(), 1, 1, done));
    String kept = line.length() > Done.LONGEST_WORDS ? line.substring(0, Done.LONGEST_WORDS) : line;
    if (!desk.finish(site, task.get(), done, kept)) {
      form.refuse(Finding.of("work.changed", ""));
      pages.refuse(ctx, "workplan/work", model(site, words, form));
      return;
    }
    pages.goOn(ctx, site.address("/work"), Finding.of("done.work", "", kept));
  }

  /** How much was done; more than is left is a mistake in the number or in the plan, and either wants a look. */
  private static OptionalDouble amount(Form form, WorkTask task, double loadM3) {
    if (task.count() == Count.ONCE) {
      return OptionalDouble.of(1);
    }
    if (task.count() == Count.CUBIC_METRES) {
      Range most = new Range(0.01, Math.max(0.01, task.amount() + 0.005));
      return form.take(new VolumeReader(LengthFields.isFeet(form), loadM3).read(form.value("amount"), most, "amount"))
          .map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
    var whole = form.wholeNumber("amount", 1, (int) Math.ceil(task.amount() - 1e-9));
    return whole.isPresent() ? OptionalDouble.of(whole.getAsInt()) : OptionalDouble.empty();
  }

  private void takeBack(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    Finding notice = switch (desk.records().takeBack(site.site().id(), Address.number(ctx, "done"))) {
      case TAKEN_BACK -> Finding.of("done.work-taken-back", "");
      case USED_SINCE -> Finding.of("done.work-used-since", "");
      case NOT_THERE -> throw new NotFoundResponse();
    };
    pages.goOn(ctx, site.address("/work"), notice);
  }
}
