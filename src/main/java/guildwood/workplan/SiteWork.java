package guildwood.workplan;

import guildwood.kernel.Finding;
import guildwood.materials.Need;
import guildwood.materials.Share;
import guildwood.materials.SiteNeeds;
import guildwood.materials.Target;
import guildwood.species.Layer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Works out what is left to do on a site, from what the plans ask for and what is there already. A task only
 * ever waits for tasks of an earlier kind, or for the layer below its own, so nothing can wait in a circle.
 */
public final class SiteWork {
  static final String ASK = "ask";
  /** Marks on the ground and the answers of the services run out; how soon differs from place to place. */
  private static final int ASKED_LASTS_DAYS = 28;
  /** Early enough for the answers, late enough that they still hold when the digging begins. */
  private static final int ASK_AHEAD_DAYS = 21;
  private static final List<InSeason> ANY_TIME = List.of(InSeason.ALWAYS);
  private static final List<InSeason> GROUND_OPEN = List.of(InSeason.GROUND_OPEN);
  private static final int ASK_MINUTES = 30;
  private static final int BUY_MINUTES = 2;
  private static final int TAKE_UP_MINUTES = 3;
  private static final int WATER_MINUTES = 1;

  private final GardenYear year;
  private final LocalDate today;
  private final WorkSettings settings;
  private final List<Done> done;
  private final Map<String, WorkTask> tasks = new LinkedHashMap<>();
  private final Map<String, Double> atHand = new HashMap<>();

  private SiteWork(GardenYear year, LocalDate today, WorkSettings settings, List<Done> done) {
    this.year = year;
    this.today = today;
    this.settings = settings;
    this.done = done;
  }

  /**
   * @param needs of the site's beds and paths
   * @param jobs the plants of all its beds, in the order in which the beds get what is on hand
   * @param done on the site so far
   */
  public static WorkPlan of(GardenYear year, LocalDate today, WorkSettings settings, SiteNeeds needs, List<PlantJob> jobs, List<Done> done) {
    SiteWork work = new SiteWork(year, today, settings, done);
    work.ask(needs, jobs);
    work.coverings(needs);
    jobs.forEach(work::raising);
    jobs.forEach(work::buying);
    for (WorkKind turn : List.of(WorkKind.PLANT_FIRST, WorkKind.PLANT, WorkKind.PLANT_TENDER, WorkKind.PLANT_COVER)) {
      jobs.stream().filter(job -> job.turn() == turn).forEach(work::planting);
    }
    work.watering(jobs);
    return new WorkPlan(work.inOrder(), work.atHand);
  }

  private void ask(SiteNeeds needs, List<PlantJob> jobs) {
    Optional<LocalDate> firstDigging = Stream.concat(
            jobs.stream().filter(job -> job.provision().added() > 0).map(PlantJob::season),
            needs.needs().stream().filter(need -> !need.done() && need.target().kind() == Target.Kind.PATH).map(need -> InSeason.GROUND_OPEN))
        .map(season -> year.next(List.of(season), today).from()).min(Comparator.naturalOrder());
    boolean asked = done.stream().anyMatch(d -> d.kind() == WorkKind.ASK_ABOUT_LINES && !d.on().plusDays(ASKED_LASTS_DAYS).isBefore(today));
    if (firstDigging.isPresent() && !asked) {
      LocalDate from = later(today, firstDigging.get().minusDays(ASK_AHEAD_DAYS));
      add(new WorkTask(ASK, WorkKind.ASK_ABOUT_LINES, "", "", "", 0, 1, Count.ONCE, ASK_MINUTES, ANY_TIME, year.next(ANY_TIME, from),
          Set.of(), "", List.of(Finding.of("work.lines", ""))));
    }
  }

