package guildwood.choosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.kernel.Range;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesAndOrdersTest {
  private static final FacetIndex INDEX = FacetIndex.of(new SpeciesLibrary(1, List.of(
      species("comfrey", "Symphytum × uplandicum", List.of("Russian comfrey"), "Boraginaceae", List.of(), 1.2),
      species("walnut", "Juglans nigra", List.of("black walnut"), "Juglandaceae", List.of(), 25),
      species("seaberry", "Hippophae rhamnoides", List.of("Sea-buckthorn"), "Elaeagnaceae", List.of("Elaeagnus rhamnoides"), 4),
      species("wort", "Hypericum perforatum", List.of("St. John's wort"), "Hypericaceae", List.of(), 0.6),
      species("genip", "Artemisia umbelliformis", List.of("Génépi des Alpes"), "", List.of(), Double.NaN),
      species("nothing", "Xanthoceras sorbifolium", List.of(), "Sapindaceae", List.of(), 6)), List.of(), Map.of()));

  private static Species species(
      String id, String scientific, List<String> common, String family, List<String> synonyms, double height) {
    List<Statement> statements = Double.isNaN(height) ? List.of() : List.of(new Statement(1, Trait.HEIGHT, "", "-",
        new TraitValue.Span(Range.of(height)), "own-experience", Optional.empty(), false, ""));
    return new Species(id, scientific, common, family, synonyms, false, statements);
  }

  private static List<String> ids(Query query, Order order) {
    return INDEX.choose(query, Optional.empty()).list(order, 0, 50).stream().map(r -> r.species().id()).toList();
  }

  @ParameterizedTest
  @CsvSource({
      "symphytum x upl, comfrey", "symphytum × uplandicum, comfrey", "Symphytum ×uplandicum, comfrey", "SYMPH UPL, comfrey",
      "symphytum x, comfrey", "walnut black, walnut", "jugl wal, walnut", "sea buck, seaberry", "seabuck, seaberry",
      "sea-buckthorn, seaberry", "elaeagnus, seaberry", "genepi, genip", "GÉNÉPI, genip", "st johns, wort", "St. John’s, wort",
      "x, nothing", "xan, nothing", "'  des--alp ', genip"})
  void namesAreFoundAsPeopleTypeThem(String text, String id) {
    assertEquals(List.of(id), ids(Query.NOTHING.withText(text), Order.NAME));
  }

  @ParameterizedTest
  @CsvSource({"alnut", "black oak", "uplandicumm", "x alnut"})
  void wordsAreFoundFromTheirBeginningAndAllMustBe(String text) {
    assertEquals(List.of(), ids(Query.NOTHING.withText(text), Order.NAME));
  }

  @ParameterizedTest
  @CsvSource({
      "walnot, walnut", "wlanut, walnut", "blakc walnut, black walnut", "Symphitum uplandicum, symphytum uplandicum",
      "seabukc, seabuckthorn", "genepy, genepi", "zzzzz, ''", "walnut symphytum, ''", "walnut, ''", "'', ''"})
  void aNameNearlySpeltIsOffered(String text, String offered) {
    assertEquals(offered, INDEX.nearTexts(text).stream().findFirst().orElse(""), INDEX.nearTexts(text)::toString);
  }

  @Test
  void signsAloneAskNothing() {
    for (String signs : List.of(" .- ", "%", "_", "×", "'")) {
      assertEquals(6, ids(Query.NOTHING.withText(signs), Order.NAME).size(), signs);
    }
  }

  @Test
  void everyOrder() {
    assertEquals(List.of("walnut", "genip", "comfrey", "seaberry", "wort", "nothing"), ids(Query.NOTHING, Order.NAME));
    assertEquals(List.of("genip", "seaberry", "wort", "walnut", "comfrey", "nothing"), ids(Query.NOTHING, Order.SCIENTIFIC_NAME));
    assertEquals(List.of("comfrey", "seaberry", "wort", "walnut", "nothing", "genip"), ids(Query.NOTHING, Order.FAMILY));
    assertEquals(List.of("wort", "comfrey", "seaberry", "nothing", "walnut", "genip"), ids(Query.NOTHING, Order.SHORTEST_FIRST));
    assertEquals(List.of("walnut", "nothing", "seaberry", "comfrey", "wort", "genip"), ids(Query.NOTHING, Order.TALLEST_FIRST));
    // Without a bed there is no fit to go by.
    assertEquals(ids(Query.NOTHING, Order.NAME), ids(Query.NOTHING, Order.FIT));
  }

  @Test
  void aPageIsAPieceOfTheWhole() {
    Outcome all = INDEX.choose(Query.NOTHING, Optional.empty());
    List<Outcome.Remaining> whole = all.list(Order.NAME, 0, 50);
    assertEquals(whole.subList(2, 5), all.list(Order.NAME, 2, 3));
    assertEquals(List.of(), all.list(Order.NAME, 6, 50));
  }

  @Test
  void aQueryRefusesOptionsItsFacetDoesNotHave() {
    assertThrows(IllegalArgumentException.class, () -> Query.NOTHING.with(Facet.LAYER, "cellar"));
    Query both = Query.NOTHING.with(Facet.BLOOM, "may").with(Facet.BLOOM, "april");
    assertEquals(List.of("april", "may"), List.copyOf(both.chosen(Facet.BLOOM)));
    assertEquals(Map.of(), both.without(Facet.BLOOM, "may").with(Facet.BLOOM, Set.of()).chosen());
  }
}
