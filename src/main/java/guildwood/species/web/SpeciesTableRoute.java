package guildwood.species.web;

import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.web.Access;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/** The library as a table to take away, one row a species. */
public final class SpeciesTableRoute implements Routes {
  private final Supplier<SpeciesLibrary> library;

  public SpeciesTableRoute(Supplier<SpeciesLibrary> library) {
    this.library = library;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/library/species.csv", this::send, Access.OWNER);
  }

  private void send(Context ctx) {
    ctx.contentType("text/csv; charset=utf-8; header=present");
    ctx.header("Content-Disposition", "attachment; filename=\"species.csv\"");
    try (Writer to = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8)) {
      SpeciesTableWriter.write(library.get().species(), to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
