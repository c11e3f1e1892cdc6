package guildwood.importing;

import guildwood.kernel.Finding;
import java.util.List;

/**
 * What a column probably means, and why.
 *
 * @param certainty 0 to 100; 0 where nothing speaks for any meaning and the column is offered as a note
 * @param reasons in words, the strongest first: what the header says, what the cells look like, how the unit was told
 */
public record Suggestion(ColumnMapping column, int certainty, List<Finding> reasons) {
  public Suggestion {
    reasons = List.copyOf(reasons);
    if (certainty < 0 || certainty > 100) {
      throw new IllegalArgumentException("certainty " + certainty);
    }
  }
}
