package guildwood.guild.web;

import guildwood.guild.GuildNumbers;
import guildwood.guild.Proposal;
import guildwood.kernel.Months;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/** The character of a proposal told by the numbers that give it. */
final class CharacterWords {
  private final Messages messages;

  CharacterWords(Messages messages) {
    this.messages = messages;
  }

  String name(Proposal proposal) {
    return messages.say("character." + proposal.character().key());
  }

  /**
   * The numbers behind the name.
   *
   * @param all the proposals it is set apart from, the best first
   */
  String numbers(Proposal proposal, List<Proposal> all) {
    GuildNumbers n = proposal.evaluation().numbers();
    String key = "character.numbers." + proposal.character().key();
    return switch (proposal.character()) {
      case BEST_SCORE -> all.size() < 2 ? messages.say(key + ".alone", n.species(), n.plants())
          : messages.say(key, points(proposal, all.get(1)), n.species(), n.plants());
      case MOST_FOOD -> messages.say(key, n.foodSpecies(), n.species());
      case MOST_SOIL_BUILDING -> messages.say(key, n.soilSpecies(), n.species());
      case MOST_FOR_POLLINATORS -> messages.say(key, n.pollinatorSpecies(), n.species());
      case LONGEST_BLOOM -> messages.say(key, n.bloom().list().size(), months(n.bloom()));
      case LONGEST_HARVEST -> messages.say(key, n.harvest().list().size(), months(n.harvest()));
      case CHEAPEST -> messages.say(key, GuildWords.money(n.costCents()), n.plantsToBuy());
      case FEWEST_TO_BUY -> messages.say(key, n.plantsToBuy(), n.plantsToAdd());
      case FEWEST_PLANTS -> messages.say(key, n.plants(), n.species());
      case FEWEST_SPECIES -> messages.say(key, n.species(), n.plants());
      case BEST_FIT -> messages.say(key, Units.number(n.fitPermille() / 10.0, 1));
      case MOST_NATIVE -> messages.say(key, n.nativeSpecies(), n.species());
      case ANOTHER_WAY -> messages.say(key, shared(proposal, all.get(0)), n.species(), points(all.get(0), proposal));
    };
  }

  /** How far one is above another. */
  private static String points(Proposal above, Proposal below) {
    return Units.number((above.score().totalMilli() - below.score().totalMilli()) / 1000.0, 1);
  }

  private static int shared(Proposal proposal, Proposal best) {
    return (int) proposal.guild().species().stream().filter(best.guild()::has).count();
  }

  /** Months as runs: {@code Mar–May, Aug}. A run over the new year stays one run. */
  String months(Months months) {
    List<Month> all = months.list();
    if (all.size() == Month.values().length) {
      return messages.say("months.all");
    }
    List<String> runs = new ArrayList<>();
    for (Month first : all) {
      if (months.contains(first.minus(1))) {
        continue;
      }
      Month last = first;
      while (months.contains(last.plus(1))) {
        last = last.plus(1);
      }
      runs.add(first == last ? month(first) : month(first) + "–" + month(last));
    }
    return runs.isEmpty() ? messages.say("months.none") : String.join(", ", runs);
  }

  private String month(Month month) {
    return messages.say("term.month.short." + month.getValue());
  }
}
