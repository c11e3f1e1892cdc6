package guildwood.guild;

import guildwood.guild.search.Choice;
import guildwood.guild.search.Solver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Composes guilds. Same problem, seed and effort: same answer, on every machine.
 *
 * <p>Greedy start, a Lagrangian bound, annealing guided by the bound's prices, and an exact completion
 * while it pays, which proves small and many middling beds best.
 */
public final class Composer {
  private final Effort effort;

  public Composer(Effort effort) {
    this.effort = effort;
  }

  /**
   * Composes up to {@code howMany} guilds, any two of them at least three species apart, and explains the
   * gaps of the best.
   *
   * @param howMany at least 1; fewer come back where the bed allows no more
   */
  public Composition compose(GuildProblem problem, long seed, int howMany, Progress progress) {
    Drafts drafts = draft(problem, seed, howMany, progress);
    List<Gap> gaps = drafts.cancelled ? List.of()
        : new Questions(problem, seed).gaps(drafts.proposals.get(0).guild());
    return new Composition(drafts.proposals, gaps, drafts.cancelled);
  }

  /** The proposals alone. */
  record Drafts(List<Proposal> proposals, boolean cancelled) {}

  Drafts draft(GuildProblem problem, long seed, int howMany, Progress progress) {
    if (howMany < 1) {
      throw new IllegalArgumentException("asked for " + howMany + " proposals");
    }
    Translation translation = new Translation(problem);
    Evaluator evaluator = new Evaluator(problem);
    Watch watch = new Watch(translation, evaluator, progress);
    Solver solver =
        new Solver(translation.selection(), seed, effort.boundSteps(), effort.moves(), effort.nodes());
    Solver.Solved solved = solver.solve(watch);
    List<Choice> choices = new ArrayList<>(List.of(solved.best()));
    if (howMany > 1) {
      others(problem, translation, solver, choices, seed, howMany, watch);
    }
    return new Drafts(proposals(translation, evaluator, solved.roof(), choices), watch.cancelled);
  }

  private void others(GuildProblem problem, Translation translation, Solver solver, List<Choice> choices, long seed,
      int howMany, Watch watch) {
    Choice best = choices.get(0);
    Theme[] themes = Theme.values();
    // Every theme once, then the plain one again: each search keeps apart from all found before.
    for (int k = 0; choices.size() < howMany && k < themes.length + howMany; k++) {
      if (!watch.goesOn(90 + Math.min(9, 10 * k / (themes.length + howMany)), best)) {
        return;
      }
      Theme theme = themes[Math.min(k, themes.length - 1)];
      Optional<Choice> other = solver.another(choices, Composition.SPECIES_APART,
          theme.lean(translation, best, problem.rules()), theme.keepsCounts(),
          Math.max(2_000, effort.moves() / 4), seed + 1 + k);
      other.ifPresent(choices::add);
    }
  }

  /** The best first, the others by score; a guild that leaves more musts unmet than the best is no proposal. */
  private static List<Proposal> proposals(
      Translation translation, Evaluator evaluator, long roof, List<Choice> choices) {
    List<Evaluation> guilds = new ArrayList<>();
    int unmet = Integer.MAX_VALUE;
    choices.sort(Comparator.comparingLong(Choice::value).reversed());
    for (Choice choice : choices) {
      Evaluation evaluation = evaluator.evaluate(translation.guild(choice));
      if (evaluation.score().rank() != choice.value()) {
        throw new IllegalStateException("the search makes " + choice.value() + " of " + evaluation.guild()
            + ", the evaluator " + evaluation.score().rank());
      }
      unmet = Math.min(unmet, evaluation.score().unmetMusts().size());
      if (evaluation.score().unmetMusts().size() == unmet) {
        guilds.add(evaluation);
      }
    }
    List<Distinction> names = Distinctions.of(guilds.stream().map(Evaluation::numbers).toList());
    List<Proposal> proposals = new ArrayList<>();
    for (int k = 0; k < guilds.size(); k++) {
      proposals.add(new Proposal(guilds.get(k), boundMilli(roof, unmet),
          guilds.get(k).score().rank() == roof, names.get(k)));
    }
    return proposals;
  }

  /** The bound on the rank as a bound on the score of guilds with no more unmet musts than this. */
  private static int boundMilli(long roof, int unmet) {
    long earned = Math.min(PointScale.TOTAL_MILLI, roof + unmet * ScoreBreakdown.MUST_RANK);
    return PointScale.afterUnmetMusts((int) earned, unmet);
  }

  /** Passes the search's progress on as guilds. */
  private static final class Watch implements Solver.Listener {
    private final Translation translation;
    private final Evaluator evaluator;
    private final Progress progress;
    private boolean cancelled;
    private int percent;
    private Choice last;
    private int lastMilli;

    Watch(Translation translation, Evaluator evaluator, Progress progress) {
      this.translation = translation;
      this.evaluator = evaluator;
      this.progress = progress;
    }

    @Override
    public boolean goesOn(int share, Choice best) {
      percent = Math.max(percent, Math.min(100, share));
      if (last == null || last.value() != best.value()) {
        lastMilli = evaluator.score(translation.guild(best)).totalMilli();
        last = best;
      }
      progress.at(percent, translation.guild(last), lastMilli);
      cancelled |= progress.isCancelled();
      return !cancelled;
    }
  }
}
