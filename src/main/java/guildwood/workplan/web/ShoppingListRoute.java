package guildwood.workplan.web;

import guildwood.materials.PlantsToBuy;
import guildwood.materials.exchange.ShoppingListWriter;
import guildwood.web.Access;
import guildwood.web.Messages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a site still needs as a table to take along: materials, and the plants its saved guilds have to buy. */
public final class ShoppingListRoute implements Routes {
  private final WorkDesk desk;
  private final Messages messages;

  public ShoppingListRoute(WorkDesk desk, Messages messages) {
    this.desk = desk;
    this.messages = messages;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/shopping.csv", this::send, Access.OWNER);
  }

  private void send(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    List<PlantsToBuy> plants = site.jobs().stream().filter(job -> job.provision().buy() > 0)
        .map(job -> new PlantsToBuy(job.species().name(), job.species().scientificName(), job.provision().buy(), job.bed().name())).toList();
    ctx.contentType("text/csv; charset=utf-8; header=present");
    ctx.header("Content-Disposition", "attachment; filename=\"shopping.csv\"");
    try (Writer to = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8)) {
      ShoppingListWriter.write(site.needs(), plants, material -> messages.say("material." + material.key()), to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
