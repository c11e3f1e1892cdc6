package guildwood.workplan;

import guildwood.bed.Bed;
import guildwood.fit.Fit;
import guildwood.guild.Candidacy;
import guildwood.guild.Candidate;
import guildwood.guild.Guild;
import guildwood.guild.Provision;
import guildwood.guild.Rules;
import guildwood.guild.Supply;
import guildwood.kernel.Range;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.species.Holding;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the saved guilds of a site's beds ask for. What is on hand goes to the first bed that wants it, once. */
public final class GuildJobs {
  private final Site site;
  private final SpeciesLibrary library;
  private final Map<String, Holding> holdings;
  private final Map<String, Integer> usedOnHand = new HashMap<>();
  private final Map<String, Integer> usedToPropagate = new HashMap<>();
  private final List<PlantJob> jobs = new ArrayList<>();

  public GuildJobs(Site site, SpeciesLibrary library, Map<String, Holding> holdings) {
    this.site = site;
    this.library = library;
    this.holdings = holdings;
  }

  /** Adds the plants of one bed's guild; a species that lies in the bin is still asked for. */
  public void add(Bed bed, Guild guild) {
    Map<Axis, Range> conditions = Fit.ranges(bed.conditionsIn(site));
    Candidacy candidacy = new Candidacy(conditions, site.place());
    guild.counts().forEach((id, count) -> library.find(id)
        .ifPresent(species -> add(bed, species, count, candidacy, Optional.ofNullable(conditions.get(Axis.WINTER_COLD)))));
  }

  private void add(Bed bed, Species species, int count, Candidacy candidacy, Optional<Range> winterC) {
    String id = species.id();
    Holding holding = holdings.getOrDefault(id, Holding.none(id));
    Supply left = new Supply(holding.priceCents(),
        Math.min(Rules.MOST_PLANTS, holding.plantsOnHand() - usedOnHand.getOrDefault(id, 0)),
        Math.min(Rules.MOST_PLANTS, holding.plantsToPropagate() - usedToPropagate.getOrDefault(id, 0)));
    Provision provision = Provision.of(left, count, bed.standingOf(id));
    usedOnHand.merge(id, provision.have(), Integer::sum);
    usedToPropagate.merge(id, provision.propagate(), Integer::sum);
    Candidate candidate = candidacy.of(species, left);
    Layer layer = candidate.stature().map(stature -> stature.layer()).orElse(Layer.HERB);
    jobs.add(new PlantJob(bed, species, layer, provision, winterC, candidate.cautions()));
  }

  public List<PlantJob> jobs() {
    return List.copyOf(jobs);
  }
}
