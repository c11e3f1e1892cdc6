package guildwood.materials.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.guild.BedPlan;
import guildwood.guild.Provision;
import guildwood.guild.SavedGuild;
import guildwood.guild.web.Desk;
import guildwood.materials.Needs;
import guildwood.materials.PlantsToBuy;
import guildwood.materials.exchange.ShoppingListWriter;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.species.Species;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Messages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a site still needs as a table to take along: materials, and the plants its saved guilds have to buy. */
public final class ShoppingListRoute implements Routes {
  private final Sites sites;
  private final Beds beds;
  private final Desk desk;
  private final Needs needs;
  private final Messages messages;

  public ShoppingListRoute(Sites sites, Beds beds, Desk desk, Needs needs, Messages messages) {
    this.sites = sites;
    this.beds = beds;
    this.desk = desk;
    this.needs = needs;
    this.messages = messages;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/materials/shopping.csv", this::send, Access.OWNER);
  }

  private void send(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    List<PlantsToBuy> plants = plants(site);
    ctx.contentType("text/csv; charset=utf-8; header=present");
    ctx.header("Content-Disposition", "attachment; filename=\"shopping.csv\"");
    try (Writer to = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8)) {
      ShoppingListWriter.write(needs.ofSite(site.id()), plants, material -> messages.say("material." + material.key()), to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<PlantsToBuy> plants(Site site) {
    List<PlantsToBuy> plants = new ArrayList<>();
    for (Bed bed : beds.ofSite(site.id())) {
      Optional<SavedGuild> saved = desk.guilds().saved(bed.id());
      if (saved.isEmpty()) {
        continue;
      }
      BedPlan plan = desk.plan(bed.id());
      Provision.of(desk.problem(plan), saved.get().guild()).forEach((id, provision) -> {
        if (provision.buy() > 0) {
          Species species = plan.library().find(id).orElseThrow();
          plants.add(new PlantsToBuy(species.name(), species.scientificName(), provision.buy(), bed.name()));
        }
      });
    }
    return plants;
  }
}
