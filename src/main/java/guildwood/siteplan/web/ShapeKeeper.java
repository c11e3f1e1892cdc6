package guildwood.siteplan.web;

import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.SitePlan;
import guildwood.web.Form;
import guildwood.web.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Keeps one kind of shape: its fields beside name and points, and what becomes of them. */
interface ShapeKeeper {
  int LONGEST_NAME = 120;

  /** Fills in the fields of a new shape, or of the one with this id. */
  void fill(Map<String, String> values, SitePlan plan, OptionalLong id, Units units);

  /**
   * Reads what the form says, without keeping any of it yet.
   *
   * @param id absent for a new shape
   * @return what will keep it; empty where it is refused and the form knows why
   */
  Optional<Work> read(Form form, SitePlan plan, OptionalLong id, String name, List<GroundPoint> points);

  /** Takes it off the plan; returns how to take that back, empty where there is none. */
  Optional<BooleanSupplier> remove(SitePlan plan, long id);

  /** A change of the plan that only waits to be made. */
  interface Work {
    /** Makes the change and returns how to take it back. */
    BooleanSupplier carryOut();
  }
}
