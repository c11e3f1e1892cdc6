package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.guild.Candidate;
import guildwood.guild.GuildNumbers;
import guildwood.guild.GuildProblem;
import guildwood.guild.Proposal;
import guildwood.guild.Provision;
import guildwood.guild.ScoreBreakdown;
import guildwood.guild.Wish;
import guildwood.guild.web.GuildWords;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import java.util.List;

/** One proposal: its plants, where its points come from, and how far it can be from the best. */
final class ProposalJson {
  private final GuildProblem problem;
  private final SpeciesLibrary library;
  private final GuildWords words;

  ProposalJson(GuildProblem problem, SpeciesLibrary library, GuildWords words) {
    this.problem = problem;
    this.library = library;
    this.words = words;
  }

  ObjectNode write(Proposal proposal) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("character", proposal.character().key());
    json.put("score", Decimals.milli(proposal.score().totalMilli()));
    json.put("upperBound", Decimals.milli(proposal.upperBoundMilli()));
    json.put("provenBest", proposal.provenBest());
    keys(proposal.unmetMusts(), json.putArray("unmetMusts"));
    keys(proposal.score().unmetWishes(), json.putArray("unmetWishes"));
    ArrayNode species = json.putArray("species");
    proposal.guild().counts().forEach((id, count) -> species.add(member(problem.find(id).orElseThrow(), count)));
    ArrayNode parts = json.putArray("parts");
    proposal.score().parts().forEach(part -> parts.add(part(part)));
    ArrayNode broken = json.putArray("brokenRules");
    proposal.evaluation().breaches().forEach(breach -> broken.add(BreachJson.write(breach, words)));
    ArrayNode remarks = json.putArray("remarks");
    words.remarks(proposal.evaluation().remarks()).forEach(remarks::add);
    json.set("numbers", numbers(proposal.evaluation().numbers()));
    return json;
  }

  static void keys(List<Wish> wishes, ArrayNode to) {
    wishes.forEach(wish -> to.add(wish.key()));
  }

  private ObjectNode member(Candidate candidate, int count) {
    Provision provision = Provision.of(candidate.supply(), count, problem.standing(candidate.speciesId()));
    Species species = library.find(candidate.speciesId()).orElseThrow();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("species", species.id());
    json.put("name", species.name());
    json.put("scientificName", species.scientificName());
    json.put("count", count);
    json.put("standing", provision.standing());
    json.put("fromStock", provision.have());
    json.put("toPropagate", provision.propagate());
    json.put("toBuy", provision.buy());
    json.put("layer", candidate.stature().map(s -> s.layer().key()).orElse(null));
    CandidateJson.fit(candidate.fit(), json);
    ArrayNode cautions = json.putArray("cautions");
    species.cautions().forEach(caution -> cautions.add(caution(caution)));
    return json;
  }

  private static ObjectNode caution(Statement caution) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("caution", CautionKind.of(caution.item()).orElse(CautionKind.OTHER).key());
    if (!CautionKind.detail(caution.item()).isEmpty()) {
      json.put("about", CautionKind.detail(caution.item()));
    }
    return json.put("says", caution.entered());
  }

  private static ObjectNode part(ScoreBreakdown.Part part) {
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("part", part.subject().key());
    part.wish().ifPresent(wish -> json.put("wish", wish.key()).put("must", wish.must()).put("weight", wish.weight()));
    json.put("earned", Decimals.milli(part.earnedMilli()));
    json.put("possible", Decimals.milli(part.possibleMilli()));
    ArrayNode shares = json.putArray("shares");
    part.shares().forEach(share -> {
      ObjectNode each = shares.addObject().put("species", share.speciesId()).put("earned", Decimals.milli(share.earnedMilli()));
      share.evidence().map(Evidence::key).ifPresent(evidence -> each.put("evidence", evidence));
    });
    return json;
  }

  private static ObjectNode numbers(GuildNumbers numbers) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("species", numbers.species());
    json.put("plants", numbers.plants());
    json.put("plantsToAdd", numbers.plantsToAdd());
    json.put("plantsOnHand", numbers.plantsOnHand());
    json.put("plantsToPropagate", numbers.plantsToPropagate());
    json.put("plantsToBuy", numbers.plantsToBuy());
    json.put("cost", Decimals.hundredths(numbers.costCents()));
    json.put("foodSpecies", numbers.foodSpecies());
    json.put("soilSpecies", numbers.soilSpecies());
    json.put("pollinatorSpecies", numbers.pollinatorSpecies());
    json.put("nativeSpecies", numbers.nativeSpecies());
    Decimals.months(numbers.bloom(), json.putArray("bloomMonths"));
    Decimals.months(numbers.harvest(), json.putArray("harvestMonths"));
    json.put("meanFit", Decimals.milli(numbers.fitPermille()));
    json.put("groundCovered", Decimals.milli(numbers.groundPermille()));
    ObjectNode crowns = json.putObject("crownM2");
    numbers.crownDm2().forEach((layer, dm2) -> crowns.put(layer.key(), Decimals.hundredths(dm2)));
    return json;
  }
}
