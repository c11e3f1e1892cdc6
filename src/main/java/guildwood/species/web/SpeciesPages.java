package guildwood.species.web;

import guildwood.kernel.Finding;
import guildwood.species.ClassWords;
import guildwood.species.Holding;
import guildwood.species.Species;
import guildwood.species.SpeciesRecords;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One species with all its statements, the owner's stock of it, and its way into the bin and back. */
public final class SpeciesPages implements Routes {
  private static final int CENTS = 100;

  private final Pages pages;
  private final SpeciesRecords records;
  private final Shelf shelf;

  public SpeciesPages(Pages pages, SpeciesRecords records) {
    this.pages = pages;
    this.records = records;
    this.shelf = new Shelf(records);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/library/{id}", this::show, Access.OWNER);
    routes.post("/library/{id}/stock", this::keepStock, Access.OWNER);
    routes.post("/library/{id}/remove", this::remove, Access.OWNER);
    routes.post("/library/{id}/restore", this::restore, Access.OWNER);
  }

  private void show(Context ctx) {
    Species species = shelf.species(ctx);
    Holding holding = records.holdings().getOrDefault(species.id(), Holding.none(species.id()));
    pages.show(ctx, "species/detail", model(ctx, species, Form.blank(typed(holding), pages.messages())));
  }

  private Map<String, Object> model(Context ctx, Species species, Form stock) {
    Map<String, Object> model = new HashMap<>();
    model.put("view", SpeciesView.of(species, shelf.library(), pages.messages(), Units.of(ctx)));
    model.put("stock", stock);
    model.put("unread", shelf.library().unread().stream().filter(w -> w.speciesId().equals(species.id()))
        .map(this::unreadLine).toList());
    model.put("notes", records.notes(species.id()).stream()
        .map(n -> new NoteLine(List.of(n.text().split("\n")), SourceLine.of(shelf.library().sources().get(n.sourceId()), pages.messages()))).toList());
    model.put("lightScheme", ClassWords.LIGHT_SCHEME);
    model.put("bed", bed(ctx));
    return model;
  }

  /** The bed somebody came from, by its number; empty where none is named. */
  private static String bed(Context ctx) {
    String bed = ctx.queryParam("bed");
    return bed != null && bed.matches("\\d{1,18}") ? bed : "";
  }

  private UnreadLine unreadLine(WrittenStatement written) {
    List<Finding> why = written.read().findings();
    String topic = Trait.ofKey(written.trait()).map(t -> pages.messages().say("trait." + t.key())).orElse(written.trait());
    return new UnreadLine(written.id(), written.item().isEmpty() ? topic : pages.messages().say("topic", topic, written.item()),
        written.entered(), String.join(" ", why.stream().map(pages.messages()::say).toList()),
        SourceLine.of(shelf.library().sources().get(written.sourceId()), pages.messages()),
        Trait.ofKey(written.trait()).isPresent());
  }

  /**
   * A statement that is kept but cannot be read any more.
   *
   * @param mendable its trait is known, so that it can be put right in the form
   */
  record UnreadLine(long id, String topic, String entered, String why, SourceLine source, boolean mendable) {}

  /** What a table said that no trait takes, line by line. */
  record NoteLine(List<String> lines, SourceLine source) {}

  private void keepStock(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    Form form = Form.read(ctx, pages.messages());
    OptionalInt plants = form.wholeNumber("plants", 0, Holding.MOST_PLANTS);
    OptionalInt propagate = form.wholeNumber("propagate", 0, Holding.MOST_PLANTS);
    OptionalInt cents = cents(form);
    if (form.isRefused()) {
      pages.refuse(ctx, "species/detail", model(ctx, species, form));
      return;
    }
    records.keep(new Holding(species.id(), plants.orElse(0), propagate.orElse(0), cents));
    pages.goOn(ctx, "/library/" + species.id(), Finding.of("done.stock-kept", "", species.name()));
  }

  private static OptionalInt cents(Form form) {
    OptionalDouble price = form.number("price", 0, Holding.MOST_CENTS / (double) CENTS);
    if (price.isEmpty()) {
      return OptionalInt.empty();
    }
    // Read as decimal digits: 12.30 has no exact binary form.
    BigDecimal cents = BigDecimal.valueOf(price.getAsDouble()).movePointRight(2).stripTrailingZeros();
    if (cents.scale() > 0) {
      form.refuse(Finding.of("price.too-fine", "price"));
      return OptionalInt.empty();
    }
    return OptionalInt.of(cents.intValueExact());
  }

  private static Map<String, String> typed(Holding holding) {
    String price = holding.priceCents().isEmpty() ? "" : BigDecimal.valueOf(holding.priceCents().getAsInt(), 2).toPlainString();
    return Map.of("plants", count(holding.plantsOnHand()), "propagate", count(holding.plantsToPropagate()), "price", price);
  }

  private static String count(int plants) {
    return plants == 0 ? "" : Integer.toString(plants);
  }

  private void remove(Context ctx) {
    Species species = shelf.speciesInUse(ctx);
    records.remove(species.id());
    pages.goOn(ctx, "/library/" + species.id(), Finding.of("done.species-binned", "", species.name()));
  }

  private void restore(Context ctx) {
    Species species = shelf.species(ctx);
    records.restore(species.id());
    pages.goOn(ctx, "/library/" + species.id(), Finding.of("done.species-restored", "", species.name()));
  }
}
