package guildwood.guild.web;

import guildwood.guild.Draft;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Rules;
import guildwood.guild.SavedGuild;
import guildwood.kernel.Finding;
import guildwood.web.Form;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/** A draft as form fields, both ways. */
final class DraftForm {
  private DraftForm() {}

  static Map<String, String> fill(Bench bench) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("name", bench.draft().name());
    bench.draft().guild().counts().forEach((id, count) -> {
      values.put("count." + id, Integer.toString(count));
      if (bench.isKept(id)) {
        values.put("keep." + id, "on");
      }
    });
    return values;
  }

  /** The draft that was typed; a count that cannot be read is refused and leaves the species at one plant. */
  static Draft read(Form form, Bench bench) {
    GuildProblem problem = bench.base();
    Draft draft = bench.draft().named(form.text("name", SavedGuild.LONGEST_NAME));
    Guild guild = problem.standingGuild();
    for (String id : form.names("count.")) {
      OptionalInt count = form.wholeNumber("count." + id, 0, Rules.MOST_PLANTS);
      if (problem.find(id).isPresent()) {
        guild = guild.with(id, Math.max(count.orElse(1), problem.standing(id)));
      }
    }
    Draft changed = draft.with(added(form, problem, guild));
    for (String id : form.names("count.")) {
      boolean wanted = form.ticked("keep." + id) && changed.guild().has(id);
      if (wanted != bench.isKept(id) && problem.find(id).isPresent()) {
        changed = wanted ? changed.keeping(id) : changed.freeing(id);
      }
    }
    return changed;
  }

  private static Guild added(Form form, GuildProblem problem, Guild guild) {
    String added = form.value("add");
    if (added.isEmpty()) {
      return guild;
    }
    OptionalInt count = form.wholeNumber("addCount", 1, Rules.MOST_PLANTS);
    if (problem.find(added).isEmpty()) {
      form.refuse(Finding.of("item.unknown", "add", added));
      return guild;
    }
    return guild.has(added) ? guild : guild.with(added, count.orElse(1));
  }
}
