package guildwood.guild;

import guildwood.fit.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Who provides what in one problem, as bit rows over the candidates: built once, asked often. Counting over
 * hundreds of thousands of species then takes microseconds.
 */
public final class Providers {
  private final GuildProblem problem;
  private final Map<String, long[]> byWish = new HashMap<>();
  private final long[] suited;
  private final long[] failsOnce;
  private final long[] allowed;

  private Providers(GuildProblem problem) {
    this.problem = problem;
    int words = (problem.candidates().size() + Long.SIZE - 1) / Long.SIZE;
    suited = new long[words];
    failsOnce = new long[words];
    allowed = new long[words];
    problem.wishes().forEach(w -> byWish.put(w.key(), new long[words]));
  }

  public static Providers of(GuildProblem problem) {
    Providers providers = new Providers(problem);
    Eligibility eligibility = new Eligibility(problem);
    for (int i = 0; i < problem.candidates().size(); i++) {
      providers.add(i, problem.candidates().get(i), eligibility);
    }
    return providers;
  }

  private void add(int i, Candidate candidate, Eligibility eligibility) {
    long bit = 1L << i;
    int word = i / Long.SIZE;
    if (candidate.fit().verdict() != Verdict.DOES_NOT_FIT) {
      suited[word] |= bit;
      allowed[word] |= eligibility.isEligible(candidate) ? bit : 0;
    } else if (candidate.fit().failing().size() == 1) {
      failsOnce[word] |= bit;
    }
    for (Wish wish : problem.wishes()) {
      if (candidate.provides(wish)) {
        byWish.get(wish.key())[word] |= bit;
      }
    }
  }

  /** How many would meet one of the problem's wishes. */
  public Headcount count(Wish wish) {
    long[] row = row(wish);
    int all = 0;
    int fit = 0;
    int nearly = 0;
    int may = 0;
    for (int word = 0; word < row.length; word++) {
      all += Long.bitCount(row[word]);
      fit += Long.bitCount(row[word] & suited[word]);
      nearly += Long.bitCount(row[word] & failsOnce[word]);
      may += Long.bitCount(row[word] & allowed[word]);
    }
    return new Headcount(all, fit, nearly, may);
  }

  /** Everybody who provides a wish, in the order of their ids. */
  List<Candidate> all(Wish wish) {
    return among(row(wish), null);
  }

  /** Those who provide it and do not fail on the site. */
  List<Candidate> suited(Wish wish) {
    return among(row(wish), suited);
  }

  /** Those of them whom the owner's rules let in. */
  List<Candidate> allowed(Wish wish) {
    return among(row(wish), allowed);
  }

  private long[] row(Wish wish) {
    long[] row = byWish.get(wish.key());
    if (row == null) {
      throw new IllegalArgumentException("not wished for: " + wish.key() + ". Maybe one of " + byWish.keySet());
    }
    return row;
  }

  private List<Candidate> among(long[] row, long[] mask) {
    List<Candidate> found = new ArrayList<>();
    for (int word = 0; word < row.length; word++) {
      long bits = mask == null ? row[word] : row[word] & mask[word];
      for (; bits != 0; bits &= bits - 1) {
        found.add(problem.candidates().get(word * Long.SIZE + Long.numberOfTrailingZeros(bits)));
      }
    }
    return found;
  }
}
