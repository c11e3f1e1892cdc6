package guildwood.guild;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A guild somebody works on by hand, not saved yet, with what they decided on the way about single species.
 *
 * @param name of the guild as typed; may be empty while nobody has given it one
 * @param marks decisions that differ from the bed's kept rules, by species id
 */
public record Draft(String name, Guild guild, SortedMap<String, Mark> marks) {

  /** What was decided about a species in this draft, whatever the bed's kept rules say about it. */
  public enum Mark {
    /** In, with exactly as many plants as the draft has. */
    KEPT,
    /** Never in this bed. */
    BANNED,
    /** Neither, though the kept rules fix or ban it. */
    FREE
  }

  public Draft {
    marks = Collections.unmodifiableSortedMap(new TreeMap<>(marks));
    for (Map.Entry<String, Mark> mark : marks.entrySet()) {
      if (mark.getValue() == Mark.KEPT && !guild.has(mark.getKey())) {
        throw new IllegalArgumentException("kept, but not in the draft: " + mark.getKey());
      }
    }
  }

  public static Draft of(String name, Guild guild) {
    return new Draft(name, guild, new TreeMap<>());
  }

  public Draft named(String other) {
    return new Draft(other, guild, marks);
  }

  /**
   * Another guild in place of this one. What was kept and is gone is no longer kept, and a ban of something
   * that comes in is lifted.
   */
  public Draft with(Guild other) {
    SortedMap<String, Mark> left = new TreeMap<>(marks);
    left.entrySet().removeIf(m -> m.getValue() == Mark.KEPT ? !other.has(m.getKey())
        : m.getValue() == Mark.BANNED && other.count(m.getKey()) > guild.count(m.getKey()));
    return new Draft(name, other, left);
  }

  /** Keeps exactly as many of a species as the draft has. */
  public Draft keeping(String speciesId) {
    return marked(guild, speciesId, Mark.KEPT);
  }

  /** Without a species, for good. */
  public Draft banning(String speciesId) {
    return marked(guild.without(speciesId), speciesId, Mark.BANNED);
  }

  /** Neither keeps nor bans a species, whatever the kept rules say. */
  public Draft freeing(String speciesId) {
    return marked(guild, speciesId, Mark.FREE);
  }

  private Draft marked(Guild changed, String speciesId, Mark mark) {
    SortedMap<String, Mark> more = new TreeMap<>(marks);
    more.put(speciesId, mark);
    return new Draft(name, changed, more);
  }

  /** The bed's rules with this draft's decisions; what is fixed and in the draft is fixed at the draft's count. */
  public Rules rulesOver(Rules kept) {
    Set<String> banned = new TreeSet<>(kept.banned());
    Map<String, Integer> pinned = new TreeMap<>(kept.pinned());
    marks.forEach((id, mark) -> {
      banned.remove(id);
      pinned.remove(id);
      if (mark == Mark.KEPT) {
        pinned.put(id, guild.count(id));
      } else if (mark == Mark.BANNED) {
        banned.add(id);
      }
    });
    pinned.replaceAll((id, count) -> guild.has(id) ? guild.count(id) : count);
    // More may stand in a bed than anybody may plan; they stay without being fixed.
    pinned.values().removeIf(count -> count > Rules.MOST_PLANTS);
    // In this order no step fixes and bans one species at once.
    return kept.withPinned(Map.of()).withBanned(banned).withPinned(pinned);
  }

  /** As it can be judged now: species the problem no longer knows are gone, standing plants are all there. */
  public Draft fitting(GuildProblem problem) {
    SortedMap<String, Integer> counts = new TreeMap<>(problem.standing());
    guild.counts().forEach((id, count) -> {
      if (problem.find(id).isPresent()) {
        counts.put(id, Math.max(count, problem.standing(id)));
      }
    });
    return with(new Guild(counts));
  }

  /** Whether two drafts plan the same, whatever they are called. */
  public boolean plansSameAs(Draft other) {
    return guild.equals(other.guild) && marks.equals(other.marks);
  }
}
