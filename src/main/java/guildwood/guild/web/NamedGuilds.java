package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Composition;
import guildwood.guild.Proposal;
import guildwood.kernel.Finding;
import guildwood.web.Messages;
import guildwood.web.Pages;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the guild that an address names. */
final class NamedGuilds {
  static final String SAVED = "saved";
  static final String DRAFT = "draft";

  private final Messages messages;
  private final Desk desk;
  private final Drafts drafts;
  private final Compositions compositions;

  NamedGuilds(Messages messages, Desk desk, Drafts drafts, Compositions compositions) {
    this.messages = messages;
    this.desk = desk;
    this.drafts = drafts;
    this.compositions = compositions;
  }

  /**
   * The guild with a key. An empty key stands for the saved guild, or for what stands in a bed that has none.
   * A key nobody ever had is a page that does not exist.
   */
  NamedGuild find(Context ctx, String key) {
    Bench bench = Bench.of(ctx, desk, drafts, messages);
    String path = "/beds/" + bench.bedId() + "/guild";
    if (key.equals(DRAFT)) {
      return new NamedGuild(DRAFT, messages.say("named.draft"), path + "/edit", bench.plan(), bench.problem(),
          bench.draft().guild(), Optional.empty());
    }
    if (key.equals(SAVED) || key.isEmpty()) {
      return bench.saved()
          .map(s -> new NamedGuild(SAVED, messages.say("named.saved"), path, bench.kept(), bench.base(), s.guild(), Optional.empty()))
          .or(() -> key.isEmpty() ? Optional.of(new NamedGuild("", messages.say("named.standing"), path, bench.kept(),
              bench.base(), bench.base().standingGuild(), Optional.empty())) : Optional.empty())
          .orElseThrow(NotFoundResponse::new);
    }
    return proposal(bench.kept(), key).orElseThrow(NotFoundResponse::new);
  }

  private Optional<NamedGuild> proposal(BedPlan plan, String key) {
    int dot = key.indexOf('.');
    if (dot < 0 || !key.substring(dot + 1).matches("\\d{1,3}")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(key.substring(dot + 1));
    return compositions.find(key.substring(0, dot), plan.bed().id()).flatMap(run -> {
      List<Proposal> proposals = proposals(run);
      return number < 1 || number > proposals.size() ? Optional.empty()
          : Optional.of(proposal(run, key.substring(0, dot), number, proposals.get(number - 1)));
    });
  }

  private NamedGuild proposal(Compositions.Run run, String runKey, int number, Proposal proposal) {
    String character = new CharacterWords(messages).name(proposal);
    return new NamedGuild(runKey + "." + number, messages.say("named.proposal", number, character),
        "/beds/" + run.plan().bed().id() + "/guild/proposals/" + runKey + "/" + number, run.plan(), run.problem(),
        proposal.guild(), Optional.of(run));
  }

  /** Whether a key names a proposal that is no longer kept, so that the page can say so and lead on. */
  boolean isGone(Context ctx, String key) {
    int dot = key.indexOf('.');
    return dot > 0 && compositions.find(key.substring(0, dot), Desk.idOf(ctx.pathParam("bed"))).isEmpty();
  }

  /** Leads to the guild's page and says that the proposals are gone. */
  static void saySo(Context ctx, Pages pages) {
    pages.goOn(ctx, "/beds/" + Desk.idOf(ctx.pathParam("bed")) + "/guild", Finding.of("done.proposals-gone", ""));
  }

  /** All guilds of a bed that can be set side by side: the proposals of a run, then the saved guild and the draft. */
  List<WishPages.Choice> choices(Context ctx, Optional<String> runKey) {
    List<WishPages.Choice> choices = new ArrayList<>();
    Bench bench = Bench.of(ctx, desk, drafts, messages);
    runKey.flatMap(key -> compositions.find(key, bench.bedId())).ifPresent(run -> {
      List<Proposal> proposals = proposals(run);
      for (int number = 1; number <= proposals.size(); number++) {
        NamedGuild named = proposal(run, runKey.get(), number, proposals.get(number - 1));
        choices.add(new WishPages.Choice(named.key(), named.label()));
      }
    });
    if (bench.saved().isPresent()) {
      choices.add(new WishPages.Choice(SAVED, messages.say("named.saved")));
    }
    if (bench.isUnsaved()) {
      choices.add(new WishPages.Choice(DRAFT, messages.say("named.draft")));
    }
    return choices;
  }

  private static List<Proposal> proposals(Compositions.Run run) {
    return run.state().composition().map(Composition::proposals).orElse(List.of());
  }
}
