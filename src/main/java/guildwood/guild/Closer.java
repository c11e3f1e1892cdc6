package guildwood.guild;

/**
 * A change that closes a gap, re-solved.
 *
 * @param guild the best guild found after the change; it meets the wish
 * @param totalMilli its score under the changed problem, thousandths of a point
 * @param gainMilli against the guild with the gap; may be negative where the wish costs more than it brings
 */
public record Closer(Change change, Guild guild, int totalMilli, int gainMilli) {}
