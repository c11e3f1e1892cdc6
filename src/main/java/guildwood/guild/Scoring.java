package guildwood.guild;

import guildwood.kernel.Months;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Adds up what a guild earns, part by part. */
final class Scoring {
  private static final Set<GuildFunction> SOIL_BUILDING =
      Set.of(GuildFunction.NITROGEN_FIXER, GuildFunction.MULCH_MAKER, GuildFunction.DEEP_ROOTED);

  private final GuildProblem problem;
  private final PointScale scale;

  Scoring(GuildProblem problem) {
    this.problem = problem;
    this.scale = PointScale.of(problem);
  }

  ScoreBreakdown score(List<Member> members) {
    List<ScoreBreakdown.Part> parts = new ArrayList<>();
    for (int i = 0; i < problem.wishes().size(); i++) {
      parts.add(wish(i, members));
    }
    parts.add(fit(members));
    parts.add(thrift(members));
    int left = parts.stream().mapToInt(ScoreBreakdown.Part::earnedMilli).sum();
    for (int i = 0; i < problem.wishes().size(); i++) {
      Wish wish = problem.wishes().get(i);
      if (wish.must() && !parts.get(i).isMet()) {
        int taken = left - PointScale.afterUnmetMusts(left, 1);
        left -= taken;
        parts.add(new ScoreBreakdown.Part(
            ScoreBreakdown.Subject.UNMET_MUST, Optional.of(wish), -taken, 0, List.of()));
      }
    }
    return new ScoreBreakdown(left, parts);
  }

  /** The whole providers come first, then the half ones, each group in the order of their ids. */
  private ScoreBreakdown.Part wish(int index, List<Member> members) {
    Wish wish = problem.wishes().get(index);
    if (wish.kind() == WishKind.GROUND) {
      return ground(wish, scale.wishMilli()[index], members);
    }
    List<ScoreBreakdown.Share> shares = new ArrayList<>();
    int units = 0;
    for (int size = Services.WHOLE; size >= Services.HALF; size--) {
      for (Member member : members) {
        if (member.candidate().units(wish) == size) {
          int gain = scale.earned(index, units + size) - scale.earned(index, units);
          units += size;
          shares.add(new ScoreBreakdown.Share(member.id(), gain, evidence(wish, member.candidate())));
        }
      }
    }
    return new ScoreBreakdown.Part(ScoreBreakdown.Subject.WISH, Optional.of(wish), scale.earned(index, units),
        scale.wishMilli()[index], shares);
  }

  /** Those count first that cover most. */
  private ScoreBreakdown.Part ground(Wish wish, int possibleMilli, List<Member> members) {
    List<Member> covering = members.stream().filter(m -> GroundCover.of(m) > 0)
        .sorted(Comparator.comparingLong((Member m) -> -GroundCover.of(m))).toList();
    List<ScoreBreakdown.Share> shares = new ArrayList<>();
    long covered = 0;
    int earned = 0;
    for (Member member : covering) {
      covered += GroundCover.of(member);
      int then = GroundCover.earned(problem, wish, possibleMilli, covered);
      shares.add(new ScoreBreakdown.Share(member.id(), then - earned, GroundCover.claim(member.candidate())));
      earned = then;
    }
    return new ScoreBreakdown.Part(ScoreBreakdown.Subject.WISH, Optional.of(wish), earned, possibleMilli, shares);
  }

  private static Optional<Evidence> evidence(Wish wish, Candidate candidate) {
    return wish.kind() == WishKind.FUNCTION
        ? Optional.ofNullable(candidate.services().functions().get(GuildFunction.ofKey(wish.item())))
        : Optional.empty();
  }

  /** Within a layer the earnings stop at a seventh; only standing plants that overfill it can reach that. */
  private ScoreBreakdown.Part fit(List<Member> members) {
    Map<Layer, Integer> left = new EnumMap<>(Layer.class);
    List<ScoreBreakdown.Share> shares = new ArrayList<>();
    int sum = 0;
    for (Member member : members) {
      if (member.candidate().stature().isEmpty()) {
        continue;
      }
      Stature stature = member.candidate().stature().get();
      int room = left.getOrDefault(stature.layer(), scale.fitMilliOfLayer());
      int earned = (int) Math.min(room, scale.fitMilliOf(member.candidate(), stature.crownDm2(), member.count()));
      left.put(stature.layer(), room - earned);
      sum += earned;
      shares.add(new ScoreBreakdown.Share(member.id(), earned, Optional.empty()));
    }
    shares.sort(Comparator.comparing(ScoreBreakdown.Share::earnedMilli).reversed());
    return new ScoreBreakdown.Part(ScoreBreakdown.Subject.FIT, Optional.empty(), sum, scale.fitMilli(), shares);
  }

  private ScoreBreakdown.Part thrift(List<Member> members) {
    long bought = members.stream().mapToLong(Member::bought).sum();
    int earned = (int) Math.max(0, scale.thriftMilli() - bought * scale.perPlantMilli());
    return new ScoreBreakdown.Part(
        ScoreBreakdown.Subject.THRIFT, Optional.empty(), earned, scale.thriftMilli(), List.of());
  }

  GuildNumbers numbers(List<Member> members) {
    Map<Layer, Integer> crowns = new EnumMap<>(Layer.class);
    Months bloom = Months.NONE;
    Months harvest = Months.NONE;
    long crownFit = 0;
    long crown = 0;
    long shade = 0;
    for (Member member : members) {
      bloom = bloom.union(member.candidate().services().bloom());
      harvest = harvest.union(member.candidate().services().harvestMonths());
      crown += member.crownDm2();
      crownFit += (long) member.crownDm2() * member.candidate().fitPermille();
      if (member.candidate().stature().isPresent()) {
        Stature stature = member.candidate().stature().get();
        crowns.merge(stature.layer(), member.crownDm2(), Integer::sum);
        shade += (long) member.crownDm2() * stature.shadePercent();
      }
    }
    return new GuildNumbers(members.size(), members.stream().mapToInt(Member::count).sum(),
        members.stream().mapToInt(Member::added).sum(),
        members.stream().mapToInt(m -> m.provision().have()).sum(),
        members.stream().mapToInt(m -> m.provision().propagate()).sum(), members.stream().mapToInt(Member::bought).sum(),
        members.stream().mapToLong(m -> m.costCents(problem.rules())).sum(),
        count(members, c -> !c.services().harvest().isEmpty()),
        count(members, c -> c.services().functions().keySet().stream().anyMatch(SOIL_BUILDING::contains)),
        count(members, c -> c.services().functions().containsKey(GuildFunction.POLLINATOR_FORAGE)),
        count(members, c -> !c.nativeTo().isEmpty()),
        bloom, harvest, crown == 0 ? 0 : (int) (crownFit / crown),
        GroundCover.permille(problem, GroundCover.of(members)), crowns, (int) (shade / 100));
  }

  private static int count(List<Member> members, java.util.function.Predicate<Candidate> what) {
    return (int) members.stream().map(Member::candidate).filter(what).count();
  }
}
