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
  private static final int MOST_OF_ONE = Rules.MOST_PLANTS;

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

  /** The draft that was typed: its counts, and which species are kept at exactly those. */
  static Draft read(Form form, Bench bench) {
    Draft changed = bench.draft().named(form.text("name", SavedGuild.LONGEST_NAME)).with(guild(form, bench.base()));
    for (String id : form.names("count.")) {
      boolean wanted = form.ticked("keep." + id) && changed.guild().has(id);
      if (wanted != bench.isKept(id) && bench.base().find(id).isPresent()) {
        changed = wanted ? changed.keeping(id) : changed.freeing(id);
      }
    }
    return changed;
  }

  /**
   * The guild that was typed. What cannot be read or be is refused beside its field; that species then counts
   * as one plant, or as those that stand, and one to add stays out.
   */
  private static Guild guild(Form form, GuildProblem problem) {
    Guild guild = problem.standingGuild();
    for (String id : form.names("count.")) {
      if (problem.find(id).isPresent()) {
        guild = guild.with(id, count(form, "count." + id, problem.standing(id)));
      }
    }
    String added = form.value("add");
    OptionalInt plants = form.wholeNumber("addCount", 1, MOST_OF_ONE);
    if (!added.isEmpty() && problem.find(added).isEmpty()) {
      form.refuse(Finding.of("item.unknown", "add", added));
    } else if (!added.isEmpty() && !guild.has(added) && form.messageOf("addCount").isEmpty()) {
      guild = guild.with(added, plants.orElse(1));
    }
    return guild;
  }

  private static int count(Form form, String field, int standing) {
    OptionalInt count = form.wholeNumber(field, 0, Math.max(MOST_OF_ONE, standing));
    if (form.value(field).isBlank()) {
      form.refuse(Finding.of("value.missing", field));
    } else if (count.isPresent() && count.getAsInt() < standing) {
      form.refuse(Finding.of("below-standing", field, standing));
    }
    return Math.max(count.orElse(1), standing);
  }
}
