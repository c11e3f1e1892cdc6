package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Composer;
import guildwood.guild.Composition;
import guildwood.guild.Effort;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Progress;
import guildwood.web.Tokens;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Compositions and gaps under way or done, off the request thread; the oldest are forgotten. */
public final class Compositions implements AutoCloseable {
  static final int PROPOSALS = 5;
  private static final Logger LOG = LoggerFactory.getLogger(Compositions.class);
  private static final int KEPT = 20;
  /** One seed for all: the same bed, wishes and library give the same proposals. */
  private static final long SEED = 1;

  private final ExecutorService workers = Executors.newFixedThreadPool(2, work -> {
    Thread thread = new Thread(work, "composer");
    thread.setDaemon(true);
    return thread;
  });

  private final KnownGaps knownGaps = new KnownGaps(workers);

  private final Map<String, Run> runs = new LinkedHashMap<>() {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<String, Run> eldest) {
      boolean tooMany = size() > KEPT;
      if (tooMany) {
        eldest.getValue().cancel();
      }
      return tooMany;
    }
  };

  /** Starts composing and returns the key under which it can be watched. */
  String start(BedPlan plan, GuildProblem problem) {
    return start(plan, problem, Guild.EMPTY);
  }

  /**
   * The same where a draft is to be filled up.
   *
   * @param held what the problem keeps in every proposal because the draft has it
   */
  String start(BedPlan plan, GuildProblem problem, Guild held) {
    String key = Tokens.fresh();
    Run run = new Run(plan, problem, held);
    synchronized (runs) {
      runs.put(key, run);
    }
    workers.submit(run::work);
    return key;
  }

  Optional<Run> find(String key, long bedId) {
    synchronized (runs) {
      return Optional.ofNullable(runs.get(key)).filter(run -> run.plan.bed().id() == bedId);
    }
  }

  /** The composition of a bed that was started last and is still kept. */
  Optional<String> latest(long bedId) {
    synchronized (runs) {
      return runs.entrySet().stream().filter(e -> e.getValue().plan.bed().id() == bedId).map(Map.Entry::getKey)
          .reduce((earlier, later) -> later);
    }
  }

  /** The gaps of any guild, worked out beside the compositions. */
  KnownGaps.Answer gaps(GuildProblem problem, Guild guild) {
    return knownGaps.of(problem, guild);
  }

  @Override
  public void close() {
    synchronized (runs) {
      runs.values().forEach(Run::cancel);
    }
    workers.shutdownNow();
  }

  /** One composition: what it works on, how far it is, and what came of it. */
  static final class Run implements Progress {
    private final BedPlan plan;
    private final GuildProblem problem;
    private final Guild held;
    private volatile boolean cancelled;
    private volatile State state = new State(0, Optional.empty(), 0, Optional.empty(), false);

    Run(BedPlan plan, GuildProblem problem, Guild held) {
      this.plan = plan;
      this.problem = problem;
      this.held = held;
    }

    /** What a draft holds that is filled up; empty where a guild is composed from the start. */
    Guild held() {
      return held;
    }

    BedPlan plan() {
      return plan;
    }

    GuildProblem problem() {
      return problem;
    }

    State state() {
      return state;
    }

    void cancel() {
      cancelled = true;
    }

    @Override
    public void at(int percent, Guild best, int totalMilli) {
      state = new State(percent, Optional.of(best), totalMilli, Optional.empty(), false);
    }

    @Override
    public boolean isCancelled() {
      return cancelled;
    }

    private void work() {
      try {
        Composition found = new Composer(Effort.USUAL).compose(problem, SEED, PROPOSALS, this);
        state = new State(100, Optional.of(found.best().guild()), found.best().score().totalMilli(), Optional.of(found), false);
      } catch (RuntimeException e) {
        LOG.error("composing for bed {} failed", plan.bed().id(), e);
        state = new State(100, Optional.empty(), 0, Optional.empty(), true);
      }
    }
  }

  /**
   * How far a composition is.
   *
   * @param best so far
   * @param composition once it is done
   */
  record State(int percent, Optional<Guild> best, int totalMilli, Optional<Composition> composition, boolean failed) {
    boolean isDone() {
      return composition.isPresent() || failed;
    }
  }
}
