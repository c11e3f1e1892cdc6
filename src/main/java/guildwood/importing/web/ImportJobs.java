package guildwood.importing.web;

import guildwood.importing.ImportProgress;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The long work of imports, off the request thread, one at a time: an import may need all the memory there is. */
public final class ImportJobs implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ImportJobs.class);

  private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
    Thread thread = new Thread(work, "import");
    thread.setDaemon(true);
    return thread;
  });

  private volatile Optional<Job> latest = Optional.empty();

  /** What is being done. */
  enum Kind {
    /** Looking a draft through. */
    REVIEW,
    /** Bringing a draft into the library. */
    BRING,
    /** Taking an import out again. */
    UNDO
  }

  /** The work itself; gives the import it is about, or why it could not be done. */
  interface Work {
    Checked<Long> run(ImportProgress progress);
  }

  /**
   * Starts work unless other work is under way; then it gives nothing.
   *
   * @param title of what is worked on
   * @param allRows how many rows there are; 0 where nobody knows yet
   */
  synchronized Optional<Job> start(Kind kind, long id, String title, long allRows, Work work) {
    if (running().isPresent()) {
      return Optional.empty();
    }
    Job job = new Job(kind, id, title, allRows);
    latest = Optional.of(job);
    worker.submit(() -> job.work(work));
    return latest;
  }

  Optional<Job> running() {
    return latest.filter(job -> !job.isDone());
  }

  /** The work on one draft or import, under way or done, where nothing else was begun since. */
  Optional<Job> of(Kind kind, long id) {
    return latest.filter(job -> job.kind == kind && job.id == id);
  }

  boolean isRunning(Kind kind, long id) {
    return of(kind, id).filter(job -> !job.isDone()).isPresent();
  }

  @Override
  public void close() {
    latest.ifPresent(Job::cancel);
    worker.shutdownNow();
  }

  /** One piece of work: how far it is, and what came of it. */
  static final class Job implements ImportProgress {
    private final Kind kind;
    private final long id;
    private final String title;
    private final long allRows;
    private volatile long rows;
    private volatile boolean cancelled;
    private volatile Optional<Checked<Long>> outcome = Optional.empty();
    private volatile boolean failed;

    private Job(Kind kind, long id, String title, long allRows) {
      this.kind = kind;
      this.id = id;
      this.title = title;
      this.allRows = allRows;
    }

    String title() {
      return title;
    }

    long allRows() {
      return allRows;
    }

    long rows() {
      return rows;
    }

    void cancel() {
      cancelled = true;
    }

    boolean isCancelled() {
      return cancelled;
    }

    boolean isDone() {
      return failed || outcome.isPresent();
    }

    /** Something went wrong that is nobody's fault but ours. */
    boolean isFailed() {
      return failed;
    }

    /** The import it was about; empty where it is not done or was refused. */
    Optional<Long> result() {
      return outcome.flatMap(Checked::value);
    }

    /** Why it could not be done. */
    List<Finding> findings() {
      return outcome.map(Checked::findings).orElse(List.of());
    }

    @Override
    public boolean at(long done) {
      rows = done;
      return !cancelled;
    }

    private void work(Work work) {
      try {
        outcome = Optional.of(work.run(this));
      } catch (RuntimeException | OutOfMemoryError e) {
        LOG.error("{} of import {} failed", kind, id, e);
        failed = true;
      }
    }
  }
}
