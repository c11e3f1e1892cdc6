package guildwood.choosing.web;

import guildwood.choosing.BedFits;
import guildwood.choosing.Outcome;
import guildwood.choosing.Query;
import guildwood.kernel.Months;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One species in the table. Empty texts stand for what is not known.
 *
 * @param scientificName empty where it is the name itself
 * @param cautions all that warns of it; edible parts never stand without them
 * @param notKnown facets in which it only stays because 'not known' does
 * @param verdict absent without a bed
 */
record RowView(
    String id,
    String name,
    String scientificName,
    String layers,
    String height,
    List<Job> jobs,
    String bloom,
    List<Part> harvest,
    List<String> cautions,
    List<String> notKnown,
    VerdictView verdict) {

  /** A function it has, and whether the claim stands on folk evidence only. */
  record Job(String name, boolean folk) {}

  /** A part that is harvested, and when; the months may be empty. */
  record Part(String name, String months) {}

  static RowView of(Outcome.Remaining remaining, Optional<BedFits> bed, OptionWords words) {
    Species species = remaining.species();
    Messages messages = words.messages();
    boolean isNamed = !species.commonNames().isEmpty();
    return new RowView(species.id(), species.name(), isNamed ? species.scientificName() : "",
        String.join(", ", species.layers().stream().map(Layer::key).map(key -> messages.say("term.layer." + key)).toList()),
        species.range(Trait.HEIGHT).map(words.units()::length).orElse(""),
        jobs(species, messages),
        species.bloom().map(months -> months(months, messages)).orElse(""),
        harvest(species, messages),
        cautions(species, messages),
        remaining.notKnownIn().stream().map(words::facet).toList(),
        bed.map(fits -> VerdictView.of(fits.of(species), words.units(), messages)).orElse(null));
  }

  private static List<Job> jobs(Species species, Messages messages) {
    List<Job> jobs = new ArrayList<>();
    for (GuildFunction function : GuildFunction.values()) {
      species.ruling(Trait.FUNCTION, function.key())
          .filter(statement -> ((TraitValue.YesNo) statement.value()).yes())
          .ifPresent(statement -> jobs.add(new Job(messages.say("term.function." + function.key()),
              !Query.supports(statement.evidence(), Evidence.OBSERVED))));
    }
    return jobs;
  }

  private static String months(Months months, Messages messages) {
    return months.isEmpty() ? messages.say("choosing.undated") : MonthSpans.of(months, messages);
  }

  private static List<Part> harvest(Species species, Messages messages) {
    return species.harvest().entrySet().stream()
        .map(part -> new Part(messages.say("term.part." + part.getKey()), MonthSpans.of(part.getValue(), messages)))
        .toList();
  }

  /** One entry a kind, with all its parts or places. */
  private static List<String> cautions(Species species, Messages messages) {
    Map<CautionKind, Set<String>> details = new EnumMap<>(CautionKind.class);
    for (Statement caution : species.cautions()) {
      Set<String> named = details.computeIfAbsent(CautionKind.of(caution.item()).orElseThrow(), kind -> new LinkedHashSet<>());
      String detail = CautionKind.detail(caution.item());
      if (!detail.isEmpty()) {
        named.add(messages.has("term.region." + detail) ? messages.say("term.region." + detail) : detail);
      }
    }
    return details.entrySet().stream().map(kind -> {
      String name = messages.say("term.caution." + kind.getKey().key());
      return kind.getValue().isEmpty() ? name
          : messages.say("choosing.caution-detail", name, String.join(", ", kind.getValue()));
    }).toList();
  }
}
