package guildwood.choosing;

import java.util.List;

/** The beds there are to choose for, in the order to show them. */
public interface BedChoices {
  List<BedChoice> all();
}
