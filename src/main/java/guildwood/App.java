package guildwood;

import guildwood.account.Accounts;
import guildwood.account.store.SqlAccounts;
import guildwood.account.web.Gate;
import guildwood.account.web.SignInPages;
import guildwood.bed.Beds;
import guildwood.bed.NearPlants;
import guildwood.bed.Outlines;
import guildwood.bed.SurveyReadings;
import guildwood.bed.store.SqlBeds;
import guildwood.bed.store.SqlNearPlants;
import guildwood.bed.store.SqlOutlines;
import guildwood.bed.store.SqlSurroundings;
import guildwood.bed.survey.web.PickPages;
import guildwood.bed.survey.web.SurveyFormPages;
import guildwood.bed.survey.web.SurveyPages;
import guildwood.bed.sun.SunScenes;
import guildwood.bed.sun.Surroundings;
import guildwood.bed.sun.web.NearbyPages;
import guildwood.bed.sun.web.SkylinePages;
import guildwood.bed.sun.web.SunPages;
import guildwood.bed.web.BedFormPages;
import guildwood.bed.web.BedPages;
import guildwood.bed.web.HomePages;
import guildwood.bed.web.NearPlantPages;
import guildwood.bed.web.SitePages;
import guildwood.choosing.BedChoices;
import guildwood.choosing.web.LibraryPages;
import guildwood.drawing.Drawings;
import guildwood.drawing.store.SqlBedSpots;
import guildwood.drawing.web.DrawingPages;
import guildwood.exporting.web.TakePages;
import guildwood.exporting.web.Takeable;
import guildwood.guild.Guilds;
import guildwood.guild.store.SqlGuilds;
import guildwood.guild.web.ComparePages;
import guildwood.guild.web.Compositions;
import guildwood.guild.web.Desk;
import guildwood.guild.web.DraftPages;
import guildwood.guild.web.Drafts;
import guildwood.guild.web.GuildPages;
import guildwood.guild.web.ProposalPages;
import guildwood.guild.web.WhyPages;
import guildwood.guild.web.WishPages;
import guildwood.importing.store.SqlImportDrafts;
import guildwood.importing.store.SqlImports;
import guildwood.importing.web.ImportDesk;
import guildwood.importing.web.ImportJobs;
import guildwood.importing.web.ImportRoutes;
import guildwood.materials.MaterialLosses;
import guildwood.materials.MaterialRecords;
import guildwood.materials.Needs;
import guildwood.materials.store.SqlMaterialRecords;
import guildwood.materials.web.MaterialPages;
import guildwood.materials.web.MaterialSettingsPages;
import guildwood.materials.web.PlacePages;
import guildwood.materials.web.RunoffPages;
import guildwood.sharing.ShareLinks;
import guildwood.sharing.store.SqlShareLinks;
import guildwood.sharing.web.SharePages;
import guildwood.sharing.web.SharedPage;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.exchange.IndicatorFiles;
import guildwood.site.store.SqlSites;
import guildwood.site.store.SqlSurveys;
import guildwood.site.web.SiteFormPages;
import guildwood.siteplan.PlanDesk;
import guildwood.siteplan.PlanRecords;
import guildwood.siteplan.store.SqlPlanRecords;
import guildwood.siteplan.store.SqlPlanSheets;
import guildwood.siteplan.web.GeoPages;
import guildwood.siteplan.web.PicturePages;
import guildwood.siteplan.web.PlanPages;
import guildwood.siteplan.web.ShapePages;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.species.web.BinPages;
import guildwood.species.web.SourcePages;
import guildwood.species.web.SpeciesNamesPages;
import guildwood.species.web.SpeciesPages;
import guildwood.species.web.SpeciesTableRoute;
import guildwood.species.web.StatementPages;
import guildwood.store.Database;
import guildwood.web.Access;
import guildwood.web.Csrf;
import guildwood.web.Messages;
import guildwood.web.Pages;
import guildwood.web.Problems;
import guildwood.web.Routes;
import guildwood.web.Templates;
import guildwood.web.Tokens;
import guildwood.web.UnitsPages;
import guildwood.web.Uploads;
import guildwood.workplan.WorkRecords;
import guildwood.workplan.store.SqlWork;
import guildwood.workplan.web.CalendarRoute;
import guildwood.workplan.web.NowPages;
import guildwood.workplan.web.PlantsPages;
import guildwood.workplan.web.ShoppingListRoute;
import guildwood.workplan.web.WorkDesk;
import guildwood.workplan.web.WorkPages;
import guildwood.workplan.web.WorkSettingsPages;
import io.javalin.Javalin;
import io.javalin.http.staticfiles.Location;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/** Wires the parts together and serves them. The only class that names both pages and stores. */
public final class App implements AutoCloseable {
  private final Settings settings;
  private final Javalin server;
  private final List<String> greeting;
  private final List<Runnable> endings;

