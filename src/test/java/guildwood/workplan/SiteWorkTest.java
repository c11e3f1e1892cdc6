package guildwood.workplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.materials.SiteNeeds;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What must come first, comes first. */
class SiteWorkTest {
  private static final Map<String, Integer> NORTH =
      Map.of("caragana-arborescens", 2, "amelanchier-alnifolia", 1, "fragaria-virginiana", 12, "symphytum-x-uplandicum-bocking-14", 3);

  private static WorkPlan plan(SiteNeeds needs, List<PlantJob> jobs, LocalDate today, Done... done) {
    return SiteWork.of(WorkBeds.YEAR, today, WorkSettings.USUAL, needs, jobs, List.of(done));
  }

  private static WorkTask task(WorkPlan plan, String key) {
    return plan.find(key).orElseThrow(() -> new AssertionError(key + " is not among " + plan.tasks().stream().map(WorkTask::key).toList()));
  }

  @Test
  void pathsThenMulchThenShelterThenTheRestThenGroundCovers() {
    WorkPlan plan = plan(WorkBeds.pathAndBeds(8), WorkBeds.jobs(NORTH, Map.of()), WorkBeds.MARCH);
    assertEquals("ask", plan.tasks().get(0).key());
    assertEquals(Set.of("ask"), task(plan, "cover.path-9.wood-chips").after());
    assertEquals(Set.of("cover.path-9.wood-chips"), task(plan, "cover.bed-3.card").after());
    assertEquals(Set.of("cover.path-9.wood-chips", "cover.bed-3.card"), task(plan, "cover.bed-3.wood-chips").after());
    WorkTask shelter = task(plan, "plant.bed-3.caragana-arborescens.buy");
    assertEquals(WorkKind.PLANT_FIRST, shelter.kind());
    assertEquals(Set.of("ask", "buy.bed-3.caragana-arborescens", "cover.bed-3.card", "cover.bed-3.wood-chips"), shelter.after());
    WorkTask herb = task(plan, "plant.bed-3.symphytum-x-uplandicum-bocking-14.buy");
    assertTrue(herb.after().contains(shelter.key()));
    WorkTask cover = task(plan, "plant.bed-3.fragaria-virginiana.buy");
    assertEquals(WorkKind.PLANT_COVER, cover.kind());
    assertTrue(cover.after().containsAll(Set.of(shelter.key(), herb.key())));
    WorkTask water = task(plan, "water.bed-3");
    assertEquals(Set.of(shelter.key(), "plant.bed-3.amelanchier-alnifolia.buy"), water.after(), "from the first plants on");
    assertEquals(WorkBeds.YEAR.firstAutumnFrost(2027), water.window().to());
    assertFalse(cover.window().from().isBefore(shelter.window().from()));
  }

  @Test
  void whatIsOnHandGoesToTheFirstBedOnce() {
    List<PlantJob> jobs = WorkBeds.jobs(Map.of("ribes-nigrum", 3), Map.of("ribes-nigrum", 3), WorkBeds.has("ribes-nigrum", 4, 1));
    WorkPlan plan = plan(WorkBeds.nothingToLay(), jobs, WorkBeds.MARCH);
    assertEquals(3, task(plan, "plant.bed-3.ribes-nigrum.have").amount());
    assertEquals(1, task(plan, "plant.bed-4.ribes-nigrum.have").amount());
    assertEquals(1, task(plan, "plant.bed-4.ribes-nigrum.raised").amount());
    assertEquals(1, task(plan, "plant.bed-4.ribes-nigrum.buy").amount());
  }

