package guildwood.workplan.web;

import guildwood.bed.Bed;
import guildwood.materials.SiteNeeds;
import guildwood.site.Site;
import guildwood.workplan.Done;
import guildwood.workplan.GardenYear;
import guildwood.workplan.PlantJob;
import guildwood.workplan.WorkPlan;
import guildwood.workplan.WorkSettings;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A site with all work that is left on it.
 *
 * @param bed the one bed that is looked at; empty where it is the whole site
 * @param jobs the plants of the beds looked at
 * @param plan the work there, and what must come before it
 */
public record SiteAtWork(Site site, Optional<Bed> bed, WorkSettings settings, SiteNeeds needs, GardenYear year, LocalDate today,
    List<PlantJob> jobs, List<Done> done, WorkPlan plan) {

  /** The address of its pages, with the bed where one is looked at. */
  public String address(String page) {
    return "/sites/" + site.id() + page + bed.map(b -> "?bed=" + b.id()).orElse("");
  }
}