  /** @param endings what ends what was begun, once no more requests are answered, in this order */
  private App(Settings settings, Javalin server, List<String> greeting, List<Runnable> endings) {
    this.settings = settings;
    this.server = server;
    this.greeting = List.copyOf(greeting);
    this.endings = List.copyOf(endings);
  }

  /** Opens the database and serves the pages until {@link #close}. */
  public static App start(Settings settings) {
    Database database = settings.demo() ? Database.inMemory() : Database.open(settings.dataDirectory());
    FileRoom files = FileRoom.of(settings);
    try {
      return start(settings, database, files);
    } catch (RuntimeException e) {
      database.close();
      files.close();
      throw e;
    }
  }

  private static App start(Settings settings, Database database, FileRoom files) {
    Clock clock = Clock.systemUTC();
    Messages messages = new Messages();
    Csrf csrf = new Csrf();
    Pages pages = new Pages(new Templates(messages), messages, csrf, settings.demo());
    Uploads uploads = new Uploads(files.of("incoming"));
    Accounts accounts = new SqlAccounts(database);
    SqlSpeciesRecords species = new SqlSpeciesRecords(database);
    FirstFilling.fill(species, messages, FirstFilling.SEED);
    Sites sites = new SqlSites(database);
    Beds beds = new SqlBeds(database);
    NearPlants nearPlants = new SqlNearPlants(database);
    Surroundings surroundings = new SqlSurroundings(database);
    Outlines outlines = new SqlOutlines(database);
    PlanRecords plans = new SqlPlanRecords(database, outlines);
    PlanDesk planDesk = new PlanDesk(sites, beds, outlines, surroundings, plans, new SqlPlanSheets(database));
    SunScenes scenes = new SunScenes(sites, beds, surroundings, outlines, clock);
    Guilds guilds = new SqlGuilds(database);
    ShareLinks links = new SqlShareLinks(database);
    MaterialRecords materials = new SqlMaterialRecords(database);
    WorkRecords work = new SqlWork(database);
    Needs needs = new Needs(beds, plans, guilds, species::library, materials);
    Desk desk = new Desk(sites, beds, nearPlants, species, guilds);
    Compositions compositions = new Compositions();
    SurveyReadings readings = new SurveyReadings(new SqlSurveys(database), IndicatorFiles.read());
    if (settings.demo()) {
      DemoSite.fill(sites, beds, surroundings, species, guilds, desk, clock);
      DemoSurveys.fill(beds, readings);
      DemoPlan.fill(sites, beds, outlines, plans);
      DemoWork.fill(sites, work);
      DemoMaterials.fill(sites, beds, plans, materials, needs);
    }
    WorkDesk workDesk = new WorkDesk(sites, beds, guilds, species, needs, materials, work, clock);
    String setupToken = Tokens.fresh();

    List<Routes> routes = new ArrayList<>();
    routes.add(new Gate(accounts, csrf, clock, settings.demo(), settings.loopbackOnly()));
    routes.add(new Problems(pages));
    routes.add(new UnitsPages());
    routes.add(new SignInPages(pages, accounts, clock, setupToken));
    routes.add(new LibraryPages(pages, species::library, BedChoices.of(sites, beds)));
    routes.add(new HomePages(pages, sites, beds, species::library));
    // The first route that matches answers: /sites/new before /sites/{id}.
    routes.add(new SiteFormPages(pages, sites));
    routes.add(new SitePages(pages, sites, beds, surroundings, readings.surveys(), site -> MaterialLosses.of(materials, site)));
    BedPages bedPages = new BedPages(pages, sites, beds, nearPlants, surroundings, species::library, readings);
    routes.add(bedPages);
    routes.add(new NearPlantPages(pages, bedPages, nearPlants, species::library));
    routes.add(new BedFormPages(pages, sites, beds, outlines));
    routes.add(new SunPages(pages, scenes, beds));
    routes.add(new NearbyPages(pages, scenes, surroundings));
    routes.add(new SkylinePages(pages, scenes, surroundings));
    PlanPages planPages = new PlanPages(pages, planDesk);
    routes.add(planPages);
    routes.add(new PicturePages(pages, planPages, uploads));
    routes.add(new ShapePages(pages, planPages));
    routes.add(new GeoPages(pages, planPages, uploads));
    routes.add(new SurveyFormPages(pages, sites, beds, readings, clock));
    routes.add(new PickPages(pages, sites, beds, readings, clock));
    routes.add(new SurveyPages(pages, sites, beds, readings));
    Drafts drafts = new Drafts();
    routes.add(new WishPages(pages, desk, drafts));
    routes.add(new ProposalPages(pages, desk, compositions, drafts, clock));
    routes.add(new ComparePages(pages, desk, drafts, compositions));
    routes.add(new WhyPages(pages, desk, drafts, compositions));
    routes.add(new DraftPages(pages, desk, drafts, compositions, clock));
    routes.add(new GuildPages(pages, desk, drafts, compositions));
    Drawings drawings = new Drawings(scenes, plans, new SqlBedSpots(database));
    routes.add(new DrawingPages(pages, desk, drawings));
    AtomicReference<String> address = new AtomicReference<>("");
    routes.add(new SharePages(pages, desk, links, clock, address::get));
    routes.add(new SharedPage(pages, desk, links, drawings, workDesk, clock));
    routes.add(new WorkPages(pages, workDesk));
    routes.add(new NowPages(pages, workDesk));
    routes.add(new PlantsPages(pages, workDesk));
    routes.add(new WorkSettingsPages(pages, workDesk));
    routes.add(new CalendarRoute(workDesk, messages));
    routes.add(new ShoppingListRoute(workDesk, messages));
    routes.add(new MaterialPages(pages, sites, needs, materials, clock));
    routes.add(new PlacePages(pages, sites, needs, materials, clock));
    routes.add(new MaterialSettingsPages(pages, sites, materials));
    routes.add(new RunoffPages(pages, sites, plans));
    routes.add(new SpeciesNamesPages(pages, species));
    routes.add(new StatementPages(pages, species));
    routes.add(new SpeciesTableRoute(species::library));
    routes.add(new TakePages(pages, species, BedChoices.of(sites, beds), () -> takeables(sites, beds)));
    routes.add(new SpeciesPages(pages, species));
    routes.add(new SourcePages(pages, species));
    routes.add(new BinPages(pages, species));
    ImportJobs importJobs = new ImportJobs();
    routes.add(new ImportRoutes(pages, uploads, new ImportDesk(new SqlImportDrafts(database), new SqlImports(database, species), importJobs,
        species::library, files.of("imports"), clock), species));

    Javalin server = serve(settings, routes);
    address.set(address(settings, server.port()));
    List<String> greeting = new ArrayList<>(List.of("Guildwood is at " + address.get() + "/"));
    if (!settings.demo() && !accounts.anyExists()) {
      greeting.add("Choose the owner's name and password here, once: " + address.get() + "/setup/" + setupToken);
    }
    return new App(settings, server, greeting, List.of(compositions::close, importJobs::close, database::close, files::close));
  }

