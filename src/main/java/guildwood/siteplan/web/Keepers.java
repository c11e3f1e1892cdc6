package guildwood.siteplan.web;

import guildwood.siteplan.PlanDesk;
import guildwood.siteplan.ShapeKind;

/** Who keeps which kind of shape, and what was changed last. */
record Keepers(PlanDesk desk, LastChanges lastChanges) {
  ShapeKeeper of(ShapeKind kind) {
    return switch (kind) {
      case BED -> new BedKeeper(desk.beds(), desk.outlines());
      case PATH -> new PathKeeper(desk.records());
      case WATER -> new WaterKeeper(desk.records());
      case TREE, BUILDING -> new NearbyKeeper(desk.surroundings(), kind);
    };
  }
}
