package guildwood.choosing.web;

import guildwood.choosing.BedChoice;
import guildwood.choosing.BedFits;
import guildwood.choosing.CurrentIndex;
import guildwood.choosing.Facet;
import guildwood.choosing.FacetCount;
import guildwood.choosing.Order;
import guildwood.choosing.Outcome;
import guildwood.choosing.Query;
import guildwood.site.web.ConditionView;
import guildwood.species.Axis;
import guildwood.species.Evidence;
import guildwood.species.WetlandRegion;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything the templates of the library page show, worked out from one address. */
final class LibraryView {
  /** The facets in groups, as they stand on the page. */
  private static final Map<String, List<Facet>> GROUPS = groups();

  /** What a bed answers better than a class can; shown without a bed, or where something is chosen. */
  private static final Set<Facet> OF_PLACES = EnumSet.of(Facet.WINTER, Facet.LIGHT, Facet.MOISTURE, Facet.PH);

  /** Open when the page comes up, because most visits begin there. */
  private static final Set<Facet> OPEN = EnumSet.of(Facet.VERDICT, Facet.LAYER, Facet.FUNCTION);

  private final LibraryAddress address;
  private final CurrentIndex.State state;
  private final OptionWords words;
  private final Messages messages;
  private final Optional<BedChoice> bed;
  private final Optional<BedFits> fits;
  private final Outcome outcome;

  LibraryView(LibraryAddress address, CurrentIndex.State state, Optional<BedChoice> bed, OptionWords words) {
    this.state = state;
    this.words = words;
    this.messages = words.messages();
    this.bed = bed;
    this.fits = bed.map(state::fits);
    this.outcome = state.index().choose(address.query(), fits);
    // A page beyond the end shows the last one: the library may have shrunk since the address was kept.
    this.address = address.onPage(Math.min(address.page(), PagerView.lastPage(outcome.count())));
  }

  private static Map<String, List<Facet>> groups() {
    Map<String, List<Facet>> groups = new LinkedHashMap<>();
    groups.put("place", List.of(Facet.VERDICT, Facet.WINTER, Facet.LIGHT, Facet.MOISTURE, Facet.PH));
    groups.put("guild", List.of(Facet.LAYER, Facet.FUNCTION, Facet.BLOOM));
    groups.put("yield", List.of(Facet.HARVEST, Facet.HARVEST_MONTH, Facet.USE, Facet.WITHOUT));
    groups.put("growth", List.of(Facet.HEIGHT, Facet.GROWTH_RATE, Facet.DURATION, Facet.ROOT_FORM, Facet.SPREAD,
        Facet.POLLINATION, Facet.PROPAGATION));
    groups.put("origin", List.of(Facet.NATIVE, Facet.WETLAND));
    return groups;
  }

  /** Facets that belong together. */
  record Group(String title, List<FacetView> facets) {}

  /** One entry of a select. */
  record Entry(String value, String label, boolean selected) {}

  /** What would remain if one facet's choices were dropped. */
  record WayOut(String label, String href, String count) {}

  LibraryAddress address() {
    return address;
  }

  Map<String, Object> model() {
    Map<String, Object> model = new HashMap<>();
    model.put("address", address.path());
    model.put("text", address.asked().text());
    model.put("groups", groupViews());
    model.put("chosenLine", chosenLine());
    model.put("keepsAll", address.keepsAll());
    model.put("regions", regions());
    model.put("evidences", evidences());
    model.put("orders", orders());
    model.put("countLine", messages.say("choosing.count", outcome.count(), outcome.total()));
    model.put("forBed", bed.map(b -> messages.say("choosing.for-bed", b.name())).orElse(""));
    model.put("hasBed", bed.isPresent());
    model.put("withoutBed", address.withoutBed().path());
    // The page of a species can then ask about the guild of this bed.
    model.put("ofBed", bed.map(b -> "?bed=" + b.id()).orElse(""));
    model.put("bedHref", bed.map(b -> "/beds/" + b.id()).orElse(""));
    model.put("bedOffers", bed.map(this::offers).orElse(List.of()));
    model.put("chips", ChipView.of(address, words));
    model.put("clear", address.choosesNothing() ? "" : address.cleared().path());
    model.put("libraryEmpty", outcome.total() == 0);
    // The same choice, to take away: all its pages, with the bed.
    model.put("takeQuery", address.onPage(1).path().substring(LibraryAddress.PATH.length()));
    model.put("takesAll", outcome.count() == outcome.total() && bed.isEmpty());
    model.put("rows", outcome.list(address.orderOrUsual(), (address.page() - 1) * PagerView.ROWS, PagerView.ROWS)
        .stream().map(r -> RowView.of(r, fits, words)).toList());
    model.put("pager", PagerView.of(address, outcome.count(), messages));
    model.put("waysOut", outcome.count() == 0 ? waysOut() : List.of());
    sortLinks(model);
    return model;
  }