  /** What can be taken away beside the library, site by site and bed by bed; each feature adds its lines. */
  private static List<Takeable> takeables(Sites sites, Beds beds) {
    List<Takeable> all = new ArrayList<>();
    for (Site site : sites.all()) {
      String at = "/sites/" + site.id();
      if (site.latitudeDegrees().isPresent() && site.longitudeDegrees().isPresent()) {
        all.add(new Takeable("take.plan", "take.plan.help", site.name(), at + "/plan.geojson"));
      }
      all.add(new Takeable("take.calendar", "take.calendar.help", site.name(), at + "/work.ics"));
      all.add(new Takeable("take.shopping", "take.shopping.help", site.name(), at + "/shopping.csv"));
    }
    // A drawing is chosen on its page: the year, and whether there is one yet.
    beds.all().forEach(bed -> all.add(new Takeable("take.drawing", "take.drawing.help", bed.name(), "/beds/" + bed.id() + "/drawing")));
    return all;
  }

  private static Javalin serve(Settings settings, List<Routes> routes) {
    return Javalin.create(config -> {
      config.startup.showJavalinBanner = false;
      config.startup.showOldJavalinVersionWarning = false;
      config.http.maxRequestSize = 1_000_000;
      config.http.prefer405over404 = true;
      config.jetty.host = settings.host();
      config.jetty.port = settings.port();
      staticFiles(config, "/static", "/guildwood/static");
      staticFiles(config, "/htmx", "/META-INF/resources/webjars/htmx.org/2.0.10");
      routes.forEach(r -> r.addTo(config.routes));
    }).start();
  }

  private static void staticFiles(io.javalin.config.JavalinConfig config, String path, String directory) {
    config.staticFiles.add(files -> {
      files.hostedPath = path;
      files.directory = directory;
      files.location = Location.CLASSPATH;
      files.roles = Set.of(Access.ANYONE);
      files.headers = Map.of("Cache-Control", "max-age=3600", "X-Content-Type-Options", "nosniff");
    });
  }

  private static String address(Settings settings, int port) {
    if (!settings.publicAddress().isEmpty()) {
      return settings.publicAddress();
    }
    String host = settings.host().contains(":") && !settings.host().startsWith("[") ? "[" + settings.host() + "]" : settings.host();
    return "http://" + host + ":" + port;
  }

  /** The sentences to print once the pages are served. */
  public List<String> greeting() {
    return greeting;
  }

  public int port() {
    return server.port();
  }

  public Settings settings() {
    return settings;
  }

  @Override
  public void close() {
    server.stop();
    endings.forEach(Runnable::run);
  }
}
