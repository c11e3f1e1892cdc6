package guildwood.choosing.web;

import guildwood.choosing.Facet;
import guildwood.choosing.Order;
import guildwood.choosing.Query;
import guildwood.species.Evidence;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * All that can be chosen on the library page, as it stands in the address, for example
 * {@code /library?bed=3&layer=shrub&function=nitrogen-fixer&notknown=keep}.
 *
 * @param asked with 'not known' kept in the facets for which that was chosen one by one
 * @param keepsAll whether 'not known' stays in every facet
 * @param order absent for the one that suits: best fit first with a bed, by name without
 * @param page from 1
 */
record LibraryAddress(Query asked, boolean keepsAll, OptionalLong bed, Optional<Order> order, int page) {
  static final String PATH = "/library";
  static final String KEEP_ALL = "keep";
  static final LibraryAddress EMPTY =
      new LibraryAddress(Query.NOTHING, false, OptionalLong.empty(), Optional.empty(), 1);

  private static final Set<String> OTHER_PARAMETERS = Set.of("q", "bed", "evidence", "wetland-region", "notknown", "sort", "page");

  static boolean isParameter(String name) {
    return OTHER_PARAMETERS.contains(name) || Facet.ofKey(name).isPresent();
  }

  /** What the engine is asked. */
  Query query() {
    return keepsAll ? asked.keeping(EnumSet.allOf(Facet.class)) : asked;
  }

  Order orderOrUsual() {
    return order.orElse(bed.isPresent() ? Order.FIT : Order.NAME);
  }

  /** Another choice begins on its first page. */
  LibraryAddress asking(Query other) {
    return new LibraryAddress(other, keepsAll, bed, order, 1);
  }

  LibraryAddress keepingAll(boolean keeps) {
    return new LibraryAddress(asked, keeps, bed, order, 1);
  }

  /** Without a bed there is neither a verdict to choose nor a fit to go by. */
  LibraryAddress withoutBed() {
    return new LibraryAddress(asked.with(Facet.VERDICT, Set.of()), keepsAll, OptionalLong.empty(),
        order.filter(o -> o != Order.FIT), 1);
  }

  LibraryAddress sorted(Order by) {
    return new LibraryAddress(asked, keepsAll, bed, Optional.of(by), 1);
  }

  LibraryAddress onPage(int number) {
    return new LibraryAddress(asked, keepsAll, bed, order, number);
  }

  /** Everything chosen is dropped; the bed and the order stay. */
  LibraryAddress cleared() {
    return new LibraryAddress(Query.NOTHING, false, bed, order, 1);
  }

  boolean choosesNothing() {
    return asked.text().isEmpty() && asked.chosen().isEmpty() && asked.keepsNotKnown().isEmpty() && !keepsAll;
  }

  /** The address in its shortest form; the same choices always give the same one. */
  String path() {
    List<String> parts = new ArrayList<>();
    add(parts, "q", asked.text());
    bed.ifPresent(id -> add(parts, "bed", Long.toString(id)));
    asked.chosen().forEach((facet, options) -> options.forEach(option -> add(parts, facet.key(), option)));
    if (asked.evidence() != Evidence.FOLK) {
      add(parts, "evidence", asked.evidence().key());
    }
    asked.region().ifPresent(region -> add(parts, "wetland-region", region.key()));
    if (keepsAll) {
      add(parts, "notknown", KEEP_ALL);
    }
    asked.keepsNotKnown().forEach(facet -> add(parts, "notknown", facet.key()));
    order.ifPresent(by -> add(parts, "sort", by.key()));
    if (page > 1) {
      add(parts, "page", Integer.toString(page));
    }
    return parts.isEmpty() ? PATH : PATH + "?" + String.join("&", parts);
  }

  private static void add(List<String> parts, String name, String value) {
    if (!value.isEmpty()) {
      parts.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
  }
}
