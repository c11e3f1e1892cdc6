package guildwood.guild.web;

import java.util.List;

/**
 * A guild as the pages show it, every number already in words.
 *
 * @param total points, to the thousandth
 * @param rounded points, to the tenth
 * @param covered share of the ground under crowns of any layer, overlaps counted once
 * @param ground share of the ground under plants that cover it
 * @param from where the plants come from, all species together
 */
public record GuildView(
    String total,
    String rounded,
    List<MemberRow> members,
    List<PartRow> parts,
    List<String> breaches,
    List<String> remarks,
    List<LayerRow> layers,
    String covered,
    String ground,
    List<YearRow> year,
    String plants,
    String toAdd,
    String from,
    String cost) {

  /** Whether a species is in the guild. */
  public boolean has(String speciesId) {
    return members.stream().anyMatch(m -> m.id().equals(speciesId));
  }

  /**
   * A species of the guild.
   *
   * @param from where its plants come from: how many stand there, are on hand, to be propagated, to be bought
   * @param services what it does for the wishes, in words
   * @param limit what limits it here; may be empty
   * @param room how many of it would fill the bed, with the way of counting
   * @param food whether people eat any of it
   * @param cautions what to warn of, in words
   */
  public record MemberRow(
      String id, String name, String scientificName, String layer, int count, int standing, String from, String services,
      String verdict, String verdictText, String limit, String height, String crown, String room, List<String> cautions, boolean food) {
    static final String NOT_KNOWN = "–";

    public boolean isHeightKnown() {
      return !height.equals(NOT_KNOWN);
    }
  }

  /** A part of the score; {@code percent} of what it could earn. */
  public record PartRow(String label, boolean must, boolean met, String earned, String possible, String who, int percent) {}

  /** How much of the bed the crowns of one layer cover. */
  public record LayerRow(String label, String covered, String bed, int percent) {}

  /** One species through the year. */
  public record YearRow(String name, List<MonthCell> months) {}

  /** {@code mark} is none, bloom, harvest or both; {@code text} says it for people who cannot see the mark. */
  public record MonthCell(String mark, String text) {}

  /** What is missing, once it is known. */
  public record GapsView(boolean working, boolean failed, List<GapRow> rows) {}

  /** A wish that is not met, with the reason and what would close the gap. */
  public record GapRow(String wish, boolean must, String reason, List<CloserRow> closers) {}

  /**
   * A change that would close a gap.
   *
   * @param gain points it brings or costs, and the total it promises
   * @param brings who joins and who leaves the guild with it
   * @param step what the owner can do about it here: {@code draft} (take {@code guild} into the draft),
   *     {@code limits} (the limits at {@code address}, with the easing filled in), {@code ground} (what the ground
   *     would need), {@code bed} (the bed's own form at {@code address})
   * @param guild the guild that would then stand, as {@link GuildCode}
   * @param free a species whose ban is lifted by taking the guild; may be empty
   * @param ground what to know before the ground is changed
   */
  public record CloserRow(String change, String gain, boolean better, List<String> brings, String step, String address,
      String guild, String free, List<String> ground) {}
}
