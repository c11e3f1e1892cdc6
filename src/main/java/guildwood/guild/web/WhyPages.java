package guildwood.guild.web;

import guildwood.bed.web.SpeciesFinder;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Why any one species of the library is not in a guild, and what it would take, or cost, to have it in. */
public final class WhyPages implements Routes {
  /** Beyond this many names a list in the page would weigh more than the page; typing still finds all of them. */
  private static final int MOST_NAMES_LISTED = 3000;

  private final Pages pages;
  private final NamedGuilds named;

  public WhyPages(Pages pages, Desk desk, Drafts drafts, Compositions compositions) {
    this.pages = pages;
    this.named = new NamedGuilds(pages.messages(), desk, drafts, compositions);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/guild/why", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    String of = Objects.requireNonNullElse(ctx.queryParam("of"), "");
    if (named.isGone(ctx, of)) {
      NamedGuilds.saySo(ctx, pages);
      return;
    }
    NamedGuild guild = named.find(ctx, of);
    String typed = Objects.requireNonNullElse(ctx.queryParam("species"), "");
    Form form = Form.blank(Map.of("species", typed), pages.messages());
    SpeciesLibrary library = guild.plan().library();
    List<Species> found = find(form, library);
    Map<String, Object> model = new HashMap<>();
    model.put("why", null);
    model.put("suggested", List.of());
    if (found.size() == 1) {
      model.put("why", new WhyAnswer(pages.messages(), Units.of(ctx), guild).about(found.get(0)));
    } else if (!typed.isBlank()) {
      List<Species> like = found.isEmpty() ? SpeciesFinder.like(library, typed) : found;
      model.put("suggested", like.stream().map(s -> new WishPages.Choice(s.id(), s.name() + " (" + s.scientificName() + ")")).toList());
      if (!form.isRefused()) {
        form.refuse(Finding.of(like.isEmpty() ? "species.not-in-library" : "species.which", "species", typed));
      }
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    }
    model.put("form", form);
    model.put("bed", guild.plan().bed());
    model.put("site", guild.plan().site());
    model.put("of", of);
    model.put("label", guild.label());
    model.put("back", guild.path());
    model.put("names", library.species().size() > MOST_NAMES_LISTED ? List.of()
        : library.species().stream().map(s -> new WishPages.Choice(s.scientificName(), s.name())).toList());
    pages.show(ctx, "guild/why", model);
  }

  /** One species by its id or any of its names; several where they share a common name. */
  private static List<Species> find(Form form, SpeciesLibrary library) {
    String typed = form.optionalText("species", SpeciesNames.LONGEST_NAME);
    return typed.isEmpty() ? List.of()
        : library.find(typed).map(List::of).orElseGet(() -> SpeciesFinder.named(library, typed));
  }
}
