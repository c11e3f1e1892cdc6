package guildwood.guild.web;

import guildwood.fit.AxisFit;
import guildwood.fit.Fit;
import guildwood.guild.Candidate;
import guildwood.guild.Change;
import guildwood.guild.Easing;
import guildwood.guild.Evaluation;
import guildwood.guild.Evaluator;
import guildwood.guild.GuildProblem;
import guildwood.guild.GuildRule;
import guildwood.guild.Questions;
import guildwood.guild.RuleBreach;
import guildwood.guild.WhyNot;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Answers why a species is not in a guild. */
final class WhyAnswer {
  private final Messages messages;
  private final Units units;
  private final NamedGuild named;
  private final GuildProblem problem;
  private final GuildWords words;
  private final GuildViews views;

  WhyAnswer(Messages messages, Units units, NamedGuild named) {
    this.messages = messages;
    this.units = units;
    this.named = named;
    this.problem = named.problem();
    this.words = new GuildWords(messages, named.plan().library(), units);
    this.views = new GuildViews(messages, units, named.plan(), problem);
  }

  WhyView about(Species species) {
    WhyNot why = new Questions(problem, 1).whyNot(named.guild(), species.id());
    List<RuleBreach> breaches = why.exclusions().isEmpty() ? why.obstacles() : why.exclusions();
    Evaluator evaluator = new Evaluator(problem);
    boolean comes = why.guild().isPresent() && why.outcome() != WhyNot.Outcome.ALREADY_IN;
    Optional<Evaluation> with = why.guild().filter(g -> comes).map(evaluator::evaluate);
    return new WhyView(species.id(), species.name(), species.scientificName(), key(why.outcome()), answer(why, species),
        breaches.stream().map(b -> words.breach(b)).toList(), axes(species.id()), easings(why, species.id()),
        with.map(e -> GuildCode.of(e.guild())).orElse(""),
        with.map(e -> words.changes(named.guild(), e.guild())).orElse(List.of()),
        with.map(e -> views.differences(evaluator.score(named.guild()), e.score())).orElse(List.of()),
        with.map(views::view).orElse(null));
  }

  private static String key(WhyNot.Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private String answer(WhyNot why, Species species) {
    String points = GuildWords.points(Math.abs(why.changeMilli()));
    int total = new Evaluator(problem).score(named.guild()).totalMilli();
    return messages.say("why." + key(why.outcome()), GuildWords.capital(species.name()), named.label(), named.guild().count(species.id()),
        points, GuildWords.points(total), GuildWords.points(total + why.changeMilli()));
  }

  private List<WhyView.AxisRow> axes(String speciesId) {
    Optional<Candidate> candidate = problem.find(speciesId);
    List<WhyView.AxisRow> rows = new ArrayList<>();
    candidate.map(Candidate::fit).ifPresent(fit -> {
      fit.axes().forEach(axis -> rows.add(axis(axis)));
      fit.unsaid().forEach(axis -> rows.add(unsaid(axis, fit)));
    });
    return rows;
  }

  private WhyView.AxisRow axis(AxisFit fit) {
    String verdict = fit.verdict().key();
    String miss = fit.shortfall() == 0 ? "" : words.miss(fit.axis(), fit.shortfall());
    return new WhyView.AxisRow(words.axis(fit.axis().key()), offered(fit.axis()), span(fit.axis(), fit),
        verdict, messages.say("term.verdict." + verdict), miss);
  }

  private WhyView.AxisRow unsaid(Axis axis, Fit fit) {
    String verdict = "not-known";
    return new WhyView.AxisRow(words.axis(axis.key()), offered(axis), "–", verdict,
        messages.say("term.verdict." + verdict), "");
  }

  private String offered(Axis axis) {
    return words.measured(axis, problem.conditions().get(axis));
  }

  /** What the species bears; on the winter and the season there is a limit on one side only. */
  private String span(Axis axis, AxisFit fit) {
    var tolerated = fit.tolerance().tolerated();
    return switch (axis) {
      case WINTER_COLD -> messages.say("why.bears-down-to", units.temperature(tolerated.min()));
      case SEASON -> messages.say("why.needs-days", Units.number(tolerated.min(), 0));
      default -> words.measured(axis, tolerated);
    };
  }

  /** Only one rule that alone keeps it out is worth easing; each is tried, and said what would come of it. */
  private List<WhyView.EasingRow> easings(WhyNot why, String speciesId) {
    List<WhyView.EasingRow> rows = new ArrayList<>();
    for (RuleBreach breach : why.exclusions()) {
      Easing.of(problem.rules(), breach).filter(e -> breach.rule() != GuildRule.BANNED)
          .ifPresent(ease -> rows.add(easing(ease, speciesId)));
    }
    return rows.stream().distinct().toList();
  }

  private WhyView.EasingRow easing(Change.EaseRule ease, String speciesId) {
    GuildProblem eased = ease.applyTo(problem);
    WhyNot then = new Questions(eased, 1).whyNot(named.guild(), speciesId);
    String result = messages.say("why.then." + key(then.outcome()), GuildWords.points(Math.abs(then.changeMilli())));
    String code = then.guild().filter(g -> g.has(speciesId)).map(GuildCode::of).orElse("");
    return new WhyView.EasingRow(words.change(ease), result, CloserSteps.easing(named.plan(), ease, code));
  }
}
