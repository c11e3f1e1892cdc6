package guildwood.species.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesRecords;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Adding, changing, removing and restoring what is stated about a species, and choosing which one rules. */
public final class StatementPages implements Routes {
  private final Pages pages;
  private final SpeciesRecords records;
  private final Shelf shelf;

  public StatementPages(Pages pages, SpeciesRecords records) {
    this.pages = pages;
    this.records = records;
    this.shelf = new Shelf(records);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/library/{id}/values/new", this::askNew, Access.OWNER);
    routes.post("/library/{id}/values/new", this::add, Access.OWNER);
    routes.get("/library/{id}/values/{statement}", this::ask, Access.OWNER);
    routes.post("/library/{id}/values/{statement}", this::change, Access.OWNER);
    routes.post("/library/{id}/values/{statement}/rule", this::letRule, Access.OWNER);
    routes.post("/library/{id}/values/{statement}/remove", this::remove, Access.OWNER);
    routes.post("/library/{id}/values/{statement}/restore", this::restore, Access.OWNER);
  }

  private void askNew(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    String trait = ctx.queryParam("trait");
    if (trait == null) {
      String source = ctx.queryParam("source");
      pages.show(ctx, "species/choose-trait", Map.of("species", species, "groups", groups(ctx.queryParam("group")),
          "source", source != null && shelf.library().sources().containsKey(source) ? "&source=" + source : ""));
      return;
    }
    Map<String, String> start = new HashMap<>();
    start.put("item", ctx.queryParam("item") == null ? "" : ctx.queryParam("item"));
    start.put("source", ctx.queryParam("source") == null ? "" : ctx.queryParam("source"));
    pages.show(ctx, "species/value", model(species, known(trait), Form.blank(start, pages.messages()), "new"));
  }

  /** The groups of traits to choose from: all, or the one that was asked for. */
  private static List<Group> groups(String key) {
    Optional<TraitGroup> one = key == null ? Optional.empty() : TraitGroup.ofKey(key);
    return Arrays.stream(TraitGroup.values()).filter(g -> one.isEmpty() || one.get() == g)
        .map(g -> new Group(g.key(), g.traits().stream().map(Trait::key).toList())).toList();
  }

  record Group(String key, List<String> traits) {}

  private static Trait known(String trait) {
    return Trait.ofKey(trait == null ? "" : trait).orElseThrow(NotFoundResponse::new);
  }

  private Map<String, Object> model(Species species, Trait trait, Form form, String address) {
    Map<String, Object> model = StatementForm.model(trait, shelf.library(), pages.messages());
    model.put("species", species);
    model.put("form", form);
    model.put("address", address);
    model.put("typesSource", StatementForm.typesNewSource(form));
    return model;
  }

  private void add(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement blank = new WrittenStatement(0, species.id(), "", "", "", "", "", false, "");
    keep(ctx, species, known(ctx.formParam("trait")), blank, "new", (statement, source) -> records.add(species.id(), statement, source));
  }

  private void ask(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement written = shelf.statement(ctx, species);
    Trait trait = known(written.trait());
    Form form = StatementForm.filled(written, trait, pages.messages());
    pages.show(ctx, "species/value", model(species, trait, form, Long.toString(written.id())));
  }

  private void change(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement before = shelf.statement(ctx, species);
    keep(ctx, species, known(before.trait()), before, Long.toString(before.id()),
        (statement, source) -> records.change(species.id(), statement, source));
  }

  private void keep(Context ctx, Species species, Trait trait, WrittenStatement before, String address,
      BiFunction<Statement, Optional<Source>, Checked<Long>> work) {
    Form form = Form.read(ctx, pages.messages());
    StatementForm.Read read = StatementForm.read(form, trait, before, shelf.library());
    Optional<Long> id = read.statement().flatMap(statement -> form.take(work.apply(statement, read.newSource())));
    if (id.isEmpty()) {
      pages.refuse(ctx, "species/value", model(species, trait, form, address));
      return;
    }
    boolean more = form.value("then").equals("more");
    String next = more ? "/values/new?source=" + read.statement().orElseThrow().sourceId() : "";
    pages.goOn(ctx, "/library/" + species.id() + next,
        Finding.of("done.value-kept", "", pages.messages().say("trait." + trait.key())));
  }

  private void letRule(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement statement = shelf.statement(ctx, species);
    records.letRule(statement.id());
    goOn(ctx, species, "done.value-rules", statement);
  }

  private void remove(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement statement = shelf.statement(ctx, species);
    records.removeStatement(statement.id());
    goOn(ctx, species, "done.value-binned", statement);
  }

  private void restore(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    WrittenStatement statement = shelf.binnedStatement(ctx);
    if (!statement.speciesId().equals(species.id())) {
      throw new NotFoundResponse();
    }
    records.restoreStatement(statement.id());
    goOn(ctx, species, "done.value-restored", statement);
  }

  private void goOn(Context ctx, Species species, String done, WrittenStatement statement) {
    pages.goOn(ctx, "/library/" + species.id(), Finding.of(done, "", statement.entered()));
  }
}
