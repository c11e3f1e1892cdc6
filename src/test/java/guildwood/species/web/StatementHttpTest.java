package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Stating, changing, choosing, removing and restoring values of a species of the test's own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StatementHttpTest {
  private static final String SPECIES = "/library/prunus-exemplum";
  private static final String ALL_TRAITS = "/library/pyrus-exemplum";

  private App app;
  private HttpVisitor visitor;

  @BeforeAll
  void start() {
    app = App.start(Settings.demoOnFreePort());
    visitor = new HttpVisitor(app);
    visitor.submit("/library/new", "scientific_name", "Prunus exemplum", "common_names", "example plum");
    visitor.submit("/library/new", "scientific_name", "Pyrus exemplum");
  }

  @AfterAll
  void stop() {
    app.close();
  }

  @ParameterizedTest
  @EnumSource(Trait.class)
  void everyTraitHasAForm(Trait trait) {
    assertEquals(200, visitor.get(SPECIES + "/values/new?trait=" + trait.key()).status());
    Page empty = visitor.post(SPECIES + "/values/new", "trait", trait.key());
    assertEquals(422, empty.status());
    assertEquals("Please choose a source, or type a new one.", empty.messageOf("source"));
    String about = trait == Trait.CAUTION ? "caution_kind" : "item";
    assertEquals(trait.hasItems(), !empty.messageOf(about).isEmpty());
    assertEquals(trait.carriesEvidence(), !empty.messageOf("evidence").isEmpty());
    // Propagation without a season means that the season is not known.
    assertEquals(trait != Trait.PROPAGATION, empty.messageOf("value").equals("Please fill this in."), empty.messageOf("value"));
  }

  @ParameterizedTest
  @EnumSource(Trait.class)
  void everyValueCanBeStatedShownAndChanged(Trait trait) {
    List<String> fields = new ArrayList<>(List.of("trait", trait.key(), "source", "own-experience", "note", "seen by us"));
    if (trait == Trait.CAUTION) {
      fields.addAll(List.of("caution_kind", "toxic", "caution_detail", "kernel"));
    } else if (trait.hasItems()) {
      fields.addAll(List.of("item", trait.items().get(0)));
    }
    if (trait.carriesEvidence()) {
      fields.addAll(List.of("evidence", "folk"));
    }
    String value = switch (trait.shape()) {
      case SPAN -> trait == Trait.COLDEST_WINTER ? "-20 F" : trait.unit().name().equals("METRES") ? "12 ft" : trait.key().startsWith("ph") ? "6" : "2";
      case WORD, WORDS, SEASONS -> trait.words().get(1);
      case MONTHS -> "May";
      case YES_NO -> "no";
      case TEXT -> "The kernel is poisonous.";
    };
    fields.addAll(List.of("value", value));
    Page shown = visitor.submit(ALL_TRAITS + "/values/new", fields.toArray(String[]::new));
    assertTrue(shown.says("the value was saved"));
    assertTrue(shown.says("seen by us"));

    Page twice = visitor.post(ALL_TRAITS + "/values/new", fields.toArray(String[]::new));
    assertEquals("The same value from the same source is kept already.", twice.messageOf("value"));

    String address = lastEditAddress(shown, trait);
    Page form = visitor.get(address);
    assertEquals("seen by us", form.valueOf("note"));
    assertEquals("own-experience", form.valueOf("source"));
    fields.set(5, "changed");
    assertTrue(visitor.submit(address, fields.toArray(String[]::new)).says("changed"));
    visitor.submit(address + "/remove");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "ph | 15 | Must lie between 2.5 and 11.",
      "ph | 7..5 | The first number (7) is larger than the second (5).",
      "ph | sour | “sour” is not a number that can be read here.",
      "height | 15 | Please write the unit too, one of: m, cm, mm, ft, in.",
      "height | 15 yards | “yards” is not a unit that can be read here. Known: m, cm, mm, ft, in.",
      "coldest_winter | zone 14 | “zone 14” is not a hardiness zone from 1 to 13, such as zone 4a.",
      "bloom | 13 | “13” is not a month from 1 to 12 or a month’s name.",
      "growth_rate | quick | “quick” is not one of: slow, medium, fast.",
      "layer | sky | “sky” is not one of: tall-tree, small-tree, shrub, climber, herb, ground-cover, root.",
  })
  void refusesNonsenseBesideItsFieldAndKeepsTheRest(String trait, String value, String message) {
    Page refused = visitor.post(SPECIES + "/values/new", "trait", trait, "value", value, "source", "new", "source_kind", "hearsay",
        "source_author", "Neighbour", "source_title", "Over the fence", "source_year", "2025", "note", "a <b> note");
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf("value"));
    assertEquals("new", refused.valueOf("source"));
    assertEquals("hearsay", refused.valueOf("source_kind"));
    assertEquals("Over the fence", refused.valueOf("source_title"));
    assertEquals("a <b> note", refused.valueOf("note"));
    // Nothing is half saved: the new source is not there either.
    assertFalse(visitor.get("/sources").says("Over the fence"));
  }

  @Test
  void refusesANewSourceThatIsNonsense() {
    Page refused = visitor.post(SPECIES + "/values/new", "trait", "growth_rate", "value", "slow", "source", "new", "source_kind", "rumour",
        "source_author", "x".repeat(301), "source_title", "", "source_year", "long ago", "source_locator", "a\u0000b", "note", "y".repeat(501));
    assertEquals(422, refused.status());
    assertEquals("Please choose what kind of source it is.", refused.messageOf("source_kind"));
    assertEquals("Too long: at most 300 characters.", refused.messageOf("source_author"));
    assertEquals("Please fill this in.", refused.messageOf("source_title"));
    assertEquals("“long ago” is not a whole number.", refused.messageOf("source_year"));
    assertTrue(refused.messageOf("source_locator").startsWith("Contains characters"));
    assertEquals("Too long: at most 500 characters.", refused.messageOf("note"));
    assertEquals("slow", refused.valueOf("value"));
    assertFalse(visitor.get(SPECIES).says("Growth rate"));
  }

  @ParameterizedTest
  @CsvSource({"toxic, '', part", "listed, Illinois, ISO", "permit, '', ISO", "weedy, 4, region"})
  void aCautionNeedsItsPartOrPlace(String kind, String detail, String hint) {
    Page refused = visitor.post(SPECIES + "/values/new", "trait", "caution", "caution_kind", kind, "caution_detail", detail,
        "value", "Careful.", "source", "own-experience");
    assertEquals(422, refused.status());
    assertTrue(refused.messageOf("caution_detail").contains(hint), refused.messageOf("caution_detail"));
    assertEquals(kind, refused.valueOf("caution_kind"));
    assertEquals("Careful.", refused.valueOf("value"));
  }

  @Test
  void ofSeveralSourcesTheOneThatIsChosenRules() {
    visitor.submit("/library/new", "scientific_name", "Ribes exemplum");
    String species = "/library/ribes-exemplum";
    visitor.submit(species + "/values/new", "trait", "height", "value", "5 ft", "source", "own-experience");
    Page both = visitor.submit(species + "/values/new", "trait", "height", "value", "2 m", "source", "new", "source_kind", "hearsay",
        "source_author", "Neighbour", "source_title", "Garden walk", "source_year", "2026");
    assertTrue(both.says("1.5 m rules") && both.says("2 m overruled"), both.text());
    assertTrue(both.says("Neighbour: Garden walk (2026) hearsay"), both.text());
    String rule = both.first("action=\"(" + species + "/values/\\d+/rule)\"").orElseThrow();
    Page chosen = visitor.submit(rule);
    assertTrue(chosen.says("2 m rules") && chosen.says("1.5 m overruled"), chosen.text());
    assertTrue(chosen.says("“2 m” rules now."));
    // The same new source typed again, without choosing it from the list, is the one that is there.
    visitor.submit(species + "/values/new", "trait", "crown", "value", "1 m", "source", "", "source_kind", "hearsay",
        "source_author", "Neighbour", "source_title", "Garden walk", "source_year", "2026");
    assertEquals(2, visitor.get("/sources").html().split("Neighbour: Garden walk", -1).length);
  }

  @Test
  void aValueGoesIntoTheBinAndComesBack() {
    Page shown = visitor.submit(SPECIES + "/values/new", "trait", "duration", "value", "perennial", "source", "own-experience");
    String address = lastEditAddress(shown, Trait.DURATION);
    assertFalse(visitor.submit(address + "/remove").says("Life span"));
    assertTrue(visitor.get("/bin").says("Life span"));
    assertEquals(404, visitor.get(address).status());
    assertEquals(404, visitor.post(address + "/rule").status());
    assertEquals(404, visitor.post(address.replace("prunus-exemplum", "tilia-americana") + "/restore").status());
    assertTrue(visitor.submit(address + "/restore").says("Life span"));
    assertEquals(404, visitor.post(address + "/restore").status());
  }

  @Test
  void aStatementIsOnlyReachedThroughItsOwnSpecies() {
    Page shown = visitor.submit(SPECIES + "/values/new", "trait", "texture", "value", "coarse", "source", "own-experience");
    String foreign = lastEditAddress(shown, Trait.TEXTURE).replace("prunus-exemplum", "tilia-americana");
    assertEquals(404, visitor.get(foreign).status());
    assertEquals(404, visitor.post(foreign + "/remove").status());
    assertTrue(visitor.get(SPECIES).says("coarse (sandy)"));
  }

  @Test
  void savingAndAddingAnotherKeepsTheSource() {
    Page next = visitor.submit(SPECIES + "/values/new", "trait", "frost_free_days", "value", "150", "source", "usda-plants", "then", "more");
    assertTrue(next.says("What is the value about?"));
    String link = next.links().stream().filter(l -> l.contains("trait=ph&")).findFirst().orElseThrow();
    assertEquals("usda-plants", visitor.get(link).valueOf("source"));
  }

  /** The address of the form for the one statement about a trait on a species page. */
  private static String lastEditAddress(Page page, Trait trait) {
    String label = trait == Trait.CAUTION ? "Poisonous" : trait == Trait.FUNCTION ? "Fixes nitrogen" : new guildwood.web.Messages().say("trait." + trait.key());
    return page.first("href=\"([^\"]*/values/\\d+)\" aria-label=\"Edit " + label).orElseThrow(() -> new AssertionError(label + "\n" + page.html()));
  }
}
