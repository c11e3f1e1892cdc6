package guildwood.guild.web;

import java.util.List;

/**
 * Why a species is not in a guild, in words.
 *
 * @param outcome key of {@link guildwood.guild.WhyNot.Outcome}
 * @param answer the answer in one sentence
 * @param reasons rules or conditions that keep it out, or what it would break
 * @param axes how it suits the bed, condition by condition
 * @param easings the owner's own rules that could be eased, and what would come of it
 * @param guild the guild with it, as {@link GuildCode}; empty where there is none
 * @param changes who joins, who leaves and whose count changes for it
 * @param parts what the score gains and loses, part by part
 * @param with the whole guild with it; null where there is none
 */
public record WhyView(String id, String name, String scientificName, String outcome, String answer, List<String> reasons,
    List<AxisRow> axes, List<EasingRow> easings, String guild, List<String> changes, List<String> parts, GuildView with) {

  /** The name as a heading begins with it. */
  public String title() {
    return GuildWords.capital(name);
  }

  /** One condition: what the bed offers, what the species bears, and how that fits; {@code verdict} is a verdict's key. */
  public record AxisRow(String axis, String bed, String bears, String verdict, String verdictText, String miss) {}

  /** A rule that could be eased: where, and what the species would then bring or cost. */
  public record EasingRow(String change, String then, String address) {}
}
