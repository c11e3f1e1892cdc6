package guildwood.exporting.web;

import guildwood.choosing.BedChoices;
import guildwood.choosing.CurrentIndex;
import guildwood.choosing.web.AddressedChoice;
import guildwood.exporting.ExportFormat;
import guildwood.exporting.exchange.LibraryExport;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.SpeciesRecords;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can be taken away: one page that lists it all, and the library in every form, whole or as it is shown. */
public final class TakePages implements Routes {
  static final String PATH = "/take";

  private final Pages pages;
  private final SpeciesRecords records;
  private final BedChoices beds;
  private final Supplier<List<Takeable>> others;
  private final CurrentIndex current;

  /** @param others what other features have to give, in the order in which to list it */
  public TakePages(Pages pages, SpeciesRecords records, BedChoices beds, Supplier<List<Takeable>> others) {
    this.pages = pages;
    this.records = records;
    this.beds = beds;
    this.others = others;
    this.current = new CurrentIndex(records::library);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::list, Access.OWNER);
    for (ExportFormat format : ExportFormat.values()) {
      routes.get(PATH + "/" + format.fileName(), ctx -> send(ctx, format), Access.OWNER);
    }
  }

  private void list(Context ctx) {
    List<Takeable> library = Stream.of(ExportFormat.values())
        .map(f -> new Takeable("take.form." + f.key(), "take.form." + f.key() + ".help", "", PATH + "/" + f.fileName())).toList();
    pages.show(ctx, "exporting/take", Map.of("library", library, "others", kinds(), "count", records.library().species().size()));
  }

  /** Things of one kind, each of something else. */
  record Kind(String titleKey, String helpKey, List<Takeable> all) {}

  private List<Kind> kinds() {
    Map<String, List<Takeable>> byTitle = others.get().stream()
        .collect(Collectors.groupingBy(Takeable::titleKey, LinkedHashMap::new, Collectors.toList()));
    return byTitle.values().stream().map(all -> new Kind(all.get(0).titleKey(), all.get(0).helpKey(), all)).toList();
  }

  /** The address is that of the library page. What of it cannot be read must not end in a file that holds too much. */
  private void send(Context ctx, ExportFormat format) {
    AddressedChoice choice = AddressedChoice.of(ctx.queryParamMap(), current.get(), beds.all());
    if (!choice.notes().isEmpty()) {
      ctx.redirect("/library?" + ctx.queryString(), HttpStatus.SEE_OTHER);
      return;
    }
    ctx.contentType(format.mediaType());
    ctx.header("Content-Disposition", "attachment; filename=\"" + format.fileName() + "\"");
    try {
      new LibraryExport(choice, Beside.of(records), pages.messages()).write(format, ctx.outputStream());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
