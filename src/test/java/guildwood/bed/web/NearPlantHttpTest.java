package guildwood.bed.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What grows near a bed over HTTP: noted, moved, removed, and what the guild's page makes of it. */
class NearPlantHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String bed;

  @BeforeEach
  void aBed() {
    String site = visitor.post("/sites/new", "name", "Fenced", "place", "US-WI", "winter", "5a", "winter-basis", "published",
        "ph-from", "6.2", "ph-basis", "measured").location();
    bed = visitor.post(site + "/beds/new", "name", "By the fence", "area", "60", "area-unit", "metric", "light-from", "full sun",
        "light-basis", "observed", "moisture-from", "moist", "moisture-basis", "observed").location();
  }

  private Page note(String species, String distance) {
    return visitor.submit(bed + "/near", "near-species", species, "near-distance", distance, "length-unit", "metric");
  }

  @Test
  void isNotedByAnyNameMovedAndRemoved() {
    Page noted = note("apple", "12");
    assertTrue(noted.says("apple: 12 m away, noted as growing near."));
    assertTrue(noted.says("apple Malus domestica 12 m away"));
    Page moved = note("Malus domestica", "50 ft");
    assertTrue(moved.says("apple Malus domestica 15.2 m away"));
    assertFalse(moved.says("12 m away"));
    assertTrue(visitor.get(bed + "/remove").says("the record of one species that grows near"));
    Page without = visitor.submit(bed + "/near/remove", "species", "malus-domestica");
    assertTrue(without.says("apple is no longer noted as growing near."));
    assertFalse(without.says("m away"));
    assertEquals(404, visitor.post(bed + "/near/remove", "species", "malus-domestica").status());
  }

  @Test
  void distancesAreTakenAndShownInTheVisitorsUnits() {
    visitor.submit("/units", "units", "us", "back", "/");
    Page feet = visitor.get(bed);
    assertTrue(feet.says("Distance from the bed in feet"));
    assertEquals("us", feet.valueOf("length-unit"));
    Page noted = visitor.submit(bed + "/near", "near-species", "apple", "near-distance", "40", "length-unit", "us");
    assertTrue(noted.says("apple Malus domestica 40 ft away"));
    visitor.submit("/units", "units", "metric", "back", "/");
    assertTrue(visitor.get(bed).says("12.2 m away"));
  }

  @ParameterizedTest
  @CsvSource({
    "near-species, '', Please fill this in.",
    "near-species, unobtainium, No species in the library is called “unobtainium” or has that in its name.",
    "near-distance, '', Please fill this in.",
    "near-distance, far, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "near-distance, -3, Must lie between 0.5 and 2000 m (1.64 and 6561.68 ft).",
    "near-distance, 0.4, Must lie between 0.5 and 2000 m (1.64 and 6561.68 ft).",
    "near-distance, 2001, Must lie between 0.5 and 2000 m (1.64 and 6561.68 ft)."})
  void nonsenseIsRefusedBesideItsFieldAndTheRestKept(String field, String typed, String message) {
    String species = field.equals("near-species") ? typed : "apple";
    String distance = field.equals("near-distance") ? typed : "12";
    Page refused = visitor.post(bed + "/near", "near-species", species, "near-distance", distance, "length-unit", "metric");
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertEquals(species, refused.valueOf("near-species"));
    assertEquals(distance, refused.valueOf("near-distance"));
    assertEquals("1", refused.valueOf("count"), "the other form of the page is as it was");
    assertFalse(visitor.get(bed).says("m away"));
  }

  @Test
  void aNameThatFitsSeveralAsksWhichOne() {
    Page which = visitor.post(bed + "/near", "near-species", "currant", "near-distance", "12", "length-unit", "metric");
    assertEquals("Which one is meant by “currant”? Choose below.", which.messageOf("near-species"));
    assertTrue(which.html().contains("name=\"near-pick\" value=\"Ribes nigrum\""));
    Page chosen = visitor.submit(bed + "/near", "near-species", "currant", "near-pick", "Ribes nigrum", "near-distance", "12");
    assertTrue(chosen.says("Ribes nigrum 12 m away"));
  }

  @Test
  void bedsThatAreNotThereAreNotFound() {
    assertEquals(404, visitor.post("/beds/999999/near", "near-species", "apple", "near-distance", "12").status());
    assertEquals(404, visitor.post("/beds/999999/near/remove", "species", "malus-domestica").status());
    assertEquals(303, visitor.get(bed + "/near").status());
  }

  /** Washington State University Tree Fruit: apple needs a partner; more than 100 ft apart is poor. */
  @Test
  void theGuildKnowsWhoGrowsNearAndWhoTooFarOff() {
    visitor.submit(bed + "/standing", "species", "Malus domestica", "count", "1");
    assertTrue(guild().says("apple stands without a partner"));
    note("apple", "40");
    Page far = guild();
    assertTrue(far.says("apple stands without a partner"));
    assertTrue(far.says("apple: a partner, apple, grows 40 m away. More than 100 ft (30.5 m) away: poor"));
    note("apple", "12");
    assertFalse(guild().says("without a partner"));
    assertFalse(guild().says("poor"));
  }

  private Page guild() {
    return visitor.get(bed + "/guild/edit");
  }
}
