package guildwood.guild.web;

import guildwood.guild.Evaluation;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.GuildNumbers;
import guildwood.guild.GuildProblem;
import guildwood.guild.ScoreBreakdown;
import guildwood.guild.Wish;
import guildwood.kernel.Months;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** Sets two guilds side by side under one problem, so that their points can be told against each other. */
final class Comparison {
  private final Messages messages;
  private final GuildViews views;
  private final GuildProblem problem;
  private final NamedGuild one;
  private final NamedGuild other;
  private final Evaluation first;
  private final Evaluation second;

  Comparison(Messages messages, GuildViews views, GuildProblem problem, NamedGuild one, NamedGuild other) {
    this.messages = messages;
    this.views = views;
    this.problem = problem;
    this.one = one;
    this.other = other;
    Evaluator evaluator = new Evaluator(problem);
    this.first = evaluator.evaluate(one.guild());
    this.second = evaluator.evaluate(other.guild());
  }

  ComparisonView view() {
    return new ComparisonView(side(one, first), side(other, second), one.guild().speciesApart(other.guild()), verdict(),
        species(), parts(), numbers());
  }

  private ComparisonView.Side side(NamedGuild named, Evaluation evaluation) {
    return new ComparisonView.Side(named.key(), named.label(), GuildWords.capital(named.label()), named.path(), GuildWords.points(evaluation.score().totalMilli()),
        GuildCode.of(named.guild()), evaluation.breaches().stream().map(views.words()::breach).toList());
  }

  private String verdict() {
    int ahead = second.score().totalMilli() - first.score().totalMilli();
    return ahead == 0 ? messages.say("compare.equal")
        : messages.say("compare.ahead", GuildWords.capital(ahead > 0 ? other.label() : one.label()), GuildWords.points(Math.abs(ahead)));
  }

  private List<ComparisonView.SpeciesGroup> species() {
    List<ComparisonView.SpeciesRow> onlyOne = new ArrayList<>();
    List<ComparisonView.SpeciesRow> onlyOther = new ArrayList<>();
    List<ComparisonView.SpeciesRow> counts = new ArrayList<>();
    List<ComparisonView.SpeciesRow> same = new ArrayList<>();
    TreeSet<String> all = new TreeSet<>(java.util.Comparator.comparing(views.words()::name).thenComparing(id -> id));
    all.addAll(one.guild().species());
    all.addAll(other.guild().species());
    for (String id : all) {
      ComparisonView.SpeciesRow row = row(id);
      if (!other.guild().has(id)) {
        onlyOne.add(row);
      } else if (!one.guild().has(id)) {
        onlyOther.add(row);
      } else {
        (one.guild().count(id) == other.guild().count(id) ? same : counts).add(row);
      }
    }
    List<ComparisonView.SpeciesGroup> groups = new ArrayList<>();
    group("one", messages.say("compare.only", one.label()), onlyOne, groups);
    group("other", messages.say("compare.only", other.label()), onlyOther, groups);
    group("counts", messages.say("compare.other-counts"), counts, groups);
    group("same", messages.say("compare.same-counts"), same, groups);
    return groups;
  }

  private static void group(String kind, String title, List<ComparisonView.SpeciesRow> rows,
      List<ComparisonView.SpeciesGroup> groups) {
    if (!rows.isEmpty()) {
      groups.add(new ComparisonView.SpeciesGroup(kind, title, rows));
    }
  }

  private ComparisonView.SpeciesRow row(String id) {
    String layer = problem.find(id).flatMap(c -> c.stature()).map(s -> messages.say("term.layer." + s.layer().key())).orElse("–");
    return new ComparisonView.SpeciesRow(id, views.words().name(id), layer, count(one.guild(), id), count(other.guild(), id));
  }

  private static String count(Guild guild, String id) {
    return guild.has(id) ? Integer.toString(guild.count(id)) : "–";
  }

  private List<ComparisonView.PartRow> parts() {
    List<ComparisonView.PartRow> rows = new ArrayList<>();
    for (ScoreBreakdown.Part part : first.score().parts()) {
      rows.add(part(part.subject(), part.wish()));
    }
    for (ScoreBreakdown.Part part : second.score().parts()) {
      if (find(first, part.subject(), part.wish()).isEmpty()) {
        rows.add(part(part.subject(), part.wish()));
      }
    }
    return rows;
  }

  private ComparisonView.PartRow part(ScoreBreakdown.Subject subject, Optional<Wish> wish) {
    Optional<ScoreBreakdown.Part> here = find(first, subject, wish);
    Optional<ScoreBreakdown.Part> there = find(second, subject, wish);
    int before = here.map(ScoreBreakdown.Part::earnedMilli).orElse(0);
    int now = there.map(ScoreBreakdown.Part::earnedMilli).orElse(0);
    String difference = now == before ? messages.say("compare.same")
        : messages.say(now > before ? "compare.more" : "compare.fewer", GuildWords.points(Math.abs(now - before)));
    boolean must = subject == ScoreBreakdown.Subject.WISH && wish.map(Wish::must).orElse(false);
    return new ComparisonView.PartRow(views.subject(subject, wish), must, GuildWords.points(before), from(here),
        GuildWords.points(now), from(there), difference, now == before);
  }

  private static Optional<ScoreBreakdown.Part> find(Evaluation in, ScoreBreakdown.Subject subject, Optional<Wish> wish) {
    return in.score().parts().stream().filter(p -> p.subject() == subject && p.wish().equals(wish)).findFirst();
  }

  /** Who earns a part; the ground all plants cover is everybody's. */
  private String from(Optional<ScoreBreakdown.Part> part) {
    return part.filter(p -> p.subject() == ScoreBreakdown.Subject.WISH)
        .map(p -> views.words().names(p.shares().stream().map(ScoreBreakdown.Share::speciesId).toList())).orElse("");
  }

  private List<ComparisonView.NumberRow> numbers() {
    CharacterWords words = new CharacterWords(messages);
    List<ComparisonView.NumberRow> rows = new ArrayList<>();
    number("species", GuildNumbers::species, rows);
    number("plants", GuildNumbers::plants, rows);
    number("to-add", GuildNumbers::plantsToAdd, rows);
    number("on-hand", GuildNumbers::plantsOnHand, rows);
    number("to-propagate", GuildNumbers::plantsToPropagate, rows);
    number("to-buy", GuildNumbers::plantsToBuy, rows);
    number("cost", n -> GuildWords.money(n.costCents()), rows);
    number("food", GuildNumbers::foodSpecies, rows);
    number("soil", GuildNumbers::soilSpecies, rows);
    number("pollinators", GuildNumbers::pollinatorSpecies, rows);
    number("natives", GuildNumbers::nativeSpecies, rows);
    number("bloom", n -> months(n.bloom(), words), rows);
    number("harvest", n -> months(n.harvest(), words), rows);
    number("ground", n -> Units.number(n.groundPermille() / 10.0, 1) + " %", rows);
    number("fit", n -> Units.number(n.fitPermille() / 10.0, 1) + " %", rows);
    return rows;
  }

  private String months(Months months, CharacterWords words) {
    return months.isEmpty() ? messages.say("months.none")
        : messages.say("compare.months", months.list().size(), words.months(months));
  }

  private void number(String key, Function<GuildNumbers, Object> of, List<ComparisonView.NumberRow> rows) {
    String here = String.valueOf(of.apply(first.numbers()));
    String there = String.valueOf(of.apply(second.numbers()));
    rows.add(new ComparisonView.NumberRow(messages.say("compare.number." + key), here, there, here.equals(there)));
  }
}