  /** Hardwood cuttings are taken in winter and root for a year; 3 plants at 60 of 100 are 5 cuttings. */
  @Test
  void whatIsRaisedIsStartedInItsSeasonAndPlantedWhenItIsReady() {
    List<PlantJob> jobs = WorkBeds.jobs(Map.of("ribes-nigrum", 3), Map.of(), WorkBeds.has("ribes-nigrum", 0, 3));
    LocalDate may = LocalDate.of(2027, 5, 15);
    WorkPlan plan = plan(WorkBeds.nothingToLay(), jobs, may);
    WorkTask start = task(plan, "start.bed-3.ribes-nigrum");
    assertEquals(5, start.amount());
    assertEquals("hardwood-cutting", start.detail());
    assertEquals(LocalDate.of(2027, 10, 27), start.window().from());
    WorkTask takeUp = task(plan, "take-up.bed-3.ribes-nigrum");
    assertEquals(LocalDate.of(2028, 10, 27), takeUp.window().from(), "a year later, before the autumn planting ends");
    assertEquals(Set.of("ask", "take-up.bed-3.ribes-nigrum"), task(plan, "plant.bed-3.ribes-nigrum.raised").after());
    // Three were put in last winter: two are left to start.
    Done begun = new Done(1, 1, start.key(), WorkKind.START_PLANTS, "", 3, LocalDate.of(2027, 11, 2), "ribes-nigrum", 3);
    WorkPlan then = plan(WorkBeds.nothingToLay(), jobs, LocalDate.of(2027, 11, 20), begun);
    assertEquals(2, task(then, start.key()).amount());
    Done all = new Done(2, 1, start.key(), WorkKind.START_PLANTS, "", 2, LocalDate.of(2027, 11, 20), "ribes-nigrum", 3);
    WorkPlan rooted = plan(WorkBeds.nothingToLay(), jobs, LocalDate.of(2028, 11, 25), begun, all);
    assertTrue(rooted.find(start.key()).isEmpty());
    assertEquals(LocalDate.of(2029, 3, 29), task(rooted, "take-up.bed-3.ribes-nigrum").window().from());
  }

  @Test
  void theQuestionAboutLinesIsAskedAgainWhenTheAnswerIsOld() {
    List<PlantJob> jobs = WorkBeds.jobs(NORTH, Map.of());
    Done asked = new Done(1, 1, "ask", WorkKind.ASK_ABOUT_LINES, "", 1, WorkBeds.MARCH.minusDays(28), "", 0);
    assertTrue(plan(WorkBeds.nothingToLay(), jobs, WorkBeds.MARCH, asked).find("ask").isEmpty());
    assertTrue(plan(WorkBeds.nothingToLay(), jobs, WorkBeds.MARCH.plusDays(1), asked).find("ask").isPresent());
    assertTrue(plan(WorkBeds.nothingToLay(), List.of(), WorkBeds.MARCH).tasks().isEmpty(), "nobody digs, nobody asks");
  }

  @Test
  void everyTaskComesAfterWhatItWaitsForWhateverIsPlanned() {
    java.util.Random dice = new java.util.Random(5);
    List<String> ids = WorkBeds.LIBRARY.species().stream().map(s -> s.id()).toList();
    for (int run = 0; run < 60; run++) {
      Map<String, Integer> first = guild(dice, ids);
      Map<String, Integer> second = guild(dice, ids);
      guildwood.species.Holding[] holdings = first.keySet().stream()
          .map(id -> WorkBeds.has(id, dice.nextInt(4), dice.nextInt(3))).toArray(guildwood.species.Holding[]::new);
      // The plan itself refuses an order in which something comes too early.
      WorkPlan plan = plan(WorkBeds.pathAndBeds(dice.nextInt(9)), WorkBeds.jobs(first, second, holdings),
          WorkBeds.MARCH.plusDays(dice.nextInt(365)));
      for (WorkTask task : plan.tasks()) {
        task.after().forEach(key -> assertFalse(task(plan, key).window().from().isAfter(task.window().from()), key + " and " + task));
      }
      int planned = first.values().stream().mapToInt(i -> i).sum() + second.values().stream().mapToInt(i -> i).sum();
      assertEquals(planned, plan.tasks().stream().filter(t -> t.kind().isPlanting()).mapToDouble(WorkTask::amount).sum());
    }
  }

  private static Map<String, Integer> guild(java.util.Random dice, List<String> ids) {
    Map<String, Integer> guild = new java.util.TreeMap<>();
    for (int i = 0; i < 8; i++) {
      guild.put(ids.get(dice.nextInt(ids.size())), 1 + dice.nextInt(12));
    }
    return guild;
  }
}
