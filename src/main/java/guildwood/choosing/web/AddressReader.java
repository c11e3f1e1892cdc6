package guildwood.choosing.web;

import guildwood.choosing.Facet;
import guildwood.choosing.Order;
import guildwood.choosing.Query;
import guildwood.kernel.Finding;
import guildwood.species.Evidence;
import guildwood.species.WetlandRegion;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** Reads an address of the library page. What cannot be read is left out and noted, never refused. */
final class AddressReader {
  static final int LONGEST_TEXT = 100;
  private static final int LONGEST_ECHO = 40;

  private final Map<String, List<String>> parameters;
  private final List<Finding> notes = new ArrayList<>();

  private AddressReader(Map<String, List<String>> parameters) {
    this.parameters = parameters;
  }

  /** An address, and what of it was left out. */
  record Read(LibraryAddress address, List<Finding> notes) {}

  /** The parameters of a query as it stands in an address, without its question mark; absent where it is none. */
  static Optional<Map<String, List<String>>> parameters(String query) {
    Map<String, List<String>> parameters = new LinkedHashMap<>();
    try {
      for (String pair : query.split("&")) {
        String[] parts = pair.split("=", 2);
        String value = parts.length < 2 ? "" : URLDecoder.decode(parts[1], StandardCharsets.UTF_8);
        parameters.computeIfAbsent(parts[0], name -> new ArrayList<>()).add(value);
      }
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    return Optional.of(parameters);
  }

  /** @param beds ids of the beds there are */
  static Read read(Map<String, List<String>> parameters, Set<Long> beds) {
    AddressReader reader = new AddressReader(parameters);
    LibraryAddress address = reader.address(beds);
    return new Read(address, List.copyOf(reader.notes));
  }

  private LibraryAddress address(Set<Long> beds) {
    Query query = Query.NOTHING.withText(text()).withEvidence(evidence()).inRegion(region());
    for (Facet facet : Facet.values()) {
      for (String option : values(facet.key())) {
        if (facet.options().contains(option)) {
          query = query.with(facet, option);
        } else {
          notes.add(Finding.of("choosing.unknown-option", facet.key(), shown(option)));
        }
      }
    }
    List<String> kept = values("notknown");
    LibraryAddress address = new LibraryAddress(query.keeping(keeps(kept)), kept.contains(LibraryAddress.KEEP_ALL),
        bed(beds), order(), page());
    return noteSilent(address);
  }

  /** Choices that cannot work without another one. */
  private LibraryAddress noteSilent(LibraryAddress address) {
    if (address.asked().region().isEmpty() && !address.asked().chosen(Facet.WETLAND).isEmpty()) {
      notes.add(Finding.of("choosing.wetland-without-region", "wetland"));
    }
    if (address.bed().isPresent()) {
      return address;
    }
    if (!address.asked().chosen(Facet.VERDICT).isEmpty()) {
      notes.add(Finding.of("choosing.verdict-without-bed", "verdict"));
    }
    if (address.order().equals(Optional.of(Order.FIT))) {
      notes.add(Finding.of("choosing.fit-without-bed", "sort"));
    }
    return address.withoutBed().onPage(address.page());
  }

  private String text() {
    String text = String.join(" ", values("q")).strip();
    if (text.chars().anyMatch(Character::isISOControl)) {
      notes.add(Finding.of("choosing.text-control", "q"));
      return "";
    }
    if (text.length() > LONGEST_TEXT) {
      notes.add(Finding.of("choosing.text-cut", "q", LONGEST_TEXT));
      return text.substring(0, LONGEST_TEXT).strip();
    }
    return text;
  }

  private Evidence evidence() {
    return word("evidence", Arrays.asList(Evidence.values()), Evidence::key).orElse(Evidence.FOLK);
  }

  private Optional<WetlandRegion> region() {
    return word("wetland-region", Arrays.asList(WetlandRegion.values()), WetlandRegion::key);
  }

  private Optional<Order> order() {
    return word("sort", Arrays.asList(Order.values()), Order::key);
  }

  private <T> Optional<T> word(String name, List<T> known, java.util.function.Function<T, String> key) {
    Optional<T> found = Optional.empty();
    for (String value : values(name)) {
      Optional<T> match = known.stream().filter(k -> key.apply(k).equals(value)).findFirst();
      if (match.isEmpty()) {
        notes.add(Finding.of("choosing.unknown-option", name, shown(value)));
      }
      found = match.isPresent() ? match : found;
    }
    return found;
  }

  private Set<Facet> keeps(List<String> kept) {
    EnumSet<Facet> facets = EnumSet.noneOf(Facet.class);
    for (String value : kept) {
      Optional<Facet> facet = Facet.ofKey(value);
      facet.ifPresent(facets::add);
      if (facet.isEmpty() && !value.equals(LibraryAddress.KEEP_ALL)) {
        notes.add(Finding.of("choosing.unknown-option", "notknown", shown(value)));
      }
    }
    return facets;
  }

  private OptionalLong bed(Set<Long> beds) {
    List<String> values = values("bed");
    if (values.isEmpty()) {
      return OptionalLong.empty();
    }
    String value = values.get(values.size() - 1);
    if (value.matches("\\d{1,18}") && beds.contains(Long.parseLong(value))) {
      return OptionalLong.of(Long.parseLong(value));
    }
    notes.add(Finding.of("choosing.no-such-bed", "bed", shown(value)));
    return OptionalLong.empty();
  }

  private int page() {
    List<String> values = values("page");
    if (values.isEmpty()) {
      return 1;
    }
    String value = values.get(0);
    if (value.matches("0*[1-9]\\d{0,6}")) {
      return Integer.parseInt(value);
    }
    notes.add(Finding.of("choosing.unknown-option", "page", shown(value)));
    return 1;
  }

  /** What was given for a parameter; a form sends empty ones for what was not chosen. */
  private List<String> values(String name) {
    return parameters.getOrDefault(name, List.of()).stream().map(String::strip).filter(v -> !v.isEmpty()).toList();
  }

  private static String shown(String value) {
    String plain = value.replaceAll("\\p{Cntrl}", " ");
    return plain.length() > LONGEST_ECHO ? plain.substring(0, LONGEST_ECHO) + "…" : plain;
  }
}
