package guildwood.bed.survey.web;

import guildwood.bed.Beds;
import guildwood.bed.SurveyReadings;
import guildwood.kernel.Finding;
import guildwood.site.Sites;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.IndicatorLibrary.Form;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.IndicatorLibrary.Region;
import guildwood.site.survey.SurveySheet;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Ticking what grows wild around here in a list with plain descriptions: a survey without covers. */
public final class PickPages implements Routes {
  private static final int LONGEST_SEARCH = 100;

  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final SurveyReadings readings;
  private final Clock clock;

  public PickPages(Pages pages, Sites sites, Beds beds, SurveyReadings readings, Clock clock) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.readings = readings;
    this.clock = clock;
  }

  /** A plant to tick. */
  public record Choice(String species, String name, String description, boolean ticked, boolean there) {}

  /** The plants of one kind. */
  public record Kind(String key, List<Choice> plants) {}

  @Override
  public void addTo(RoutesConfig routes) {
    for (String ground : List.of("/beds/{id}", "/sites/{id}")) {
      routes.get(ground + "/surveys/pick", ctx -> show(ctx, Ground.of(ctx, sites, beds), Optional.empty(), false), Access.OWNER);
      routes.post(ground + "/surveys/pick", this::start, Access.OWNER);
    }
    routes.get("/surveys/{id}/pick", ctx -> showFor(ctx, sheet(ctx), false), Access.OWNER);
    routes.post("/surveys/{id}/pick", this::add, Access.OWNER);
  }

  private SurveySheet sheet(Context ctx) {
    return readings.surveys().find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void start(Context ctx) {
    Ground ground = Ground.of(ctx, sites, beds);
    List<String> ticked = ticked(ctx);
    if (ticked.isEmpty()) {
      show(ctx, ground, Optional.empty(), true);
      return;
    }
    SurveySheet sheet = new SurveySheet(0, ground.site().id(), ground.bedId(), pages.messages().say("pick.survey-name"),
        Optional.of(LocalDate.now(clock)), OptionalDouble.empty(), CoverScale.PERCENT, Optional.empty(), "", List.of()).withPicked(ticked);
    long id = readings.surveys().add(sheet).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/surveys/" + id, Finding.of("done.plants-picked", "", sheet.rows().size()));
  }

  private void add(Context ctx) {
    SurveySheet before = sheet(ctx);
    List<String> ticked = ticked(ctx);
    if (ticked.isEmpty()) {
      showFor(ctx, before, true);
      return;
    }
    SurveySheet after = readings.surveys().change(before.id(), now -> now.withPicked(ticked)).orElseThrow(NotFoundResponse::new);
    pages.goOn(ctx, "/surveys/" + before.id(), Finding.of("done.plants-picked", "", after.rows().size() - before.rows().size()));
  }

  /** Ticked plants that the list has; anything else in the form is no plant of it. */
  private List<String> ticked(Context ctx) {
    return ctx.formParams("plant").stream().filter(p -> readings.names().plant(p).isPresent()).distinct().toList();
  }

  private void showFor(Context ctx, SurveySheet sheet, boolean nothingTicked) {
    show(ctx, Ground.of(sheet, sites, beds), Optional.of(sheet), nothingTicked);
  }

  private void show(Context ctx, Ground ground, Optional<SurveySheet> sheet, boolean nothingTicked) {
    Region region = region(ctx, ground);
    String search = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
    boolean tooLong = search.length() > LONGEST_SEARCH;
    List<Kind> kinds = kinds(tooLong ? List.of() : readings.names().search(search, region), sheet);
    Map<String, Object> model = new HashMap<>();
    model.put("ground", ground);
    model.put("isNew", sheet.isEmpty());
    model.put("surveyName", sheet.map(SurveySheet::name).orElse(""));
    model.put("back", sheet.map(s -> "/surveys/" + s.id()).orElse(ground.path() + "/surveys"));
    model.put("region", region.name().toLowerCase(Locale.ROOT));
    model.put("regions", Arrays.stream(Region.values()).map(r -> r.name().toLowerCase(Locale.ROOT)).toList());
    model.put("q", search);
    model.put("searchProblem", tooLong ? pages.messages().say("finding.text.too-long", LONGEST_SEARCH) : "");
    model.put("kinds", kinds);
    model.put("count", kinds.stream().mapToInt(k -> k.plants().size()).sum());
    model.put("nothingTicked", nothingTicked);
    if (nothingTicked || tooLong) {
      pages.refuse(ctx, "survey/pick", model);
    } else {
      pages.show(ctx, "survey/pick", model);
    }
  }

  private List<Kind> kinds(List<Plant> plants, Optional<SurveySheet> sheet) {
    List<Kind> kinds = new ArrayList<>();
    for (Form form : Form.values()) {
      List<Choice> choices = plants.stream().filter(p -> p.form() == form).map(p -> choice(p, sheet)).toList();
      if (!choices.isEmpty()) {
        kinds.add(new Kind(form.name().toLowerCase(Locale.ROOT), choices));
      }
    }
    return kinds;
  }

  private static Choice choice(Plant plant, Optional<SurveySheet> sheet) {
    boolean there = sheet.stream().flatMap(s -> s.rows().stream()).anyMatch(r -> r.taken().equals(Optional.of(plant.species())));
    return new Choice(plant.species(), plant.commonName(), plant.description(), there, there);
  }

  /** As chosen; otherwise by the site's country: North America, or Europe where another country is told. */
  private static Region region(Context ctx, Ground ground) {
    String wanted = Optional.ofNullable(ctx.queryParam("region")).or(() -> Optional.ofNullable(ctx.formParam("region"))).orElse("");
    String place = ground.site().place();
    boolean america = place.isEmpty() || place.startsWith("US") || place.startsWith("CA");
    return Arrays.stream(Region.values()).filter(r -> r.name().equalsIgnoreCase(wanted)).findFirst()
        .orElse(america ? Region.EASTERN_NORTH_AMERICA : Region.NORTH_WEST_EUROPE);
  }
}
