package guildwood.fit;

import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Species for tests, made of statements as people write them. */
public final class Stated {
  private final String scientificName;
  private final List<Statement> statements = new ArrayList<>();

  private Stated(String scientificName) {
    this.scientificName = scientificName;
  }

  public static Stated species(String scientificName) {
    return new Stated(scientificName);
  }

  public Stated with(Trait trait, String entered) {
    return with(trait, "", entered, Optional.empty());
  }

  public Stated with(Trait trait, String item, String entered) {
    return with(trait, item, entered, Optional.empty());
  }

  public Stated with(Trait trait, String item, String entered, Optional<guildwood.species.Evidence> evidence) {
    statements.add(new Statement(statements.size() + 1, trait, item, entered,
        TraitReader.read(trait, entered, "value").orThrow(), "own-experience", evidence, false, ""));
    return this;
  }

  public Species make() {
    String id = scientificName.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return new Species(id, scientificName, List.of(), "", List.of(), false, statements);
  }
}
