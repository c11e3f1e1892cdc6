package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.exchange.ShippedLibrary;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What columns are taken for, and that a unit is never guessed. */
class MappingSuggesterTest {
  private static final SpeciesLibrary EMPTY = new SpeciesLibrary(0, List.of(), List.of(), Map.of());

  private static Suggestion of(SpeciesLibrary library, String header, String... cells) {
    List<String> lines = new ArrayList<>(List.of("Latin name,\"" + header.replace("\"", "\"\"") + "\""));
    for (int i = 0; i < cells.length; i++) {
      lines.add("Genus species" + (char) ('a' + i) + "us," + cells[i]);
    }
    Table table = TextTable.of("t", lines.toArray(String[]::new));
    return new MappingSuggester(library).suggest(table, HeaderFinder.at(table, 1, 1).orThrow()).orThrow().columns().get(1);
  }

  private static String said(String header, String cells) {
    ColumnMapping column = of(EMPTY, header, cells.split("\\|")).column();
    return column.meaning().key() + (column.unit() == ColumnUnit.AS_WRITTEN ? "" : " " + column.unit().key());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', quoteCharacter = '~', value = {
      "Height (ft);3|12|40;value:height feet", "Height, feet;3|12|40;value:height feet", "Ht in inches;3|12|40;value:height inches",
      "height_cm;30|120;value:height centimetres", "Mature height [m];3|12;value:height metres", "HeightM;3|12;value:height metres",
      "Plant height in feet;3|12;value:height feet", "Spread \";12|18;value:crown not-known", "Width (in);12|18;value:crown inches",
      "Height;3|12|40;value:height not-known", "Height;3 m|12 m|40 m|2 m|1;value:height metres", "Height;3 m|12 ft|40;value:height not-known",
      "Height;3 m|12 ft;value:height", "Min temp °F;-30|-20;value:coldest_winter fahrenheit", "Min Temp (C);-30|-20;value:coldest_winter celsius",
      "Hardy to;-30|-20|-10;value:coldest_winter not-known", "Hardiness;4-8|3-7|5-9;value:coldest_winter zone", "Hardiness;4|5|6;value:coldest_winter not-known",
      "USDA Zone;4|5|6;value:coldest_winter zone", "Hardiness Zone;4a|5b|6;value:coldest_winter zone", "Zone;-30|-20|-10;value:coldest_winter not-known",
      "Light;7|8|6;value:light not-known", "Hours of sun;7|8|6;value:light not-known", "Sun (hours);7|8|6;value:light hours",
      "Moisture;5|6|9;value:moisture not-known", "Moisture;dry|wet|moist;value:moisture", "Spread;runs|suckers|stays;value:spread",
      "Fruit;Aug|Sep|Jul-Aug;value:harvest.fruit", "Edible;x|x|;mark:use:food", "Edible parts;leaves|fruit|roots;items:harvest",
      "Native;Europe|Asia|Europe;items:nativity", "Type;Shrub|Vine|Herb;value:layer", "Type;annual|perennial|biennial;value:duration",
      "Flower color;red|blue|white;note", "Root depth (in);12|14;note", "Height at 20 years (ft);20|30;note", "Seed size (mm);2|3;note",
      "Have;3|0|12;on-hand", "Price;$3.50|4;price", "Family;Rosaceae|Fabaceae;family", "Foo;Rosaceae|Fabaceae|Pinaceae;family",
      "Foo;full sun|part shade|shade;value:light", "Foo;12|14|3;note", "Common Name;Red maple|Hazel;common-names", "Jan;x|x|;note",
      "Wetland indicator;FACW|OBL;note", "Value;1|2;note",
      "Drought;High|Low;note", "Drought tolerance;High|Low;note", "Juglone tolerant;Low|High;note", "Fuelwood;Low|High;mark:use:fuelwood",
      "Flower_end;4|5;highest:bloom", "Soil heavy;1|0;mark:texture:fine"})
  void columnsAreTakenFor(String header, String cells, String expected) {
    assertEquals(expected, said(header, cells));
  }

  @Test
  void plantsThatTheLibraryKnowsTellFeetFromMetres() {
    SpeciesLibrary library = ShippedLibrary.read("/seed-data").orThrow();
    List<String> feet = new ArrayList<>(List.of("Latin name,Height"));
    List<String> metres = new ArrayList<>(feet);
    library.species().stream().filter(s -> s.middle(Trait.HEIGHT).orElse(0) > 1).limit(30).forEach(s -> {
      double height = s.middle(Trait.HEIGHT).getAsDouble();
      feet.add(s.scientificName() + "," + Math.round(height / 0.3048));
      metres.add(s.scientificName() + "," + Math.round(height * 10) / 10.0);
    });
    assertEquals(ColumnUnit.FEET, unit(library, feet));
    assertEquals(ColumnUnit.METRES, unit(library, metres));
    assertEquals(ColumnUnit.NOT_KNOWN, unit(library, feet.subList(0, 5)));
  }

  private static ColumnUnit unit(SpeciesLibrary library, List<String> lines) {
    Table table = TextTable.of("t", lines.toArray(String[]::new));
    return new MappingSuggester(library).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().columns().get(1).column().unit();
  }

  @Test
  void everySuggestionSaysWhy() {
    Suggestion suggestion = of(EMPTY, "Height", "3", "4", "5");
    assertEquals(List.of("import.reason.header", "import.reason.unit-not-known"), suggestion.reasons().stream().map(r -> r.code()).toList());
  }

  @Test
  void everyMeaningHasAKeyThatIsReadBack() {
    Meaning.choices().forEach(m -> assertEquals(m, Meaning.ofKey(m.key()).orElseThrow(), m.key()));
    assertEquals(Meaning.choices().size(), Meaning.choices().stream().map(Meaning::key).collect(Collectors.toSet()).size());
    for (String bad : List.of("", "value", "value:", "value:nothing", "mark:bloom", "lowest:layer", "value:function", "value:function.dance", "note:ph")) {
      assertTrue(Meaning.ofKey(bad).isEmpty(), bad);
    }
  }

  @Test
  void aSavedMappingIsFoundByItsHeaders() {
    Table table = TextTable.of("t", "Height,Latin name,Height", "3,Malus domestica,4");
    Mapping other = new MappingSuggester(EMPTY).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
    Mapping saved = new Mapping(new Heading(1, 1, List.of("latin  name", "HEIGHT"), List.of("", "")), List.of(
        ColumnMapping.of(0, "latin  name", Meaning.NAME, ColumnUnit.AS_WRITTEN),
        ColumnMapping.of(1, "HEIGHT", Meaning.of(Meaning.Kind.VALUE, Trait.CROWN, ""), ColumnUnit.FEET)));
    Mapping both = saved.onto(other);
    assertEquals(List.of("value:crown", "scientific-name", "value:height"), both.columns().stream().map(c -> c.meaning().key()).toList());
    assertEquals(ColumnUnit.FEET, both.columns().get(0).unit());
    assertEquals(ColumnUnit.NOT_KNOWN, both.columns().get(2).unit());
  }
}
