package guildwood.importing;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Holding;
import guildwood.species.SpeciesLibrary;
import java.util.List;
import java.util.Map;

/**
 * Goes through a table row by row and tells what an import of it does: the dry run, and the import itself. Nothing of the
 * table is held but digests of names and values, so that it can have hundreds of thousands of rows.
 */
public final class Review {
  /** Libraries up to so many species tell for every known species whether two rows mean it; see {@link ValueMemory}. */
  static final int SMALL_LIBRARY = 20_000;

  private static final int ROWS_BETWEEN_REPORTS = 200;

  private final ImportPlan plan;
  private final SpeciesLibrary library;
  private final Map<String, Holding> holdings;

  /**
   * A review of an import.
   *
   * @param library the state of the library that the import meets
   * @param holdings what the owner has by then, by species id
   */
  public Review(ImportPlan plan, SpeciesLibrary library, Map<String, Holding> holdings) {
    this.plan = plan;
    this.library = library;
    this.holdings = holdings;
  }

  /** A review where nothing is at hand yet. */
  public Review(ImportPlan plan, SpeciesLibrary library) {
    this(plan, library, Map.of());
  }

  /** Is shown what becomes of each row. */
  public interface OutcomeTaker {
    /** Whether to go on; where not, the counts are those so far. */
    boolean take(RowOutcome outcome);
  }

  /**
   * Goes through all rows.
   *
   * @return the counts; findings where the mapping cannot serve, the file cannot be read to its end, or {@code progress}
   *     stopped it
   */
  public Checked<ImportCounts> run(Table table, OutcomeTaker taker, ImportProgress progress) {
    List<Finding> findings = plan.mapping().findings();
    if (!findings.isEmpty()) {
      return Checked.refused(findings);
    }
    DataRows rows = DataRows.of(table, plan);
    boolean[] stopped = new boolean[1];
    Checked<ValueMemory> memory = ValueMemory.of(rows, plan.mapping(), library.species().size() <= SMALL_LIBRARY);
    if (memory.isRefused()) {
      return Checked.refused(memory.findings());
    }
    Counting counts = new Counting();
    Outcomes outcomes = new Outcomes(plan, library, holdings, memory.orThrow());
    Checked<Long> read = rows.rows(row -> {
      RowOutcome outcome = outcomes.of(row);
      counts.add(outcome);
      boolean goOn = taker.take(outcome);
      stopped[0] = counts.rows() % ROWS_BETWEEN_REPORTS == 0 && !progress.at(counts.rows());
      return goOn && !stopped[0];
    });
    if (stopped[0]) {
      return Checked.refused(Finding.of("import.stopped", ""));
    }
    return read.map(all -> counts.counts());
  }
}
