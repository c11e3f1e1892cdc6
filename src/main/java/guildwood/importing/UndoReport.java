package guildwood.importing;

import java.util.List;

/**
 * What undoing an import takes out of the library again, and what stays.
 *
 * @param kept what was edited by hand since, or what others rest upon
 */
public record UndoReport(long species, long values, long notes, long names, long holdings, long sources, List<Kept> kept) {
  public UndoReport {
    kept = List.copyOf(kept);
  }

  /**
   * Something that stays.
   *
   * @param reason key: {@code species-edited}, {@code value-edited}, {@code names-edited}, {@code holding-edited}
   * @param detail the value or name; may be empty
   */
  public record Kept(String speciesId, String reason, String detail) {}
}
