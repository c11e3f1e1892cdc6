package guildwood.guild;

import guildwood.kernel.Finding;
import java.util.List;

/**
 * What the {@link Evaluator} says about a guild.
 *
 * @param breaches rules it breaks, in the order of {@link GuildRule}
 * @param remarks worth knowing, no rule broken: doubtful conflicts, spreaders beside slow neighbours and such
 */
public record Evaluation(
    Guild guild, ScoreBreakdown score, List<RuleBreach> breaches, List<Finding> remarks, GuildNumbers numbers) {
  public Evaluation {
    breaches = List.copyOf(breaches);
    remarks = List.copyOf(remarks);
  }

  public boolean keepsRules() {
    return breaches.isEmpty();
  }
}
