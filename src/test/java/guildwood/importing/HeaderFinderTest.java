package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the headers stand. */
class HeaderFinderTest {
  private static Heading find(String... lines) {
    return HeaderFinder.find(TextTable.of("t", lines)).orThrow();
  }

  @Test
  void inTheFirstRow() {
    Heading heading = find("Latin name,Height (ft),pH", "Malus domestica,12,6");
    assertEquals(1, heading.firstRow());
    assertEquals(1, heading.lastRow());
    assertEquals(List.of("Latin name", "Height (ft)", "pH"), heading.headers());
  }

  @Test
  void belowTitlesAndBlankRows() {
    Heading heading = find("Plants for the lower field,,", "collected by us 2019-2024,,", ",,", "Botanical name,Height,Soil pH", "Malus domestica,12,6");
    assertEquals(4, heading.firstRow());
    assertEquals(List.of("Botanical name", "Height", "Soil pH"), heading.headers());
  }

  @Test
  void withARowOfUnits() {
    Heading heading = find("Species,Height,Spread,Min temp", ",m,m,°C", "Malus domestica,4,3,-30");
    assertEquals(1, heading.firstRow());
    assertEquals(2, heading.lastRow());
    assertEquals(List.of("", "m", "m", "°C"), heading.units());
  }

  @Test
  void overTwoRows() {
    Heading heading = find("Plant,,Bloom,,,Harvest,", "Latin name,Common name,Apr,May,Jun,Aug,Sep", "Malus domestica,apple,x,x,,,x");
    assertEquals(1, heading.firstRow());
    assertEquals(2, heading.lastRow());
    assertEquals(List.of("Plant Latin name", "Plant Common name", "Bloom Apr", "Bloom May", "Bloom Jun", "Harvest Aug", "Harvest Sep"),
        heading.headers());
  }

  @Test
  void whereAPersonSays() {
    TextTable table = TextTable.of("t", "a,b", "Name,Höhe", "Malus domestica,4 m");
    assertEquals(List.of("Name", "Höhe"), HeaderFinder.at(table, 2, 2).orThrow().headers());
    assertTrue(HeaderFinder.at(table, 7, 7).isRefused());
  }

  @Test
  void nowhere() {
    assertTrue(HeaderFinder.find(TextTable.of("t", "1,2,3", "4,5,6")).isRefused());
    assertTrue(HeaderFinder.find(TextTable.of("t", "")).isRefused());
  }
}
