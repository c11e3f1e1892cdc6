package guildwood.species.web;

import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A species with all that is stated about it, as its page shows it.
 *
 * @param otherNames common names after the first
 * @param edible something says that people eat it
 * @param cautions all of them, the law first
 * @param sections by group, only those with statements
 */
record SpeciesView(
    String id,
    String name,
    String scientificName,
    String family,
    String otherNames,
    String synonyms,
    boolean removed,
    boolean edible,
    boolean accumulator,
    List<StatementLine> cautions,
    List<Section> sections) {

  /** One group of traits. */
  record Section(String key, List<StatementLine> lines) {}

  static SpeciesView of(Species species, SpeciesLibrary library, Messages messages, Units units) {
    StatementLine.Writer writer = new StatementLine.Writer(messages, new ValueWords(messages, units), library.sources());
    List<StatementLine> cautions = species.cautions().stream().map(s -> writer.line(species, s)).toList();
    List<Section> sections = new ArrayList<>();
    for (TraitGroup group : TraitGroup.values()) {
      List<StatementLine> lines = group == TraitGroup.CARE ? List.of() : lines(group, species, writer);
      if (!lines.isEmpty()) {
        sections.add(new Section(group.key(), lines));
      }
    }
    List<String> names = species.commonNames();
    return new SpeciesView(species.id(), species.name(), species.scientificName(), species.family(),
        String.join(", ", names.subList(Math.min(1, names.size()), names.size())), String.join(", ", species.synonyms()),
        species.removed(), species.offersFood(),
        species.statements().stream().anyMatch(s -> s.item().equals("dynamic-accumulator")), cautions, sections);
  }

  private static List<StatementLine> lines(TraitGroup group, Species species, StatementLine.Writer writer) {
    List<StatementLine> lines = new ArrayList<>();
    for (Trait trait : group.traits()) {
      species.byTopic().entrySet().stream().filter(e -> e.getKey().trait() == trait)
          .sorted(Comparator.comparingInt(e -> trait.items().indexOf(e.getKey().item())))
          .forEach(e -> e.getValue().stream().sorted(Comparator.comparing(s -> !species.rules(s)))
              .forEach(s -> lines.add(writer.line(species, s))));
    }
    return lines;
  }
}
