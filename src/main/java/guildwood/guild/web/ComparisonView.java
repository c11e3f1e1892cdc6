package guildwood.guild.web;

import java.util.List;

/**
 * Two guilds side by side, every number in words.
 *
 * @param apart in how many species they differ
 * @param verdict which scores more, and by how much
 */
public record ComparisonView(
    Side one, Side other, int apart, String verdict, List<SpeciesGroup> species, List<PartRow> parts, List<NumberRow> numbers) {

  public List<Side> sides() {
    return List.of(one, other);
  }

  /** One of the two; {@code label} within a sentence, {@code title} at its beginning, {@code code} as a form carries it. */
  public record Side(String key, String label, String title, String path, String points, String code, List<String> breaches) {}

  /** Species that are only in one, only in the other, or in both; {@code kind} is one, other, counts or same. */
  public record SpeciesGroup(String kind, String title, List<SpeciesRow> rows) {}

  /** Counts of a species in the two; {@code –} where it is not in. */
  public record SpeciesRow(String id, String name, String layer, String one, String other) {}

  /** A part of the score in the two, from whom, and how the other differs. */
  public record PartRow(String label, boolean must, String one, String oneFrom, String other, String otherFrom, String difference, boolean same) {}

  /** A number in the two. */
  public record NumberRow(String label, String one, String other, boolean same) {}
}
