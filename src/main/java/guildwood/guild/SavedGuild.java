package guildwood.guild;

import java.time.Instant;

/**
 * The guild kept for a bed.
 *
 * @param name as the owner calls it
 */
public record SavedGuild(long id, long bedId, String name, Guild guild, Instant savedAt) {
  public static final int LONGEST_NAME = 120;

  public SavedGuild {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a saved guild needs a name");
    }
  }
}
