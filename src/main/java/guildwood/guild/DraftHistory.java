package guildwood.guild;

import java.util.ArrayList;
import java.util.List;

/**
 * A draft with the states it went through, so that each step can be taken back and done again. Immutable.
 *
 * @param past states before, the latest last
 * @param future states that were taken back, the next to be done again last
 */
public record DraftHistory(List<Draft> past, Draft now, List<Draft> future) {
  /** Steps that can be taken back; older ones are forgotten. */
  public static final int MOST_STEPS = 100;

  public DraftHistory {
    past = List.copyOf(past);
    future = List.copyOf(future);
  }

  public static DraftHistory startingWith(Draft draft) {
    return new DraftHistory(List.of(), draft, List.of());
  }

  public boolean canGoBack() {
    return !past.isEmpty();
  }

  public boolean canGoForward() {
    return !future.isEmpty();
  }

  /** A step on. Another name alone is none, and what was taken back can no longer be done again after a step. */
  public DraftHistory then(Draft next) {
    if (next.plansSameAs(now)) {
      return new DraftHistory(past, next, future);
    }
    List<Draft> longer = new ArrayList<>(past);
    longer.add(now);
    return new DraftHistory(longer.subList(Math.max(0, longer.size() - MOST_STEPS), longer.size()), next, List.of());
  }

  /** One step back; the same where there is none. The name stays. */
  public DraftHistory back() {
    if (past.isEmpty()) {
      return this;
    }
    Draft before = past.get(past.size() - 1).named(now.name());
    return new DraftHistory(past.subList(0, past.size() - 1), before, with(future, now));
  }

  /** Does again what was taken back last; the same where there is nothing. */
  public DraftHistory forward() {
    if (future.isEmpty()) {
      return this;
    }
    Draft next = future.get(future.size() - 1).named(now.name());
    return new DraftHistory(with(past, now), next, future.subList(0, future.size() - 1));
  }

  private static List<Draft> with(List<Draft> drafts, Draft one) {
    List<Draft> longer = new ArrayList<>(drafts);
    longer.add(one);
    return longer;
  }
}
