package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceTest {
  @ParameterizedTest
  @CsvSource({
    "US-WI, 'Wisconsin, United States'", "us-wi, 'Wisconsin, United States'", "DE, Germany", "DE-BY, 'DE-BY, Germany'", "'', ''"})
  void readsCodesAndNamesThem(String typed, String name) {
    assertEquals(name, Place.name(Place.read(typed, "place").orThrow()));
  }

  @ParameterizedTest
  @CsvSource({"Wisconsin, place.form", "XX, place.country", "US-ZZ, place.state", "US-, place.form", "U, place.form", "US_WI, place.form"})
  void refusesWhatIsNoCode(String typed, String code) {
    assertEquals(code, Place.read(typed, "place").findings().get(0).code());
  }

  @Test
  void everyStateHasANameOfItsOwn() {
    assertEquals("West Virginia, United States", Place.name("US-WV"));
    assertEquals("District of Columbia, United States", Place.name("US-DC"));
  }
}