  /** What the verdicts are reckoned with, shortest form. */
  private List<String> offers(BedChoice choice) {
    List<String> offers = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      Optional.ofNullable(choice.conditions().get(axis))
          .map(condition -> ConditionView.of(condition, words.units(), messages))
          .ifPresent(view -> offers.add(messages.say("choosing.bed-offers", messages.say("term.axis." + axis.key()), view.brief())));
    }
    return offers.isEmpty() ? List.of(messages.say("choosing.bed-silent")) : offers;
  }

  private List<Group> groupViews() {
    Map<Facet, FacetCount> counts = outcome.counts();
    List<Group> groups = new ArrayList<>();
    GROUPS.forEach((key, facets) -> {
      List<FacetView> views = facets.stream().filter(this::isShown)
          .map(facet -> FacetView.of(facet, address.query(), address.asked().keeps(facet), counts, OPEN.contains(facet), words))
          .toList();
      if (!views.isEmpty()) {
        groups.add(new Group(messages.say("choosing.group." + key), views));
      }
    });
    return groups;
  }

  private boolean isShown(Facet facet) {
    if (facet == Facet.VERDICT) {
      return bed.isPresent();
    }
    return bed.isEmpty() || !OF_PLACES.contains(facet) || !address.asked().chosen(facet).isEmpty();
  }

  private String chosenLine() {
    int chosen = address.asked().chosen().values().stream().mapToInt(Set::size).sum();
    return chosen == 0 ? "" : messages.say("choosing.chosen", chosen);
  }

  private List<Entry> regions() {
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry("", messages.say("choosing.region.none"), address.asked().region().isEmpty()));
    for (WetlandRegion region : WetlandRegion.values()) {
      entries.add(new Entry(region.key(), messages.say("item.wetland." + region.key()),
          address.asked().region().equals(Optional.of(region))));
    }
    return entries;
  }

  private List<Entry> evidences() {
    List<Entry> entries = new ArrayList<>();
    for (Evidence evidence : List.of(Evidence.FOLK, Evidence.OBSERVED, Evidence.MEASURED)) {
      entries.add(new Entry(evidence == Evidence.FOLK ? "" : evidence.key(),
          messages.say("choosing.evidence." + evidence.key()), address.asked().evidence() == evidence));
    }
    return entries;
  }

  /** The usual order has no value of its own, so that it can follow the choice of a bed. */
  private List<Entry> orders() {
    Order usual = bed.isPresent() ? Order.FIT : Order.NAME;
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry("", messages.say("choosing.order." + usual.key()), address.orderOrUsual() == usual));
    for (Order order : Order.values()) {
      if (order != usual && (order != Order.FIT || bed.isPresent())) {
        entries.add(new Entry(order.key(), messages.say("choosing.order." + order.key()), address.orderOrUsual() == order));
      }
    }
    return entries;
  }

  private void sortLinks(Map<String, Object> model) {
    Order now = address.orderOrUsual();
    model.put("sortByName", address.sorted(Order.NAME).path());
    model.put("sortedByName", now == Order.NAME ? "ascending" : null);
    model.put("sortByHeight", address.sorted(now == Order.SHORTEST_FIRST ? Order.TALLEST_FIRST : Order.SHORTEST_FIRST).path());
    model.put("sortedByHeight", now == Order.SHORTEST_FIRST ? "ascending" : now == Order.TALLEST_FIRST ? "descending" : null);
    model.put("sortByFit", address.sorted(Order.FIT).path());
    model.put("sortedByFit", now == Order.FIT ? "descending" : null);
    model.put("orderLine", messages.say("choosing.order-line", messages.say("choosing.order." + now.key())));
  }

  /** Where nothing remains: which single step would bring most; first of all a name spelt nearly so. */
  private List<WayOut> waysOut() {
    List<WayOut> ways = new ArrayList<>();
    Query asked = address.asked();
    state.index().nearTexts(asked.text())
        .forEach(text -> add(ways, messages.say("choosing.way-out.near", text), address.asking(asked.withText(text))));
    if (!asked.text().isEmpty()) {
      add(ways, messages.say("choosing.way-out.text"), address.asking(asked.withText("")));
    }
    asked.chosen().keySet().forEach(facet ->
        add(ways, messages.say("choosing.way-out.facet", words.facet(facet)), address.asking(asked.with(facet, Set.of()))));
    if (!address.keepsAll()) {
      add(ways, messages.say("choosing.way-out.keep"), address.keepingAll(true));
    }
    return ways;
  }

  private void add(List<WayOut> ways, String label, LibraryAddress other) {
    int count = state.index().choose(other.query(), fits).count();
    if (count > 0) {
      ways.add(new WayOut(label, other.path(), messages.say("choosing.way-out.count", count)));
    }
  }
}
