package guildwood.choosing.web;

import guildwood.choosing.BedChoice;
import guildwood.choosing.BedChoices;
import guildwood.choosing.CurrentIndex;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Access;
import guildwood.web.Messages;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The library, narrowed down by what stands in the address. Without scripts every change is a new page;
 * with them only what changes is sent: the rows, and the counts beside the options.
 */
public final class LibraryPages implements Routes {
  /** More notes than these help nobody. */
  private static final int MOST_NOTES = 5;
  /** Ids in the page, by which a request tells what asked and what is to be replaced. */
  private static final String FORM = "library-form";
  private static final String WHOLE = "library";

  private final Pages pages;
  private final BedChoices beds;
  private final CurrentIndex current;

  public LibraryPages(Pages pages, Supplier<SpeciesLibrary> library, BedChoices beds) {
    this.pages = pages;
    this.beds = beds;
    this.current = new CurrentIndex(library);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(LibraryAddress.PATH, this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    Map<String, List<String>> parameters = ctx.queryParamMap();
    boolean fragment = Pages.wantsFragment(ctx);
    if (!fragment && parameters.values().stream().anyMatch(values -> values.stream().anyMatch(String::isBlank))) {
      // A form sends empty values for what was not chosen; the address people keep should not carry them.
      ctx.redirect(withoutBlanks(parameters), io.javalin.http.HttpStatus.SEE_OTHER);
      return;
    }
    List<BedChoice> choices = beds.all();
    AddressReader.Read read = read(parameters, choices);
    Optional<BedChoice> bed = read.address().bed().stream().boxed()
        .flatMap(id -> choices.stream().filter(b -> b.id() == id)).findFirst();
    LibraryView view = new LibraryView(read.address(), current.get(), bed, new OptionWords(Units.of(ctx), pages.messages()));
    Map<String, Object> model = view.model();
    model.put("beds", bedEntries(choices, bed));
    model.put("notes", notes(withMissingPage(read, view.address())));
    model.put("oob", false);
    model.put("onPhone", Optional.ofNullable(ctx.userAgent()).orElse("").contains("Mobi"));
    model.put("fromLink", fragment && !FORM.equals(ctx.header("HX-Trigger")));
    if (!fragment) {
      pages.show(ctx, "choosing/library", model);
      return;
    }
    keepHistory(ctx, view.address(), choices);
    pages.show(ctx, WHOLE.equals(ctx.header("HX-Target")) ? "choosing/update :: whole" : "choosing/update :: changes", model);
  }

  private static AddressReader.Read read(Map<String, List<String>> parameters, List<BedChoice> choices) {
    return AddressReader.read(parameters, choices.stream().map(BedChoice::id).collect(Collectors.toSet()));
  }

  private static String withoutBlanks(Map<String, List<String>> parameters) {
    List<String> parts = new ArrayList<>();
    parameters.forEach((name, values) -> values.stream().filter(value -> !value.isBlank()).forEach(value ->
        parts.add(encode(name) + "=" + encode(value))));
    return parts.isEmpty() ? LibraryAddress.PATH : LibraryAddress.PATH + "?" + String.join("&", parts);
  }

  private static String encode(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /**
   * Gives the browser the short form of the address. Typing on in the search field replaces the entry of
   * its history, so that going back does not walk through every letter.
   */
  private static void keepHistory(Context ctx, LibraryAddress now, List<BedChoice> choices) {
    String shown = ctx.header("HX-Current-URL");
    LibraryAddress before = shown == null ? LibraryAddress.EMPTY : read(parametersOf(shown), choices).address();
    boolean onlyTyped = withoutText(before).equals(withoutText(now));
    ctx.header(onlyTyped ? "HX-Replace-Url" : "HX-Push-Url", now.path());
  }

  private static String withoutText(LibraryAddress address) {
    return address.asking(address.asked().withText("")).onPage(address.page()).path();
  }

  private static Map<String, List<String>> parametersOf(String url) {
    try {
      String query = Optional.ofNullable(URI.create(url).getRawQuery()).orElse("");
      return AddressReader.parameters(query).orElse(Map.of());
    } catch (IllegalArgumentException e) {
      return Map.of();
    }
  }

  private List<LibraryView.Entry> bedEntries(List<BedChoice> choices, Optional<BedChoice> chosen) {
    boolean severalSites = choices.stream().map(BedChoice::siteName).distinct().count() > 1;
    List<LibraryView.Entry> entries = new ArrayList<>();
    entries.add(new LibraryView.Entry("", pages.messages().say("choosing.bed.none"), chosen.isEmpty()));
    choices.forEach(bed -> entries.add(new LibraryView.Entry(Long.toString(bed.id()),
        severalSites ? pages.messages().say("choosing.bed.of-site", bed.name(), bed.siteName()) : bed.name(),
        chosen.filter(c -> c.id() == bed.id()).isPresent())));
    return entries;
  }

  private static List<Finding> withMissingPage(AddressReader.Read read, LibraryAddress shown) {
    List<Finding> notes = new ArrayList<>(read.notes());
    if (read.address().page() != shown.page()) {
      notes.add(Finding.of("choosing.no-such-page", "page", read.address().page(), shown.page()));
    }
    return notes;
  }

  private List<String> notes(List<Finding> findings) {
    Messages messages = pages.messages();
    List<String> notes = new ArrayList<>(findings.stream().limit(MOST_NOTES).map(f -> messages.say(withField(f))).toList());
    if (findings.size() > MOST_NOTES) {
      notes.add(messages.say("choosing.more-notes", findings.size() - MOST_NOTES));
    }
    return notes;
  }

  /** A note on an option names the facet or the field it was meant for. */
  private Finding withField(Finding finding) {
    if (!finding.code().equals("choosing.unknown-option")) {
      return finding;
    }
    String key = pages.messages().has("facet." + finding.field()) ? "facet." + finding.field() : "choosing.field." + finding.field();
    return Finding.of(finding.code(), finding.field(), finding.args().get(0), pages.messages().say(key));
  }
}
