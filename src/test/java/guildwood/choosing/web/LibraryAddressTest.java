package guildwood.choosing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.choosing.Facet;
import guildwood.choosing.Order;
import guildwood.choosing.Query;
import guildwood.kernel.Finding;
import guildwood.species.Evidence;
import guildwood.species.WetlandRegion;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LibraryAddressTest {
  private static final Set<Long> BEDS = Set.of(3L, 12L);

  private static AddressReader.Read read(String path) {
    Map<String, List<String>> parameters = new LinkedHashMap<>();
    String query = path.contains("?") ? path.substring(path.indexOf('?') + 1) : "";
    for (String pair : query.isEmpty() ? new String[0] : query.split("&")) {
      String[] parts = pair.split("=", 2);
      parameters.computeIfAbsent(parts[0], n -> new ArrayList<>()).add(URLDecoder.decode(parts[1], StandardCharsets.UTF_8));
    }
    return AddressReader.read(parameters, BEDS);
  }

  @Test
  void theAddressIsReadable() {
    LibraryAddress address = new LibraryAddress(
        Query.NOTHING.with(Facet.LAYER, "shrub").with(Facet.FUNCTION, "nitrogen-fixer"), true, OptionalLong.of(3), Optional.empty(), 1);
    assertEquals("/library?bed=3&layer=shrub&function=nitrogen-fixer&notknown=keep", address.path());
    assertEquals("/library", LibraryAddress.EMPTY.path());
  }

  @Test
  void everyAddressLeadsBackToWhatItWasMadeOf() {
    Random random = new Random(5);
    for (int n = 0; n < 400; n++) {
      LibraryAddress made = random(random);
      AddressReader.Read read = read(made.path());
      assertEquals(made, read.address());
      assertEquals(List.of(), read.notes());
    }
  }

  private static LibraryAddress random(Random random) {
    OptionalLong bed = random.nextBoolean() ? OptionalLong.of(12) : OptionalLong.empty();
    Query query = Query.NOTHING.withText(random.nextInt(3) == 0 ? "rosa × gallica & 100% 'ä'" : "")
        .withEvidence(Evidence.values()[random.nextInt(3)])
        .inRegion(Optional.of(WetlandRegion.values()[random.nextInt(7)]));
    EnumSet<Facet> keeps = EnumSet.noneOf(Facet.class);
    for (Facet facet : Facet.values()) {
      if (random.nextInt(4) == 0 && (facet != Facet.VERDICT || bed.isPresent())) {
        query = query.with(facet, facet.options().get(random.nextInt(facet.options().size())))
            .with(facet, facet.options().get(random.nextInt(facet.options().size())));
      }
      if (random.nextInt(5) == 0) {
        keeps.add(facet);
      }
    }
    Order order = Order.values()[random.nextInt(Order.values().length)];
    return new LibraryAddress(query.keeping(keeps), random.nextBoolean(), bed,
        order == Order.FIT && bed.isEmpty() ? Optional.empty() : Optional.of(order), 1 + random.nextInt(9));
  }

  @Test
  void whatCannotBeReadIsLeftOutAndNoted() {
    AddressReader.Read read = read("/library?layer=attic&layer=herb&bed=7&page=-1&sort=price&notknown=attic&evidence=maybe&wetland-region=moon&utm=x");
    assertEquals("/library?layer=herb", read.address().path());
    assertEquals(List.of("evidence", "wetland-region", "layer", "notknown", "bed", "sort", "page"),
        read.notes().stream().map(Finding::field).toList());
  }

  @Test
  void emptyAndHostileValuesDoNoHarm() {
    assertEquals(LibraryAddress.EMPTY, read("/library?q=&bed=&layer=&sort=&page=&notknown=").address());
    assertEquals(List.of(), read("/library?q=&bed=&layer=").notes());
    assertEquals("", read("/library?q=a%00b").address().asked().text());
    assertEquals(100, read("/library?q=" + "a".repeat(5000)).address().asked().text().length());
    for (String page : List.of("0", "x", "1e9", "99999999999999999999", "1.5", "-3")) {
      assertEquals(1, read("/library?page=" + page).address().page(), page);
    }
    for (String bed : List.of("-3", "99999999999999999999", "3.0", "drop table")) {
      assertEquals(OptionalLong.empty(), read("/library?bed=" + bed).address().bed(), bed);
    }
    String echoed = read("/library?layer=" + "z".repeat(3000)).notes().get(0).args().get(0);
    assertEquals(41, echoed.length());
  }

  @Test
  void aVerdictAndItsOrderGoWithTheBed() {
    AddressReader.Read read = read("/library?verdict=fits&sort=fit&layer=herb&page=2");
    assertEquals("/library?layer=herb&page=2", read.address().path());
    assertEquals(List.of("choosing.verdict-without-bed", "choosing.fit-without-bed"),
        read.notes().stream().map(Finding::code).toList());
    assertEquals(Order.FIT, read("/library?bed=3").address().orderOrUsual());
    assertEquals(Order.NAME, read("/library").address().orderOrUsual());
  }
}
