package guildwood.bed.sun;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.Outlines;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.sun.Coordinates;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Scene;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** Puts together what decides the sun on a bed: its site's latitude and season, and what stands around it. */
public final class SunScenes {
  private final Sites sites;
  private final Beds beds;
  private final Surroundings surroundings;
  private final Outlines outlines;
  private final Clock clock;

  public SunScenes(Sites sites, Beds beds, Surroundings surroundings, Outlines outlines, Clock clock) {
    this.sites = sites;
    this.beds = beds;
    this.surroundings = surroundings;
    this.outlines = outlines;
    this.clock = clock;
  }

  /** What is known about the sun on a bed; empty where there is no such bed. */
  public Optional<BedScene> find(long bedId) {
    return beds.find(bedId).flatMap(bed -> sites.find(bed.siteId()).map(site -> of(bed, site)));
  }

  private BedScene of(Bed bed, Site site) {
    AroundBed around = AroundBed.of(bed, beds.ofSite(site.id()), surroundings.ofSite(site.id()));
    Optional<Skyline> own = surroundings.skylineOfBed(bed.id());
    Skyline skyline = own.or(() -> surroundings.skylineOfSite(site.id())).orElse(Skyline.LEVEL);
    return new BedScene(bed, site, around, skyline, own.isPresent(), GrowingSeason.of(site), LocalDate.now(clock).getYear(),
        outlines.ofBed(bed.id()).flatMap(corners -> bed.middle().map(at -> corners.moved(new GroundPoint(-at.xM(), -at.yM())))));
  }

  /**
   * What is known about the sun on a bed.
   *
   * @param ownSkyline whether the skyline is the bed's own and not the site's
   * @param year for which the sun's path is taken; from year to year it hardly differs
   * @param traced the bed's outline where it was traced, seen from its middle
   */
  public record BedScene(
      Bed bed, Site site, AroundBed around, Skyline skyline, boolean ownSkyline, GrowingSeason season, int year,
      Optional<Footprint> traced) {

    /** The scene for the sun model, with the bed's middle as its origin; empty where the latitude is not known. */
    public Optional<Scene> scene() {
      if (site.latitudeDegrees().isEmpty()) {
        return Optional.empty();
      }
      // The longitude only shifts the clock: without it hours are those of the same latitude at Greenwich.
      Coordinates place = new Coordinates(site.latitudeDegrees().getAsDouble(), site.longitudeDegrees().orElse(0));
      return Optional.of(new Scene(place, year, season.days(), season.days(), 0, skyline.horizon(), around.obstacles()));
    }

    /** The ground of the bed, seen from its middle: as it was traced, or its rectangle. */
    public Footprint outline() {
      return traced.orElseGet(() -> bed.ground().around(new GroundPoint(0, 0)));
    }

    /** Nothing at all is recorded that could take sun. */
    public boolean isOpen() {
      return around.placed().isEmpty() && skyline.isLevel();
    }
  }
}
