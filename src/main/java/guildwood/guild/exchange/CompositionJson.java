package guildwood.guild.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.bed.Bed;
import guildwood.guild.BedPlan;
import guildwood.guild.Composition;
import guildwood.guild.Evaluator;
import guildwood.guild.GuildProblem;
import guildwood.guild.web.GuildWords;
import guildwood.site.Condition;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** Writes what was composed as JSON, as {@code composition.schema.json} describes it: keys always in the same order. */
final class CompositionJson {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  /** Escaped beyond ASCII, so that the answer is UTF-8 whatever the terminal speaks. */
  private static final JsonMapper JSON = JsonMapper.builder()
      .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
      .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
      .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
      .build();

  private final BedPlan plan;
  private final GuildProblem problem;
  private final Messages messages;
  private final GuildWords words;

  CompositionJson(BedPlan plan, GuildProblem problem, Messages messages) {
    this.plan = plan;
    this.problem = problem;
    this.messages = messages;
    this.words = new GuildWords(messages, plan.library(), Units.METRIC);
  }

  /** @param warnings about the files it was made from */
  void write(Composition composition, long seed, List<String> warnings, Writer to) throws IOException {
    JSON.writer(new DefaultPrettyPrinter().withObjectIndenter(INDENT))
        .writeValue(to, answer(composition, seed, warnings));
    to.write('\n');
    to.flush();
  }

  private ObjectNode answer(Composition composition, long seed, List<String> warnings) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("bed", bed());
    json.put("seed", seed);
    ProposalJson each = new ProposalJson(problem, plan.library(), words);
    ArrayNode proposals = json.putArray("proposals");
    composition.proposals().forEach(proposal -> proposals.add(each.write(proposal)));
    ArrayNode gaps = json.putArray("gaps");
    composition.gaps().forEach(gap -> gaps.add(GapJson.write(gap, words, messages.say("gaps.soil-test"))));
    Evaluator evaluator = new Evaluator(problem);
    ArrayNode candidates = json.putArray("candidates");
    problem.candidates().forEach(candidate ->
        candidates.add(CandidateJson.write(candidate, evaluator.exclusions(candidate.speciesId()))));
    ArrayNode warned = json.putArray("warnings");
    warnings.forEach(warned::add);
    json.put("note", messages.say("compose.note"));
    return json;
  }

  /** The bed as it was understood, so that a class word shows the numbers it stood for. */
  private ObjectNode bed() {
    Bed bed = plan.bed();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("name", bed.name());
    json.put("areaM2", Decimals.rounded(bed.areaM2()));
    json.put("place", plan.site().place());
    ObjectNode conditions = json.putObject("conditions");
    ArrayNode notKnown = JsonNodeFactory.instance.arrayNode();
    for (Axis axis : Axis.values()) {
      Condition condition = bed.conditions().get(axis);
      if (condition == null) {
        notKnown.add(axis.key());
      } else {
        ObjectNode entry = conditions.putObject(axis.key());
        entry.putArray("range").add(Decimals.rounded(condition.range().min())).add(Decimals.rounded(condition.range().max()));
        entry.put("basis", condition.basis().key()).put("entered", condition.entered());
      }
    }
    json.set("notKnown", notKnown);
    return json;
  }
}
