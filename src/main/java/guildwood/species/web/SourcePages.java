package guildwood.species.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesRecords;
import guildwood.species.Statement;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Paging;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the values come from: all sources with their counts, one source with its values, and their form. */
public final class SourcePages implements Routes {
  private static final int VALUES_A_PAGE = 100;

  private final Pages pages;
  private final SpeciesRecords records;
  private final Shelf shelf;

  public SourcePages(Pages pages, SpeciesRecords records) {
    this.pages = pages;
    this.records = records;
    this.shelf = new Shelf(records);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sources", this::list, Access.OWNER);
    routes.get("/sources/new", ctx -> ask(ctx, Optional.empty()), Access.OWNER);
    routes.post("/sources/new", ctx -> keep(ctx, Optional.empty()), Access.OWNER);
    routes.get("/sources/{id}", this::show, Access.OWNER);
    routes.get("/sources/{id}/edit", ctx -> ask(ctx, Optional.of(shelf.source(ctx))), Access.OWNER);
    routes.post("/sources/{id}/edit", ctx -> keep(ctx, Optional.of(shelf.source(ctx))), Access.OWNER);
  }

  /** A source and how much of the library in use rests on it. */
  record CountedSource(SourceLine source, int values, int species) {}

  /** A kind of source, the number of its values, and their share of all in percent. */
  record CountedKind(String kind, int values, String percent) {}

  private void list(Context ctx) {
    SpeciesLibrary library = shelf.library();
    Map<String, Integer> values = new HashMap<>();
    Map<String, Integer> species = new HashMap<>();
    for (Species each : library.species()) {
      each.statements().forEach(s -> values.merge(s.sourceId(), 1, Integer::sum));
      each.statements().stream().map(Statement::sourceId).distinct().forEach(id -> species.merge(id, 1, Integer::sum));
    }
    List<CountedSource> sources = library.sources().values().stream()
        .map(s -> new CountedSource(SourceLine.of(s, pages.messages()), values.getOrDefault(s.id(), 0), species.getOrDefault(s.id(), 0)))
        .sorted(Comparator.comparing((CountedSource s) -> -s.values()).thenComparing(s -> s.source().citation(), String.CASE_INSENSITIVE_ORDER))
        .toList();
    pages.show(ctx, "species/sources", Map.of("sources", sources, "kinds", kinds(library, values), "unread", library.unread().size()));
  }

  private List<CountedKind> kinds(SpeciesLibrary library, Map<String, Integer> values) {
    int all = values.values().stream().mapToInt(Integer::intValue).sum();
    return Arrays.stream(Source.Kind.values()).map(kind -> {
      int count = library.sources().values().stream().filter(s -> s.kind() == kind).mapToInt(s -> values.getOrDefault(s.id(), 0)).sum();
      return new CountedKind(pages.messages().say("source.kind." + kind.key()), count, all == 0 ? "0" : Units.number(100.0 * count / all, 1));
    }).filter(k -> k.values() > 0).toList();
  }

  /** One value of a source. */
  record SourcedValue(String speciesId, String speciesName, StatementLine line) {}

  private void show(Context ctx) {
    Source source = shelf.source(ctx);
    List<Sourced> values = values(source);
    Paging paging = Paging.of(ctx, values.size(), VALUES_A_PAGE, "/sources/" + source.id());
    Map<String, Object> model = new HashMap<>();
    model.put("source", SourceLine.of(source, pages.messages()));
    model.put("count", values.size());
    StatementLine.Writer writer =
        new StatementLine.Writer(pages.messages(), new ValueWords(pages.messages(), Units.of(ctx)), shelf.library().sources());
    model.put("values", values.stream().skip(paging.before()).limit(VALUES_A_PAGE)
        .map(v -> new SourcedValue(v.species().id(), v.species().name(), writer.line(v.species(), v.statement()))).toList());
    model.put("paging", paging);
    pages.show(ctx, "species/source", model);
  }

  private record Sourced(Species species, Statement statement) {}

  private List<Sourced> values(Source source) {
    return shelf.library().species().stream()
        .flatMap(species -> species.statements().stream().filter(s -> s.sourceId().equals(source.id()))
            .map(s -> new Sourced(species, s)))
        .toList();
  }

  private void ask(Context ctx, Optional<Source> source) {
    Form form = Form.blank(source.map(SourceForm::typed).orElse(Map.of()), pages.messages());
    pages.show(ctx, "species/source-form", model(form, source));
  }

  private Map<String, Object> model(Form form, Optional<Source> source) {
    return Map.of("form", form, "kinds", SourceForm.kinds(), "isNew", source.isEmpty(),
        "back", source.map(s -> "/sources/" + s.id()).orElse("/sources"));
  }

  private void keep(Context ctx, Optional<Source> before) {
    Form form = Form.read(ctx, pages.messages());
    Optional<Source> source = SourceForm.read(form, before.map(Source::id), shelf.library());
    if (source.isEmpty()) {
      pages.refuse(ctx, "species/source-form", model(form, before));
      return;
    }
    Optional<Source> kept = before.isPresent() ? Optional.empty() : SourceForm.kept(source.get(), shelf.library());
    if (before.isPresent()) {
      records.change(source.get());
    } else if (kept.isEmpty()) {
      records.add(source.get());
    }
    pages.goOn(ctx, "/sources/" + kept.orElse(source.get()).id(), Finding.of("done.source-kept", ""));
  }
}
