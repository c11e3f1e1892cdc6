package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import java.util.Optional;

/**
 * A guild that pages can be asked about by name: the saved one, the draft, or a proposal.
 *
 * @param key as it stands in addresses: {@code saved}, {@code draft}, {@code <run>.<number>}, or empty for
 *     what stands in a bed without any guild
 * @param label in words
 * @param path the page that shows it
 * @param plan and problem it is judged by
 * @param run the composition it comes from, where it is a proposal
 */
record NamedGuild(
    String key, String label, String path, BedPlan plan, GuildProblem problem, Guild guild, Optional<Compositions.Run> run) {}