  /** A bed waits for the paths that come before it in the owner's order, and every layer for the one below it. */
  private void coverings(SiteNeeds needs) {
    List<String> pathsBefore = new ArrayList<>();
    for (Share share : needs.shares()) {
      Need need = share.need();
      boolean path = need.target().kind() == Target.Kind.PATH;
      Set<String> after = new TreeSet<>(path ? List.of(ASK) : pathsBefore);
      needs.needs().stream().filter(other -> other != need && other.target().equals(need.target()) && other.material().inSheets()
          && !need.material().inSheets()).map(SiteWork::key).forEach(after::add);
      if (!need.done()) {
        add(new WorkTask(key(need), path ? WorkKind.COVER_PATH : WorkKind.COVER_BED, need.name(), "", "", path ? 0 : need.target().id(),
            need.left(), need.material().inSheets() ? Count.SHEETS : Count.CUBIC_METRES, needs.settings().minutes(need.material(), 1),
            GROUND_OPEN, window(GROUND_OPEN, after, today), known(after), need.material().key(), List.of(Finding.of(need.material().inSheets() ? "work.card" : "work.lifting", ""))));
        atHand.put(key(need), share.there());
      }
      if (path) {
        pathsBefore.add(key(need));
      }
    }
  }

  private void raising(PlantJob job) {
    int plants = job.provision().propagate();
    if (plants == 0) {
      return;
    }
    Optional<RaisingPlan> plan = RaisingPlan.of(job.species(), job.layer());
    String key = key("start", job);
    List<Done> begun = done.stream().filter(d -> d.taskKey().equals(key)).toList();
    int starts = plan.map(p -> RaisingPlan.starts(plants, settings.take(p.way()))).orElse(plants)
        - (int) begun.stream().mapToDouble(Done::amount).sum();
    Optional<LocalDate> last = begun.stream().map(Done::on).max(Comparator.naturalOrder());
    int months = plan.map(RaisingPlan::months).orElse(0);
    LocalDate ready = last.map(day -> day.plusMonths(months)).orElse(today);
    if (starts > 0) {
      List<InSeason> seasons = plan.map(RaisingPlan::seasons).orElse(ANY_TIME);
      Window window = year.next(seasons, today);
      add(task(key, WorkKind.START_PLANTS, job, starts, Count.STARTS, plan.map(p -> p.way().minutes()).orElse(ASK_MINUTES), seasons, window, Set.of(),
          plan.map(p -> p.way().key()).orElse("unknown"), adviceOnRaising(job, plan)));
      ready = window.from().plusMonths(months);
    }
    Set<String> after = Set.of(key);
    add(task(key("take-up", job), WorkKind.TAKE_UP_PLANTS, job, plants, Count.PLANTS, TAKE_UP_MINUTES,
        List.of(job.season()), window(List.of(job.season()), after, later(ready, today)), known(after), "", job.care()));
  }

  private static List<Finding> adviceOnRaising(PlantJob job, Optional<RaisingPlan> plan) {
    List<Finding> advice = new ArrayList<>(job.care());
    if (plan.isEmpty()) {
      advice.add(Finding.of("work.no-way-known", ""));
    } else if (!plan.get().fromLibrary()) {
      advice.add(Finding.of("work.usual-season", ""));
      if (plan.get().way() == Raising.SEED && job.layer().compareTo(Layer.CLIMBER) <= 0) {
        advice.add(Finding.of("work.cold-seed", ""));
      }
    }
    return advice;
  }

  private void buying(PlantJob job) {
    if (job.provision().buy() > 0) {
      add(task(key("buy", job), WorkKind.BUY_PLANTS, job, job.provision().buy(), Count.PLANTS, BUY_MINUTES, ANY_TIME, year.next(ANY_TIME, today),
          Set.of(), "", job.care().stream().filter(f -> f.code().equals("work.law")).toList()));
    }
  }

  private void planting(PlantJob job) {
    Set<String> before = new TreeSet<>(List.of(ASK));
    for (WorkTask task : tasks.values()) {
      boolean ground = task.kind() == WorkKind.COVER_BED;
      boolean earlierTurn = task.kind().isPlanting() && task.kind().compareTo(job.turn()) < 0 && !task.detail().equals("raised");
      if (task.bedId() == job.bed().id() && (ground || earlierTurn)) {
        before.add(task.key());
      }
    }
    plant(job, "have", job.provision().have(), before, Optional.empty());
    plant(job, "buy", job.provision().buy(), before, Optional.of(key("buy", job)));
    plant(job, "raised", job.provision().propagate(), before, Optional.of(key("take-up", job)));
  }

