package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.fit.AxisFit;
import guildwood.fit.Fit;
import guildwood.guild.Candidate;
import guildwood.guild.RuleBreach;
import java.util.List;
import java.util.Optional;

/** How a species suits the bed, what limits it, what nobody knows of it, and which rules keep it out. */
final class CandidateJson {
  private CandidateJson() {}

  static ObjectNode write(Candidate candidate, List<RuleBreach> exclusions) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("species", candidate.speciesId());
    json.put("name", candidate.name());
    fit(candidate.fit(), json);
    ArrayNode rules = json.putArray("keptOutBy");
    exclusions.forEach(breach -> rules.add(BreachJson.write(breach)));
    ArrayNode assumed = json.putArray("assumed");
    candidate.assumptions().forEach(assumption -> assumed.add(assumption.key()));
    return json;
  }

  /** Verdict, fit, the axis that limits it where one does, and the axes on which nothing is stated. */
  static void fit(Fit fit, ObjectNode json) {
    json.put("verdict", fit.verdict().key());
    json.put("fit", fit.overall().isPresent() ? Decimals.rounded(fit.overall().getAsDouble()) : null);
    Optional<AxisFit> limiting = fit.limiting().filter(l -> l.value() < 1);
    json.put("limitingAxis", limiting.map(l -> l.axis().key()).orElse(null));
    json.put("shortfall", limiting.map(l -> Decimals.rounded(l.shortfall())).orElse(null));
    ArrayNode notKnown = json.putArray("notKnown");
    fit.unsaid().forEach(axis -> notKnown.add(axis.key()));
  }
}
