package guildwood.guild.web;

import guildwood.guild.Gap;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Questions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The gaps of the guilds looked at last. Each closer of a gap is a composition of its own, about a second
 * of work in all; the same guild of the same problem has the same gaps until something changes.
 */
final class KnownGaps {
  private static final int KEPT = 20;
  private static final long SEED = 1;

  private final Map<Asked, List<Gap>> known = new LinkedHashMap<>(KEPT, 0.75f, true) {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Asked, List<Gap>> eldest) {
      return size() > KEPT;
    }
  };

  private record Asked(GuildProblem problem, Guild guild) {}

  List<Gap> of(GuildProblem problem, Guild guild) {
    Asked asked = new Asked(problem, guild);
    synchronized (known) {
      List<Gap> gaps = known.get(asked);
      if (gaps != null) {
        return gaps;
      }
    }
    // Outside the lock: two visitors may work out the same gaps, none waits for another's.
    List<Gap> gaps = new Questions(problem, SEED).gaps(guild);
    synchronized (known) {
      known.put(asked, gaps);
    }
    return gaps;
  }
}
