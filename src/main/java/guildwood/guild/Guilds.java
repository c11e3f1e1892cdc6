package guildwood.guild;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What is kept about the guild of each bed: wishes, rules, and the guild itself. */
public interface Guilds {
  /** The wishes of a bed, in the order of their kinds and items. */
  List<Wish> wishes(long bedId);

  /** The rules the owner set for a bed; empty where the defaults for its area hold. */
  Optional<Rules> rules(long bedId);

  /** Keeps wishes and rules together: both, or neither. */
  void keep(long bedId, List<Wish> wishes, Rules rules);

  /** The guild saved for a bed. */
  Optional<SavedGuild> saved(long bedId);

  Optional<SavedGuild> find(long guildId);

  /**
   * Saves a guild as the one of its bed. The guild saved before keeps its id and its share links: what
   * helpers look at follows the plan.
   */
  SavedGuild save(long bedId, String name, Guild guild, Instant now);

  /** Forgets the guild of a bed with its share links; false where there is none. */
  boolean remove(long bedId);
}
