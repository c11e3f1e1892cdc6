package guildwood.species.exchange;

import guildwood.species.CautionKind;
import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.List;

/**
 * A column of the species table. A trait without items is one column under its key; a trait with items has
 * one for each, such as {@code harvest.fruit}, and beside it {@code function.fodder.evidence} where claims
 * carry evidence. Cautions have one for each kind.
 *
 * @param item of the trait, for cautions the key of the kind; empty where the trait has no items
 */
public record SpeciesColumn(String name, Trait trait, String item, Content content) {

  /** What stands in its cells. */
  public enum Content {
    VALUE,
    EVIDENCE,
    CAUTIONS
  }

  /** What a species is called; the columns before those of the traits. */
  public static final List<String> NAMES = List.of("id", "scientific_name", "common_names", "family", "synonyms");

  /** Every column of the traits, in the order in which they are written. */
  public static final List<SpeciesColumn> TRAITS = traits();

  private static List<SpeciesColumn> traits() {
    List<SpeciesColumn> columns = new ArrayList<>();
    for (Trait trait : Trait.values()) {
      if (trait == Trait.CAUTION) {
        CautionKind.keys().forEach(kind ->
            columns.add(new SpeciesColumn(trait.key() + "." + kind, trait, kind, Content.CAUTIONS)));
      } else if (trait.hasItems()) {
        trait.items().forEach(item -> item(trait, item, columns));
      } else {
        columns.add(new SpeciesColumn(trait.key(), trait, "", Content.VALUE));
      }
    }
    return List.copyOf(columns);
  }

  private static void item(Trait trait, String item, List<SpeciesColumn> columns) {
    String name = trait.key() + "." + item;
    columns.add(new SpeciesColumn(name, trait, item, Content.VALUE));
    if (trait.carriesEvidence()) {
      columns.add(new SpeciesColumn(name + ".evidence", trait, item, Content.EVIDENCE));
    }
  }
}
