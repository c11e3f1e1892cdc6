package guildwood.species.web;

import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesRecords;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Objects;
import java.util.Optional;

/** Finds what an address names in the library; an address that names nothing is answered with 404. */
record Shelf(SpeciesRecords records) {
  SpeciesLibrary library() {
    return records.library();
  }

  /** The species of the path, in use or in the bin. */
  Species species(Context ctx) {
    return library().find(ctx.pathParam("id")).orElseThrow(NotFoundResponse::new);
  }

  /** The species of the path, if it is in use. */
  Species speciesInUse(Context ctx) {
    Species species = species(ctx);
    if (species.removed()) {
      throw new NotFoundResponse();
    }
    return species;
  }

  /** The statement of the path about a species, also one that can no longer be read. */
  WrittenStatement statement(Context ctx, Species species) {
    long id = number(ctx, "statement");
    Optional<WrittenStatement> read = species.statements().stream().filter(s -> s.id() == id).findFirst()
        .map((Statement s) -> WrittenStatement.of(species.id(), s));
    return read.or(() -> library().unread().stream().filter(w -> w.id() == id && w.speciesId().equals(species.id())).findFirst())
        .orElseThrow(NotFoundResponse::new);
  }

  /** The statement of the path, if it lies in the bin. */
  WrittenStatement binnedStatement(Context ctx) {
    long id = number(ctx, "statement");
    return records.binnedStatements().stream().filter(w -> w.id() == id).findFirst().orElseThrow(NotFoundResponse::new);
  }

  Source source(Context ctx) {
    return Optional.ofNullable(library().sources().get(Objects.requireNonNull(ctx.pathParam("id"))))
        .orElseThrow(NotFoundResponse::new);
  }

  private static long number(Context ctx, String name) {
    String text = ctx.pathParam(name);
    if (!text.matches("\\d{1,18}")) {
      throw new NotFoundResponse();
    }
    return Long.parseLong(text);
  }
}
