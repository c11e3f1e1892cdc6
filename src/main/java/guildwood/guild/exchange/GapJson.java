package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.guild.Change;
import guildwood.guild.Closer;
import guildwood.guild.Gap;
import guildwood.guild.Guild;
import guildwood.guild.GuildRule;
import guildwood.guild.web.GuildWords;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.util.Set;

/** A wish left unmet: the reason, and each change that would close it with the score it brings. */
final class GapJson {
  private static final Set<Axis> SOIL = Set.of(Axis.REACTION, Axis.FERTILITY);

  private GapJson() {}

  static ObjectNode write(Gap gap, GuildWords words, String soilTest) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("wish", gap.wish().key());
    json.put("must", gap.wish().must());
    reason(gap.reason(), json);
    json.put("says", words.reason(gap.reason()));
    ArrayNode closers = json.putArray("closers");
    gap.closers().forEach(closer -> closers.add(closer(closer, words, soilTest)));
    return json;
  }

  private static void reason(Gap.Reason reason, ObjectNode json) {
    if (reason instanceof Gap.Reason.NobodyInLibrary) {
      json.put("reason", "nobody-in-library");
    } else if (reason instanceof Gap.Reason.FailsOnSite fails) {
      json.put("reason", "fails-on-site").put("providers", fails.species());
      ArrayNode nearest = json.putArray("nearest");
      fails.misses().forEach(miss -> nearest.addObject().put("species", miss.speciesId()).put("axis", miss.axis().key())
          .put("fit", Decimals.milli(miss.fitPermille())).put("shortfall", Decimals.rounded(miss.shortfall()))
          .put("failingAxes", miss.failingAxes()));
    } else if (reason instanceof Gap.Reason.ExcludedByRules excluded) {
      json.put("reason", "excluded-by-rules").put("providers", excluded.species());
      ArrayNode rules = json.putArray("rules");
      excluded.rules().forEach(breach -> rules.add(BreachJson.write(breach)));
    } else if (reason instanceof Gap.Reason.NoRoom full) {
      json.put("reason", "no-room").put("species", full.speciesId());
      ArrayNode rules = json.putArray("rules");
      full.obstacles().forEach(breach -> rules.add(BreachJson.write(breach)));
    } else if (reason instanceof Gap.Reason.GroundShort ground) {
      json.put("reason", "ground-short").put("covered", Decimals.milli(ground.coveredPermille())).put("species", ground.speciesId());
      ArrayNode rules = json.putArray("rules");
      ground.obstacles().forEach(breach -> rules.add(BreachJson.write(breach)));
    } else if (reason instanceof Gap.Reason.CouldComeIn could) {
      json.put("reason", "could-come-in").put("species", could.speciesId()).put("gain", Decimals.milli(could.changeMilli()));
    }
  }

  private static ObjectNode closer(Closer closer, GuildWords words, String soilTest) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    change(closer.change(), json);
    json.put("score", Decimals.milli(closer.totalMilli()));
    json.put("gain", Decimals.milli(closer.gainMilli()));
    boolean soil = closer.change() instanceof Change.MoveCondition move && SOIL.contains(move.axis());
    json.put("says", words.change(closer.change()) + (soil ? ". " + soilTest : ""));
    counts(closer.guild(), json.putArray("species"));
    return json;
  }

  private static void change(Change change, ObjectNode json) {
    if (change instanceof Change.MoveCondition move) {
      json.put("change", "move-condition").put("axis", move.axis().key());
      range(move.from(), json.putArray("from"));
      range(move.to(), json.putArray("to"));
    } else if (change instanceof Change.EaseRule ease) {
      json.put("change", "ease-rule").put("rule", ease.rule().key());
      eased(ease, json);
    } else if (change instanceof Change.PutIn putIn) {
      json.put("change", "put-in").put("plant", putIn.speciesId()).put("count", putIn.count());
    } else if (change instanceof Change.Insist insist) {
      json.put("change", "insist").put("on", insist.wish().key());
    } else if (change instanceof Change.Enlarge enlarge) {
      json.put("change", "enlarge").put("fromM2", Decimals.rounded(enlarge.fromM2())).put("toM2", Decimals.rounded(enlarge.toM2()));
    }
  }

  /** What is let in, or the number a limit is eased to. */
  private static void eased(Change.EaseRule ease, ObjectNode json) {
    if (ease.detail().isEmpty()) {
      return;
    }
    if (ease.rule() == GuildRule.OVER_BUDGET) {
      json.put("to", Decimals.hundredths(Long.parseLong(ease.detail())));
    } else if (ease.detail().matches("\\d+")) {
      json.put("to", Long.parseLong(ease.detail()));
    } else {
      json.put("letIn", ease.detail());
    }
  }

  private static void range(Range range, ArrayNode to) {
    to.add(Decimals.rounded(range.min())).add(Decimals.rounded(range.max()));
  }

  private static void counts(Guild guild, ArrayNode to) {
    guild.counts().forEach((id, count) -> to.addObject().put("species", id).put("count", count));
  }
}
