package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Candidate;
import guildwood.guild.CrownCover;
import guildwood.guild.Evaluation;
import guildwood.guild.Gap;
import guildwood.guild.Guild;
import guildwood.guild.GuildNumbers;
import guildwood.guild.GuildProblem;
import guildwood.guild.PlantSpacing;
import guildwood.guild.Provision;
import guildwood.guild.ScoreBreakdown;
import guildwood.guild.Stature;
import guildwood.guild.Wish;
import guildwood.kernel.Months;
import guildwood.species.CautionKind;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes {@link GuildView}s of what the evaluator says. */
public final class GuildViews {
  private final Messages messages;
  private final Units units;
  private final BedPlan plan;
  private final GuildProblem problem;
  private final GuildWords words;

  public GuildViews(Messages messages, Units units, BedPlan plan, GuildProblem problem) {
    this.messages = messages;
    this.units = units;
    this.plan = plan;
    this.problem = problem;
    this.words = new GuildWords(messages, plan.library(), units);
  }

  GuildWords words() {
    return words;
  }

  public GuildView view(Evaluation evaluation) {
    GuildNumbers numbers = evaluation.numbers();
    List<GuildView.MemberRow> members = members(evaluation);
    return new GuildView(
        GuildWords.points(evaluation.score().totalMilli()),
        Units.number(evaluation.score().total(), 1),
        members,
        evaluation.score().parts().stream().map(this::part).toList(),
        words.breaches(evaluation),
        words.remarks(evaluation.remarks()),
        layers(numbers),
        messages.say("layers.together", Units.number(coverPercent(numbers), 0)),
        messages.say("layers.ground", Units.number(numbers.groundPermille() / 10.0, 0)),
        members.stream().map(m -> year(m.id())).toList(),
        Integer.toString(numbers.plants()),
        Integer.toString(numbers.plantsToAdd()),
        words.provision(new Provision(numbers.plants() - numbers.plantsToAdd(), numbers.plantsOnHand(),
            numbers.plantsToPropagate(), numbers.plantsToBuy())),
        cost(evaluation));
  }

  private List<GuildView.MemberRow> members(Evaluation evaluation) {
    List<Candidate> candidates = new ArrayList<>();
    evaluation.guild().species().forEach(id -> problem.find(id).ifPresent(candidates::add));
    candidates.sort(Comparator.comparing((Candidate c) -> c.stature().map(s -> s.layer().ordinal()).orElse(99))
        .thenComparing(Candidate::name));
    return candidates.stream().map(c -> member(c, evaluation)).toList();
  }

  private GuildView.MemberRow member(Candidate candidate, Evaluation evaluation) {
    String id = candidate.speciesId();
    List<String> services = evaluation.score().parts().stream()
        .filter(p -> p.subject() == ScoreBreakdown.Subject.WISH && p.shares().stream().anyMatch(s -> s.speciesId().equals(id)))
        .map(p -> words.wish(p.wish().orElseThrow())).toList();
    String verdict = candidate.fit().verdict().key();
    Species species = plan.library().find(id).orElseThrow();
    return new GuildView.MemberRow(id, candidate.name(), species.scientificName(),
        candidate.stature().map(s -> layer(s.layer())).orElseGet(() -> messages.say("term.layer.none")),
        evaluation.guild().count(id), problem.standing(id),
        words.provision(Provision.of(candidate.supply(), evaluation.guild().count(id), problem.standing(id))), String.join(", ", services),
        verdict, messages.say("term.verdict." + verdict), words.limit(candidate.fit()),
        candidate.stature().filter(s -> s.heightM().isPresent()).map(s -> units.length(s.heightM().getAsDouble())).orElse(GuildView.MemberRow.NOT_KNOWN),
        candidate.stature().map(s -> units.length(crownM(s))).orElse(GuildView.MemberRow.NOT_KNOWN),
        candidate.stature().map(this::room).orElse(""),
        cautions(species), species.offersFood());
  }

  private List<String> cautions(Species species) {
    return species.cautions().stream().map(this::caution).distinct().toList();
  }

  private String caution(Statement statement) {
    String kind = CautionKind.of(statement.item()).orElse(CautionKind.OTHER).key();
    String detail = CautionKind.detail(statement.item());
    String label = messages.say("term.caution." + kind);
    return (detail.isEmpty() ? label : label + " (" + detail + ")") + ": " + statement.entered();
  }

