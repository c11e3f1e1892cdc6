package guildwood.bed.survey.web;

import guildwood.bed.Beds;
import guildwood.bed.SurveyReadings;
import guildwood.kernel.Finding;
import guildwood.site.Sites;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.SurveySheet;
import guildwood.species.WetlandRegion;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Writing down a survey as a typed list, and changing one. */
public final class SurveyFormPages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final SurveyReadings readings;
  private final Clock clock;

  public SurveyFormPages(Pages pages, Sites sites, Beds beds, SurveyReadings readings, Clock clock) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.readings = readings;
    this.clock = clock;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    for (String ground : List.of("/beds/{id}", "/sites/{id}")) {
      routes.get(ground + "/surveys/new", this::askForSurvey, Access.OWNER);
      routes.post(ground + "/surveys/new", this::add, Access.OWNER);
    }
    routes.get("/surveys/{id}/edit", this::edit, Access.OWNER);
    routes.post("/surveys/{id}/edit", this::change, Access.OWNER);
  }

  private void askForSurvey(Context ctx) {
    Ground ground = Ground.of(ctx, sites, beds);
    show(ctx, Form.blank(SurveyForm.blank(ground, LocalDate.now(clock), Units.of(ctx)), pages.messages()), ground, Optional.empty());
  }

  private void add(Context ctx) {
    Ground ground = Ground.of(ctx, sites, beds);
    Form form = Form.read(ctx, pages.messages());
    Optional<SurveySheet> sheet = read(form, ground, Optional.empty());
    if (sheet.isEmpty()) {
      show(ctx, form, ground, Optional.empty());
      return;
    }
    long id = readings.surveys().add(sheet.get()).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/surveys/" + id, Finding.of("done.survey-added", "", sheet.get().name()));
  }

  private void edit(Context ctx) {
    SurveySheet sheet = sheet(ctx);
    show(ctx, Form.blank(SurveyForm.filled(sheet, Units.of(ctx)), pages.messages()), Ground.of(sheet, sites, beds), Optional.of(sheet));
  }

  private void change(Context ctx) {
    SurveySheet before = sheet(ctx);
    Ground ground = Ground.of(before, sites, beds);
    Form form = Form.read(ctx, pages.messages());
    Optional<SurveySheet> sheet = read(form, ground, Optional.of(before));
    if (sheet.isEmpty()) {
      show(ctx, form, ground, Optional.of(before));
      return;
    }
    readings.surveys().change(before.id(), now -> sheet.get()).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/surveys/" + before.id(), Finding.of("done.survey-changed", "", sheet.get().name()));
  }

  private Optional<SurveySheet> read(Form form, Ground ground, Optional<SurveySheet> before) {
    return SurveyForm.read(form, ground, before, readings.names(), readings.regions(), LocalDate.now(clock));
  }

  private SurveySheet sheet(Context ctx) {
    return readings.surveys().find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void show(Context ctx, Form form, Ground ground, Optional<SurveySheet> before) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("ground", ground);
    model.put("isNew", before.isEmpty());
    model.put("name", before.map(SurveySheet::name).orElse(""));
    model.put("cancel", before.map(s -> "/surveys/" + s.id()).orElse(ground.path() + "/surveys"));
    model.put("plotLabel", SurveyForm.isSquareFeet(form) ? "survey.plot.us" : "survey.plot.metric");
    model.put("scales", SurveyForm.SCALES.stream().map(CoverScale::key).toList());
    model.put("classes", SurveyForm.classes(pages.messages()));
    model.put("regions", Stream.concat(Stream.of(""), readings.regions().stream().map(WetlandRegion::key)).toList());
    model.put("plantProblems", SurveyForm.plantProblems(form, pages.messages()));
    if (form.isRefused()) {
      pages.refuse(ctx, "survey/form", model);
    } else {
      pages.show(ctx, "survey/form", model);
    }
  }
}
