package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Change;
import guildwood.guild.Closer;
import guildwood.guild.Guild;
import guildwood.guild.GuildRule;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What closes a gap, with the promise it makes and the step that keeps it. */
final class CloserSteps {
  private final Messages messages;
  private final BedPlan plan;
  private final Guild now;
  private final GuildWords words;
  private final GroundWords ground;

  CloserSteps(Messages messages, Units units, BedPlan plan, Guild now) {
    this.messages = messages;
    this.plan = plan;
    this.now = now;
    this.words = new GuildWords(messages, plan.library(), units);
    this.ground = new GroundWords(messages, units, plan);
  }

  GuildView.CloserRow row(Closer closer) {
    Change change = closer.change();
    String gain = messages.say(closer.gainMilli() >= 0 ? "closer.gain" : "closer.loss",
        GuildWords.points(Math.abs(closer.gainMilli())), GuildWords.points(closer.totalMilli()));
    String code = GuildCode.of(closer.guild());
    return new GuildView.CloserRow(words.change(change), gain, closer.gainMilli() >= 0,
        words.changes(now, closer.guild()), step(change), address(change, code), code, freed(change),
        change instanceof Change.MoveCondition move ? ground.about(move) : List.of());
  }

  private static String step(Change change) {
    if (change instanceof Change.MoveCondition) {
      return "ground";
    }
    if (change instanceof Change.Enlarge) {
      return "bed";
    }
    return change instanceof Change.EaseRule && freed(change).isEmpty() ? "limits" : "draft";
  }

  /** A ban is about one species, so that the draft itself can lift it; saving the draft makes it last. */
  private static String freed(Change change) {
    return change instanceof Change.EaseRule ease && ease.rule() == GuildRule.BANNED ? ease.detail() : "";
  }

  private String address(Change change, String code) {
    String bed = "/beds/" + plan.bed().id();
    return change instanceof Change.EaseRule ease ? easing(plan, ease, code) : bed + "/edit";
  }

  /** The limits with an easing filled in, and the guild that would then stand. */
  static String easing(BedPlan plan, Change.EaseRule ease, String code) {
    return "/beds/" + plan.bed().id() + "/wishes?ease=" + ease.rule().key() + "&to=" + encoded(ease.detail())
        + "&guild=" + encoded(code);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