  private void plant(PlantJob job, String from, int plants, Set<String> before, Optional<String> first) {
    if (plants == 0) {
      return;
    }
    Set<String> after = new TreeSet<>(before);
    first.ifPresent(after::add);
    String key = key("plant", job) + "." + from;
    add(task(key, job.turn(), job, plants, Count.PLANTS, settings.plantingMinutes(job.layer()),
        List.of(job.season()), window(List.of(job.season()), after, today), known(after), from, job.care()));
    atHand.put(key, from.equals("have") ? (double) plants : 0);
  }

  /** New plants want water every week of their first summer, from the first of them on. */
  private void watering(List<PlantJob> jobs) {
    for (PlantJob job : jobs) {
      String key = "water.bed-" + job.bed().id();
      List<WorkTask> planted = tasks.values().stream()
          .filter(t -> t.kind().isPlanting() && t.bedId() == job.bed().id() && !t.detail().equals("raised")).toList();
      if (tasks.containsKey(key) || planted.isEmpty()) {
        continue;
      }
      LocalDate from = planted.stream().map(t -> t.window().from()).min(Comparator.naturalOrder()).orElseThrow();
      int season = year.hemisphere().yearOf(from);
      boolean tooLate = !year.firstAutumnFrost(season).isAfter(from);
      Window window = tooLate ? new Window(year.lastSpringFrost(season + 1), year.firstAutumnFrost(season + 1))
          : new Window(from, year.firstAutumnFrost(season));
      Set<String> first = new TreeSet<>(planted.stream().filter(t -> t.window().from().equals(from)).map(WorkTask::key).toList());
      double plants = planted.stream().mapToDouble(WorkTask::amount).sum();
      add(new WorkTask(key, WorkKind.WATER, job.bed().name(), "", "", job.bed().id(), plants, Count.PLANTS, WATER_MINUTES, ANY_TIME, window,
          first, "", List.of(Finding.of("work.water", ""))));
    }
  }

  private static WorkTask task(String key, WorkKind kind, PlantJob job, double amount, Count count, double minutes,
      List<InSeason> seasons, Window window, Set<String> after, String detail, List<Finding> advice) {
    return new WorkTask(key, kind, job.bed().name(), job.species().name(), job.species().id(), job.bed().id(), amount, count, minutes,
        seasons, window, after, detail, advice);
  }

  private void add(WorkTask task) {
    if (tasks.put(task.key(), task) != null) {
      throw new IllegalStateException(task.key() + " twice");
    }
  }

  /** Only what is still to be done is waited for. */
  private Set<String> known(Set<String> keys) {
    Set<String> known = new TreeSet<>(keys);
    known.retainAll(tasks.keySet());
    return known;
  }

  /** The next season that begins no sooner than a day, nor than any of what comes first. */
  private Window window(List<InSeason> seasons, Set<String> after, LocalDate day) {
    LocalDate from = day;
    for (String key : known(after)) {
      from = later(from, tasks.get(key).window().from());
    }
    return year.next(seasons, from);
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  /** The key of the task that meets a need. */
  public static String key(Need need) {
    return "cover." + need.key();
  }

  private static String key(String what, PlantJob job) {
    return what + ".bed-" + job.bed().id() + "." + job.species().id();
  }

  /** Every task after those it waits for; among those free to begin, the earliest season first, then what must come first. */
  private List<WorkTask> inOrder() {
    Comparator<WorkTask> first = Comparator.<WorkTask, LocalDate>comparing(task -> task.window().from())
        .thenComparing(WorkTask::kind).thenComparing(WorkTask::place).thenComparing(WorkTask::key);
    Map<String, Set<String>> waitsFor = new HashMap<>();
    PriorityQueue<WorkTask> free = new PriorityQueue<>(first);
    for (WorkTask task : tasks.values()) {
      waitsFor.put(task.key(), new HashSet<>(task.after()));
      if (task.after().isEmpty()) {
        free.add(task);
      }
    }
    List<WorkTask> order = new ArrayList<>();
    while (!free.isEmpty()) {
      WorkTask next = free.poll();
      order.add(next);
      for (WorkTask task : tasks.values()) {
        Set<String> left = waitsFor.get(task.key());
        if (left.remove(next.key()) && left.isEmpty()) {
          free.add(task);
        }
      }
    }
    if (order.size() < tasks.size()) {
      throw new IllegalStateException("tasks wait for one another in a circle: " + tasks.keySet());
    }
    return order;
  }
}
