package guildwood.guild.web;

import guildwood.guild.Evaluator;
import guildwood.guild.Gap;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Questions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The gaps of the guilds looked at last. Each closer of a gap is a composition of its own, seconds of work in all, so
 * they are worked out off the request thread; the same guild of the same problem has the same gaps until something
 * changes.
 */
final class KnownGaps {
  private static final Logger LOG = LoggerFactory.getLogger(KnownGaps.class);
  private static final int KEPT = 20;
  private static final long SEED = 1;

  /** Gaps that are known within this are shown at once. */
  private static final long SHORT_WAIT_MS = 150;

  private final Executor workers;

  private final Map<Asked, CompletableFuture<List<Gap>>> known = new LinkedHashMap<>(KEPT, 0.75f, true) {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Asked, CompletableFuture<List<Gap>>> eldest) {
      boolean tooMany = size() > KEPT;
      if (tooMany) {
        eldest.getValue().cancel(false);
      }
      return tooMany;
    }
  };

  KnownGaps(Executor workers) {
    this.workers = workers;
  }

  private record Asked(GuildProblem problem, Guild guild) {}

  /** How far the gaps of a guild are. */
  enum State {
    KNOWN,
    WORKING,
    FAILED
  }

  /** @param gaps once they are known */
  record Answer(State state, List<Gap> gaps) {
    static Answer known(List<Gap> gaps) {
      return new Answer(State.KNOWN, gaps);
    }

    static Answer none(State state) {
      return new Answer(state, List.of());
    }
  }

  /** The gaps of a guild, or that they are being worked out; what failed is tried again when it is asked for again. */
  Answer of(GuildProblem problem, Guild guild) {
    if (new Evaluator(problem).score(guild).unmetWishes().isEmpty()) {
      return Answer.known(List.of());
    }
    Asked asked = new Asked(problem, guild);
    CompletableFuture<List<Gap>> work;
    synchronized (known) {
      work = known.computeIfAbsent(asked, a ->
          CompletableFuture.supplyAsync(() -> new Questions(problem, SEED).gaps(guild), workers));
    }
    try {
      return Answer.known(work.get(SHORT_WAIT_MS, TimeUnit.MILLISECONDS));
    } catch (TimeoutException | CancellationException notYet) {
      // Forgotten for others in between, at worst: whoever looks again starts it anew.
      return Answer.none(State.WORKING);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Answer.none(State.WORKING);
    } catch (ExecutionException e) {
      LOG.error("working out the gaps of {} failed", guild, e.getCause());
      synchronized (known) {
        known.remove(asked, work);
      }
      return Answer.none(State.FAILED);
    }
  }
}
