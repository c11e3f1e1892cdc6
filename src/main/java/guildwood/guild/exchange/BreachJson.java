package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.guild.GuildRule;
import guildwood.guild.RuleBreach;
import guildwood.guild.web.GuildWords;
import java.util.List;

/** A rule that is broken or keeps a species out, with what it says under names of its own. */
final class BreachJson {
  private BreachJson() {}

  /** With the sentence, for where people read it. */
  static ObjectNode write(RuleBreach breach, GuildWords words) {
    return write(breach).put("says", words.breach(breach));
  }

  static ObjectNode write(RuleBreach breach) {
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("rule", breach.rule().key());
    ArrayNode species = json.putArray("species");
    breach.species().forEach(species::add);
    List<String> keys = keys(breach.rule());
    for (int i = 0; i < keys.size(); i++) {
      value(json, keys.get(i), breach.args().get(i));
    }
    return json;
  }

  /** Names of the arguments, in the order in which {@link GuildRule} lists them. */
  private static List<String> keys(GuildRule rule) {
    return switch (rule) {
      case DOES_NOT_FIT, BORDERLINE -> List.of("axis", "fit", "shortfall");
      case CAUTION -> List.of("caution");
      case NOT_NATIVE -> List.of("region");
      case NOT_IN_STOCK -> List.of("onHand", "planned", "canPropagate");
      case NOT_TO_BE_HAD -> List.of("toBeHad", "planned");
      case LARGER_THAN_BED -> List.of("crownM2", "bedM2");
      case PATCH_TOO_SMALL -> List.of("planned", "needed");
      case TOO_MANY_SPECIES, TOO_MANY_PLANTS -> List.of("planned", "allowed");
      case OVER_BUDGET -> List.of("cost", "budget");
      case LAYER_FULL -> List.of("layer", "crownsM2", "roomM2");
      case NO_LIGHT_LEFT -> List.of("layer", "neededM2", "bedM2");
      case ENEMIES -> List.of("conflict");
      case GENUS_LIMIT -> List.of("genus", "planned", "allowed");
      case STANDING_LEFT_OUT -> List.of("planned", "standing");
      case PIN_IGNORED -> List.of("planned", "pinned");
      case UNKNOWN_SPECIES, FIT_NOT_KNOWN, LAYER_NOT_KNOWN, BANNED, PARTNER_MISSING -> List.of();
    };
  }

  private static void value(ObjectNode json, String key, String arg) {
    switch (key) {
      case "axis", "caution", "region", "layer", "conflict", "genus" -> json.put(key, arg);
      case "fit" -> json.put(key, Decimals.milli(Long.parseLong(arg)));
      case "cost", "budget" -> json.put(key, Decimals.hundredths(Long.parseLong(arg)));
      default -> json.put(key, Decimals.read(arg));
    }
  }
}