  private GuildView.PartRow part(ScoreBreakdown.Part part) {
    boolean must = part.wish().map(Wish::must).orElse(false);
    String who = String.join(", ", part.shares().stream().map(this::share).toList());
    int percent = part.possibleMilli() > 0 ? Math.round(100f * part.earnedMilli() / part.possibleMilli()) : 0;
    return new GuildView.PartRow(subject(part.subject(), part.wish()), must, part.earnedMilli() > 0, GuildWords.points(part.earnedMilli()),
        GuildWords.points(part.possibleMilli()), who, percent);
  }

  private String share(ScoreBreakdown.Share share) {
    String folk = share.evidence().filter(e -> e == guildwood.species.Evidence.FOLK).isPresent()
        ? " (" + messages.say("term.evidence.folk") + ")" : "";
    return words.name(share.speciesId()) + folk + " " + GuildWords.points(share.earnedMilli());
  }

  private List<GuildView.LayerRow> layers(GuildNumbers numbers) {
    List<GuildView.LayerRow> rows = new ArrayList<>();
    for (Map.Entry<Layer, Integer> use : numbers.crownDm2().entrySet()) {
      int percent = (int) Math.round(use.getValue() / problem.areaM2());
      rows.add(new GuildView.LayerRow(layer(use.getKey()), units.area(use.getValue() / 100.0),
          units.area(problem.areaM2()), percent));
    }
    return rows;
  }

  /** What the guild costs, and what was assumed where nobody knows the price of a plant. */
  private String cost(Evaluation evaluation) {
    String sum = GuildWords.money(evaluation.numbers().costCents());
    boolean assumed = Provision.of(problem, evaluation.guild()).entrySet().stream()
        .anyMatch(e -> e.getValue().buy() > 0 && problem.find(e.getKey()).orElseThrow().supply().priceCents().isEmpty());
    return assumed ? messages.say("guild.cost-assumed", sum, GuildWords.money(problem.rules().priceIfUnknownCents())) : sum;
  }

  /** Crowns of different layers stand over each other; ground under two of them counts once. */
  private double coverPercent(GuildNumbers numbers) {
    int crowns = numbers.crownDm2().values().stream().mapToInt(Integer::intValue).sum();
    return CrownCover.unionPercent(crowns / problem.areaM2());
  }

  private static double crownM(Stature stature) {
    return 2 * Math.sqrt(stature.crownDm2() / 100.0 / Math.PI);
  }

  private String room(Stature stature) {
    PlantSpacing spacing = new PlantSpacing(PlantSpacing.Layout.SQUARE, crownM(stature));
    return messages.say("edit.room", spacing.fits(problem.areaM2()));
  }

  private String layer(Layer layer) {
    return messages.say("term.layer." + layer.key());
  }

  private GuildView.YearRow year(String speciesId) {
    Species species = plan.library().find(speciesId).orElseThrow();
    Months bloom = species.bloom().orElse(Months.NONE);
    Months harvest = species.harvest().values().stream().reduce(Months.NONE, Months::union);
    List<GuildView.MonthCell> cells = new ArrayList<>();
    for (Month month : Month.values()) {
      boolean blooms = bloom.contains(month);
      boolean crops = harvest.contains(month);
      String mark = blooms && crops ? "both" : blooms ? "bloom" : crops ? "harvest" : "none";
      cells.add(new GuildView.MonthCell(mark, messages.say("year." + mark)));
    }
    return new GuildView.YearRow(species.name(), cells);
  }

  /** What changed between two scores, part by part. */
  List<String> differences(ScoreBreakdown before, ScoreBreakdown now) {
    return before.diff(now).stream().map(d -> messages.say(d.gainMilli() >= 0 ? "difference.gain" : "difference.loss",
        subject(d.subject(), d.wish()), GuildWords.points(Math.abs(d.gainMilli())))).toList();
  }

  String subject(ScoreBreakdown.Subject subject, Optional<Wish> wish) {
    return switch (subject) {
      case WISH -> words.wish(wish.orElseThrow());
      case FIT -> messages.say("score.fit");
      case THRIFT -> messages.say("score.thrift");
      case UNMET_MUST -> messages.say("score.unmet-must", words.wish(wish.orElseThrow()));
    };
  }

  /** The gaps of a guild and what would close them, as far as they are known. */
  GuildView.GapsView gaps(KnownGaps.Answer answer, Guild now) {
    CloserSteps steps = new CloserSteps(messages, units, plan, now);
    return new GuildView.GapsView(answer.state() == KnownGaps.State.WORKING, answer.state() == KnownGaps.State.FAILED,
        answer.gaps().stream().map(gap -> gap(gap, steps)).toList());
  }

  private GuildView.GapRow gap(Gap gap, CloserSteps steps) {
    return new GuildView.GapRow(words.wish(gap.wish()), gap.wish().must(), words.reason(gap.reason()),
        gap.closers().stream().map(steps::row).toList());
  }
}
