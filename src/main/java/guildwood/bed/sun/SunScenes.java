package guildwood.bed.sun;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.sun.Coordinates;
import guildwood.site.sun.Scene;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** Puts together what decides the sun on a bed: its site's latitude and season, and what stands around it. */
public final class SunScenes {
  private final Sites sites;
  private final Beds beds;
  private final Surroundings surroundings;
  private final Clock clock;

  public SunScenes(Sites sites, Beds beds, Surroundings surroundings, Clock clock) {
    this.sites = sites;
    this.beds = beds;
    this.surroundings = surroundings;
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
    return new BedScene(bed, site, around, skyline, own.isPresent(), GrowingSeason.of(site), LocalDate.now(clock).getYear());
  }

  /**
   * What is known about the sun on a bed.
   *
   * @param ownSkyline whether the skyline is the bed's own and not the site's
   * @param year for which the sun's path is taken; from year to year it hardly differs
   */
  public record BedScene(
      Bed bed, Site site, AroundBed around, Skyline skyline, boolean ownSkyline, GrowingSeason season, int year) {

    /** The scene for the sun model, with the bed's middle as its origin; empty where the latitude is not known. */
    public Optional<Scene> scene() {
      if (site.latitudeDegrees().isEmpty()) {
        return Optional.empty();
      }
      // The longitude only shifts the clock: without it hours are those of the same latitude at Greenwich.
      Coordinates place = new Coordinates(site.latitudeDegrees().getAsDouble(), site.longitudeDegrees().orElse(0));
      return Optional.of(new Scene(place, year, season.days(), season.days(), 0, skyline.horizon(), around.obstacles()));
    }

    /** Nothing at all is recorded that could take sun. */
    public boolean isOpen() {
      return around.placed().isEmpty() && skyline.isLevel();
    }
  }
}
