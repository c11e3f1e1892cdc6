package guildwood.workplan.web;

import guildwood.guild.Provision;
import guildwood.web.Messages;
import guildwood.workplan.PlantJob;
import guildwood.workplan.RaisingPlan;
import guildwood.workplan.WorkSettings;
import guildwood.workplan.WorkTask;
import java.util.List;
import java.util.Optional;

/**
 * Plants of one species in one bed, and where they come from.
 *
 * @param raise how many to start, of what, and by when they can go in; empty where none are raised
 * @param care what to take care of before buying
 */
public record PlantView(String id, String name, String scientificName, String bed, int standing, int have, int propagate, int buy,
    String raise, List<String> care) {

  static PlantView of(PlantJob job, SiteAtWork site, WorkWords words, Messages messages) {
    Provision provision = job.provision();
    Optional<WorkTask> start = site.plan().find("start.bed-" + job.bed().id() + "." + job.species().id());
    return new PlantView(job.species().id(), job.species().name(), job.species().scientificName(), job.bed().name(), provision.standing(),
        provision.have(), provision.propagate(), provision.buy(),
        provision.propagate() == 0 ? "" : raise(job, start, site.settings(), words, messages),
        start.map(words::advice).orElse(List.of()));
  }

  private static String raise(PlantJob job, Optional<WorkTask> start, WorkSettings settings, WorkWords words, Messages messages) {
    if (start.isEmpty()) {
      return messages.say("plants.begun");
    }
    Optional<RaisingPlan> plan = RaisingPlan.of(job.species(), job.layer());
    String starts = words.amount(start.get(), start.get().amount());
    return plan.map(p -> messages.say("plants.raise", starts, Integer.toString(settings.take(p.way())), words.window(start.get().window()),
        words.day(start.get().window().from().plusMonths(p.months())))).orElseGet(() -> messages.say("plants.raise.unknown"));
  }
}
