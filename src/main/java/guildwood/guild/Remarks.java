package guildwood.guild;

import guildwood.kernel.Finding;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is worth knowing about a guild without breaking a rule. Message keys {@code finding.guild.*}. */
final class Remarks {
  private static final Set<Layer> LOW = Set.of(Layer.HERB, Layer.GROUND_COVER, Layer.ROOT);

  private Remarks() {}

  static List<Finding> about(List<Member> members) {
    List<Finding> remarks = new ArrayList<>();
    for (Member member : members) {
      alone(member, members, remarks);
    }
    for (int i = 0; i < members.size(); i++) {
      for (int j = i + 1; j < members.size(); j++) {
        pair(members.get(i), members.get(j), remarks);
      }
    }
    return remarks;
  }

  private static void alone(Member member, List<Member> members, List<Finding> remarks) {
    Candidate candidate = member.candidate();
    for (Candidate.Assumption assumption : candidate.assumptions()) {
      remarks.add(Finding.of("guild.assumed", member.id(), assumption.key()));
    }
    boolean lacks = RuleCheck.lacksPartner(member, members);
    if (lacks && member.added() == 0) {
      remarks.add(Finding.of("guild.standing-without-partner", member.id()));
    }
    boolean hasPartner = member.count() >= 2 && !candidate.kinship().cultivar() || candidate.manners().partnerNear()
        || members.stream().anyMatch(m -> RuleCheck.arePartners(candidate, m.candidate()));
    boolean wouldHelp = candidate.manners().partner() == Manners.Partner.HELPS && !hasPartner;
    if (wouldHelp) {
      remarks.add(Finding.of("guild.partner-helps", member.id()));
    }
    if (lacks || wouldHelp) {
      candidate.manners().partnerFar().ifPresent(far ->
          remarks.add(Finding.of("guild.partner-far", member.id(), far.speciesId(), far.distanceM(), far.mostFt())));
    }
  }

  private static void pair(Member one, Member other, List<Finding> remarks) {
    for (String item : one.candidate().manners().doubtsWith(other.candidate().manners())) {
      remarks.add(Finding.of("guild.doubtful-conflict", one.id(), other.id(), item));
    }
    if (one.added() == 0 && other.added() == 0) {
      for (String item : one.candidate().manners().conflictsWith(other.candidate().manners())) {
        remarks.add(Finding.of("guild.standing-enemies", one.id(), other.id(), item));
      }
    }
    spreader(one, other, remarks);
    spreader(other, one, remarks);
  }

  /** A plant that runs swamps a low neighbour that stays where it is. */
  private static void spreader(Member runner, Member neighbour, List<Finding> remarks) {
    boolean low = neighbour.candidate().stature().filter(s -> LOW.contains(s.layer())).isPresent();
    if (runner.candidate().manners().spreads() && low && !neighbour.candidate().manners().spreads()) {
      remarks.add(Finding.of("guild.spreader", runner.id(), neighbour.id()));
    }
  }
}
