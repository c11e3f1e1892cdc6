package guildwood.drawing;

import java.util.List;

/** What is kept about the drawings of the beds. Every change is one transaction. */
public interface BedSpots {
  /** The spots kept for a bed, also of plants that have left its guild since the last change; none before anybody kept any. */
  List<Spot> ofBed(long bedId);

  /** The settings of a bed's drawing; the usual ones where nobody set any. */
  DrawingSettings settings(long bedId);

  /** Keeps spots in the place of those kept before, and the settings; false where the bed is gone. */
  boolean keep(long bedId, List<Spot> spots, DrawingSettings settings);
}
