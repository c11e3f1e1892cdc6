package guildwood.species.web;

import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesRecords;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was removed, and the way back. */
public final class BinPages implements Routes {
  private final Pages pages;
  private final SpeciesRecords records;

  public BinPages(Pages pages, SpeciesRecords records) {
    this.pages = pages;
    this.records = records;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/bin", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    SpeciesLibrary library = records.library();
    ValueWords words = new ValueWords(pages.messages(), Units.of(ctx));
    List<BinnedSpecies> species = library.binned().stream()
        .map(s -> new BinnedSpecies(s.id(), s.name(), s.scientificName(), s.statements().size())).toList();
    List<BinnedValue> values = records.binnedStatements().stream().map(w -> value(w, library, words)).toList();
    pages.show(ctx, "species/bin", Map.of("species", species, "values", values));
  }

  private BinnedValue value(WrittenStatement written, SpeciesLibrary library, ValueWords words) {
    Species species = library.find(written.speciesId()).orElseThrow();
    Optional<Statement> read = written.read().value();
    String topic = read.map(s -> words.topic(s.trait(), s.item()))
        .orElseGet(() -> Trait.ofKey(written.trait()).map(t -> pages.messages().say("trait." + t.key())).orElse(written.trait()));
    return new BinnedValue(written.id(), species.id(), species.name(), topic, read.map(words::value).orElse(written.entered()),
        SourceLine.of(library.sources().get(written.sourceId()), pages.messages()).citation());
  }

  record BinnedSpecies(String id, String name, String scientificName, int values) {}

  record BinnedValue(long id, String speciesId, String speciesName, String topic, String value, String source) {}
}
