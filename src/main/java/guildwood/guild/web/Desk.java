package guildwood.guild.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.NearPlants;
import guildwood.guild.BedPlan;
import guildwood.guild.GuildProblem;
import guildwood.guild.Guilds;
import guildwood.guild.Rules;
import guildwood.guild.Supply;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.species.Holding;
import guildwood.species.SpeciesRecords;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;

/** Brings together what is kept about a bed, for the pages about its guild. */
public final class Desk {
  private final Sites sites;
  private final Beds beds;
  private final NearPlants nearPlants;
  private final SpeciesRecords species;
  private final Guilds guilds;

  public Desk(Sites sites, Beds beds, NearPlants nearPlants, SpeciesRecords species, Guilds guilds) {
    this.sites = sites;
    this.beds = beds;
    this.nearPlants = nearPlants;
    this.species = species;
    this.guilds = guilds;
  }

  public Guilds guilds() {
    return guilds;
  }

  /** The plan of the bed named in the address; 404 where there is none. */
  public BedPlan plan(Context ctx) {
    return plan(idOf(ctx.pathParam("bed")));
  }

  public BedPlan plan(long bedId) {
    Bed bed = beds.find(bedId).orElseThrow(NotFoundResponse::new);
    Site site = sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new);
    Rules rules = guilds.rules(bedId).orElseGet(() -> Rules.forArea(bed.areaM2()));
    return new BedPlan(bed, site, species.library(), guilds.wishes(bedId), rules, nearPlants.ofBed(bedId));
  }

  /** The problem of a plan, with what is on hand and what plants cost. */
  public GuildProblem problem(BedPlan plan) {
    Map<String, Holding> holdings = species.holdings();
    return plan.problem(id -> supply(holdings.get(id)));
  }

  private static Supply supply(Holding holding) {
    return holding == null ? Supply.UNKNOWN
        : new Supply(holding.priceCents(), Math.min(holding.plantsOnHand(), Rules.MOST_PLANTS),
            Math.min(holding.plantsToPropagate(), Rules.MOST_PLANTS));
  }

  static long idOf(String text) {
    if (!text.matches("\\d{1,18}")) {
      throw new NotFoundResponse();
    }
    return Long.parseLong(text);
  }
}
