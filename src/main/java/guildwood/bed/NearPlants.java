package guildwood.bed;

import java.util.List;

/** What grows near the beds, as it is kept: for each species the nearest plant. */
public interface NearPlants {
  /** What grows near a bed, nearest first. */
  List<Near> ofBed(long bedId);

  /** Keeps a species as growing near a bed, in place of what was told of it before; false where there is no such bed. */
  boolean keep(long bedId, Near near);

  /** Forgets a species near a bed; false where it was not recorded. */
  boolean remove(long bedId, String speciesId);
}
