package guildwood.workplan.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.guild.Guilds;
import guildwood.materials.MaterialRecords;
import guildwood.materials.Need;
import guildwood.materials.Needs;
import guildwood.materials.SiteNeeds;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.species.SpeciesRecords;
import guildwood.web.Address;
import guildwood.workplan.Done;
import guildwood.workplan.GardenYear;
import guildwood.workplan.GuildJobs;
import guildwood.workplan.PlantJob;
import guildwood.workplan.SiteWork;
import guildwood.workplan.WorkPlan;
import guildwood.workplan.WorkRecords;
import guildwood.workplan.WorkSettings;
import guildwood.workplan.WorkTask;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Brings together what the work on a site is planned from, for the pages about it. */
public final class WorkDesk {
  private final Sites sites;
  private final Beds beds;
  private final Guilds guilds;
  private final SpeciesRecords species;
  private final Needs needs;
  private final MaterialRecords materials;
  private final WorkRecords records;
  private final Clock clock;

  public WorkDesk(Sites sites, Beds beds, Guilds guilds, SpeciesRecords species, Needs needs, MaterialRecords materials, WorkRecords records,
      Clock clock) {
    this.sites = sites;
    this.beds = beds;
    this.guilds = guilds;
    this.species = species;
    this.needs = needs;
    this.materials = materials;
    this.records = records;
    this.clock = clock;
  }

  WorkRecords records() {
    return records;
  }


  /** The site named in the address, with the bed named in the query where there is one; 404 where there is none. */
  SiteAtWork atWork(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    String bed = ctx.queryParam("bed");
    if (bed == null) {
      return atWork(site, Optional.empty());
    }
    Optional<Bed> found = bed.matches("\\d{1,18}") ? beds.find(Long.parseLong(bed)).filter(b -> b.siteId() == site.id()) : Optional.empty();
    return atWork(site, Optional.of(found.orElseThrow(NotFoundResponse::new)));
  }

  /** The work in one bed, and what must come before it. */
  public SiteAtWork ofBed(Bed bed) {
    return atWork(sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new), Optional.of(bed));
  }

  Optional<Bed> bed(long id) {
    return beds.find(id);
  }

  private SiteAtWork atWork(Site site, Optional<Bed> bed) {
    LocalDate today = LocalDate.now(clock);
    WorkSettings settings = records.settings(site.id());
    SiteNeeds needed = needs.ofSite(site.id());
    GuildJobs jobs = new GuildJobs(site, species.library(), species.holdings());
    beds.ofSite(site.id()).forEach(b -> guilds.saved(b.id()).ifPresent(saved -> jobs.add(b, saved.guild())));
    List<Done> done = records.done(site.id());
    WorkPlan whole = SiteWork.of(GardenYear.of(site), today, settings, needed, jobs.jobs(), done);
    WorkPlan plan = bed.map(b -> whole.ofBed(b.id())).orElse(whole);
    List<PlantJob> shown = jobs.jobs().stream().filter(job -> bed.map(b -> b.id() == job.bed().id()).orElse(true)).toList();
    return new SiteAtWork(site, bed, settings, needed, GardenYear.of(site), today, shown, done, plan);
  }

  /**
   * Keeps that so much of a task was done today.
   *
   * @param words how the page calls it
   * @return false where it cannot be kept any more: what it is about is gone
   */
  boolean finish(SiteAtWork site, WorkTask task, double amount, String words) {
    Optional<Need> need = site.needs().needs().stream().filter(n -> SiteWork.key(n).equals(task.key())).findFirst();
    if (need.isPresent()) {
      boolean all = amount >= task.amount() - 1e-9;
      return materials.lay(site.site().id(), need.get(), amount, site.today(), all).isPresent();
    }
    return records.finish(new Done(0, site.site().id(), task.key(), task.kind(), words, amount, site.today(), task.speciesId(),
        task.bedId())).isPresent();
  }
}
