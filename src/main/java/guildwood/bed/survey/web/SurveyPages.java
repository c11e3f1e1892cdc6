package guildwood.bed.survey.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.Evidence;
import guildwood.bed.SurveyReadings;
import guildwood.kernel.Finding;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.SurveyAxis;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.site.survey.web.AxisWords;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

/** Surveys of a site or bed, what each says, taking over what it says, and removing it. */
public final class SurveyPages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final SurveyReadings readings;

  public SurveyPages(Pages pages, Sites sites, Beds beds, SurveyReadings readings) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.readings = readings;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}/surveys", this::list, Access.OWNER);
    routes.get("/sites/{id}/surveys", this::list, Access.OWNER);
    routes.get("/surveys/{id}", this::show, Access.OWNER);
    routes.post("/surveys/{id}/name", this::takeName, Access.OWNER);
    routes.post("/surveys/{id}/use", this::use, Access.OWNER);
    routes.get("/surveys/{id}/remove", this::askToRemove, Access.OWNER);
    routes.post("/surveys/{id}/remove", this::remove, Access.OWNER);
  }

  private SurveySheet sheet(Context ctx) {
    return readings.surveys().find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void list(Context ctx) {
    Ground ground = Ground.of(ctx, sites, beds);
    Map<Long, String> names = beds.ofSite(ground.site().id()).stream().collect(Collectors.toMap(Bed::id, Bed::name));
    List<SurveySheet> sheets = ground.bed().map(b -> readings.surveys().ofBed(b.id()))
        .orElseGet(() -> readings.surveys().ofSite(ground.site().id()));
    List<SurveyLine> lines = sheets.stream().map(s -> SurveyLine.of(s,
        s.bedId().isPresent() ? names.getOrDefault(s.bedId().getAsLong(), "") : "", pages.messages())).toList();
    pages.show(ctx, "survey/list", Map.of("ground", ground, "surveys", lines));
  }

  private void show(Context ctx) {
    SurveySheet sheet = sheet(ctx);
    Ground ground = Ground.of(sheet, sites, beds);
    List<Bed> ofSite = ground.isBed() ? List.of(ground.bed().orElseThrow()) : beds.ofSite(ground.site().id());
    Map<String, Object> model = new HashMap<>();
    model.put("ground", ground);
    model.put("reading", SurveyView.of(sheet, ground, ofSite, readings, Units.of(ctx), pages.messages()));
    pages.show(ctx, "survey/reading", model);
  }

  /** Takes one of the suggested plants for a written name, or takes that back. */
  private void takeName(Context ctx) {
    SurveySheet before = sheet(ctx);
    String written = Optional.ofNullable(ctx.formParam("written")).orElse("");
    String species = Optional.ofNullable(ctx.formParam("species")).orElse("");
    boolean known = species.isEmpty() || readings.names().plant(species).isPresent();
    if (!known || before.rows().stream().noneMatch(r -> r.written().equals(written))) {
      throw new NotFoundResponse();
    }
    Optional<String> taken = Optional.of(species).filter(s -> !s.isEmpty());
    readings.surveys().change(before.id(), now -> now.withRows(now.rows().stream()
        .map((Row r) -> r.written().equals(written) ? r.takenFor(taken) : r).toList())).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/surveys/" + before.id(), taken.isPresent()
        ? Finding.of("done.name-taken", "", written, species) : Finding.of("done.name-open", "", written));
  }

  /** Takes the interval of one axis over as a condition of a bed, unless a measured value stands. */
  private void use(Context ctx) {
    SurveySheet sheet = sheet(ctx);
    SurveyAxis axis = SurveyAxis.ofKey(Optional.ofNullable(ctx.formParam("axis")).orElse("")).orElseThrow(NotFoundResponse::new);
    Bed bed = bedToChange(ctx, sheet);
    Site site = sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new);
    AxisReading reading = readings.read(sheet, axis).orElseThrow(NotFoundResponse::new);
    Condition indicated = reading.condition(entered(sheet)).orElseThrow(NotFoundResponse::new);
    AtomicBoolean outranked = new AtomicBoolean();
    beds.change(bed.id(), now -> {
      // Whether something measured stands is asked of the bed as it is in this moment.
      outranked.set(Evidence.of(sheet, reading, now, site).isOutranked());
      return outranked.get() ? now : now.withCondition(indicated);
    }).orElseThrow(NotFoundResponse::new);
    AxisWords words = new AxisWords(pages.messages());
    pages.goOn(ctx, "/surveys/" + sheet.id(), outranked.get()
        ? Finding.of("done.measured-kept", "", words.label(axis), bed.name())
        : Finding.of("done.indication-used", "", words.label(axis), bed.name(), words.full(axis, indicated.range())));
  }

  private Bed bedToChange(Context ctx, SurveySheet sheet) {
    String typed = Optional.ofNullable(ctx.formParam("bed")).filter(b -> b.matches("\\d{1,18}")).orElseThrow(NotFoundResponse::new);
    Bed bed = beds.find(Long.parseLong(typed)).orElseThrow(NotFoundResponse::new);
    boolean fits = sheet.bedId().isPresent() ? sheet.bedId().getAsLong() == bed.id() : sheet.siteId() == bed.siteId();
    if (!fits) {
      throw new NotFoundResponse();
    }
    return bed;
  }

  private String entered(SurveySheet sheet) {
    List<String> parts = new ArrayList<>(List.of(sheet.name()));
    sheet.date().ifPresent(d -> parts.add(d.toString()));
    return String.join(", ", parts);
  }

  private void askToRemove(Context ctx) {
    SurveySheet sheet = sheet(ctx);
    Ground ground = Ground.of(sheet, sites, beds);
    pages.show(ctx, "survey/remove", Map.of("ground", ground, "survey", SurveyLine.of(sheet, "", pages.messages())));
  }

  private void remove(Context ctx) {
    SurveySheet sheet = sheet(ctx);
    Ground ground = Ground.of(sheet, sites, beds);
    if (!readings.surveys().remove(sheet.id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, ground.path() + "/surveys", Finding.of("done.survey-removed", "", sheet.name()));
  }
}
