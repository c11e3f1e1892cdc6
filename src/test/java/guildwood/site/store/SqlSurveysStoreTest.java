package guildwood.site.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.store.SqlBeds;
import guildwood.site.Site;
import guildwood.site.survey.CoverScale;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.species.WetlandRegion;
import guildwood.store.Database;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SqlSurveysStoreTest {
  private static final Row NETTLE = new Row("stinging nettle", Optional.of("Urtica dioica"), "+", Origin.WILD, Stage.SEEDLING);
  private static final Row UNKNOWN = new Row("no such plant", Optional.empty(), "", Origin.PLANTED, Stage.NOT_SAID);

  private final Database database = Database.inMemory();
  private final SqlSurveys surveys = new SqlSurveys(database);
  private final SqlSites sites = new SqlSites(database);
  private final SqlBeds beds = new SqlBeds(database);
  private final long site = sites.add(new Site(0, "Site", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
  private final long bed = beds.add(new Bed(0, site, "Bed", 20, Map.of(), List.of(), "")).orElseThrow();

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsEverythingInTheOrderWritten() {
    SurveySheet sheet = sheet(OptionalLong.of(bed), "2025-06-14", UNKNOWN, NETTLE);
    long id = surveys.add(sheet).orElseThrow();
    assertEquals(withId(id, sheet), surveys.find(id).orElseThrow());
  }

  @Test
  void keepsASurveyThatSaysNothingButItsName() {
    SurveySheet bare = new SurveySheet(0, site, OptionalLong.empty(), "Bare", Optional.empty(), OptionalDouble.empty(),
        CoverScale.PERCENT, Optional.empty(), "", List.of());
    long id = surveys.add(bare).orElseThrow();
    assertEquals(withId(id, bare), surveys.find(id).orElseThrow());
  }

  @Test
  void listsTheLatestFirstAndASiteWithItsBeds() {
    long old = surveys.add(sheet(OptionalLong.of(bed), "2024-01-01", NETTLE)).orElseThrow();
    long recent = surveys.add(sheet(OptionalLong.empty(), "2025-01-01", NETTLE)).orElseThrow();
    assertEquals(List.of(recent, old), surveys.ofSite(site).stream().map(SurveySheet::id).toList());
    assertEquals(List.of(old), surveys.ofBed(bed).stream().map(SurveySheet::id).toList());
  }

  @Test
  void aChangeReplacesTheRows() {
    long id = surveys.add(sheet(OptionalLong.of(bed), "2025-06-14", NETTLE, UNKNOWN)).orElseThrow();
    surveys.change(id, s -> s.withRows(List.of(UNKNOWN.takenFor(Optional.of("Acer rubrum"))))).orElseThrow();
    List<Row> rows = surveys.find(id).orElseThrow().rows();
    assertEquals(1, rows.size());
    assertEquals(Optional.of("Acer rubrum"), rows.get(0).taken());
    assertTrue(surveys.change(id + 1, s -> s).isEmpty());
  }

  @Test
  void refusesAGoneOwnerAndABedOfAnotherSite() {
    long other = sites.add(new Site(0, "Other", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    SurveySheet ofBed = sheet(OptionalLong.of(bed), "2025-06-14", NETTLE);
    assertTrue(surveys.add(ofSite(other, ofBed)).isEmpty());
    assertTrue(surveys.add(ofSite(site + 100, sheet(OptionalLong.empty(), "2025-06-14", NETTLE))).isEmpty());
    assertEquals(List.of(), surveys.ofSite(other));
  }

  @Test
  void goesWithItsBedAndItsSite() {
    long ofBed = surveys.add(sheet(OptionalLong.of(bed), "2025-06-14", NETTLE)).orElseThrow();
    long ofSite = surveys.add(sheet(OptionalLong.empty(), "2025-06-14", NETTLE)).orElseThrow();
    beds.remove(bed);
    assertTrue(surveys.find(ofBed).isEmpty());
    assertTrue(surveys.find(ofSite).isPresent());
    sites.remove(site);
    assertTrue(surveys.find(ofSite).isEmpty());
  }

  @Test
  void isRemovedOnce() {
    long id = surveys.add(sheet(OptionalLong.empty(), "2025-06-14", NETTLE)).orElseThrow();
    assertTrue(surveys.remove(id));
    assertFalse(surveys.remove(id));
  }

  private SurveySheet sheet(OptionalLong bedId, String date, Row... rows) {
    return new SurveySheet(0, site, bedId, "Survey", Optional.of(LocalDate.parse(date)), OptionalDouble.of(25),
        CoverScale.BRAUN_BLANQUET, Optional.of(WetlandRegion.E_MTNS), "a note", List.of(rows));
  }

  private static SurveySheet withId(long id, SurveySheet s) {
    return new SurveySheet(id, s.siteId(), s.bedId(), s.name(), s.date(), s.plotSizeM2(), s.scale(), s.region(), s.note(), s.rows());
  }

  private static SurveySheet ofSite(long site, SurveySheet s) {
    return new SurveySheet(0, site, s.bedId(), s.name(), s.date(), s.plotSizeM2(), s.scale(), s.region(), s.note(), s.rows());
  }
}
