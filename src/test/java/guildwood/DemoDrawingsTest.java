package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.store.SqlBeds;
import guildwood.bed.store.SqlNearPlants;
import guildwood.bed.store.SqlOutlines;
import guildwood.bed.store.SqlSurroundings;
import guildwood.bed.sun.SunScenes;
import guildwood.drawing.Conflict;
import guildwood.drawing.Drawings;
import guildwood.drawing.DrawnBed;
import guildwood.drawing.SvgBoxes;
import guildwood.drawing.store.SqlBedSpots;
import guildwood.drawing.web.DrawnPicture;
import guildwood.guild.Composer;
import guildwood.guild.Effort;
import guildwood.guild.GuildProblem;
import guildwood.guild.Progress;
import guildwood.guild.store.SqlGuilds;
import guildwood.guild.web.Desk;
import guildwood.site.store.SqlSites;
import guildwood.siteplan.store.SqlPlanRecords;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every bed of the demonstration with a composed guild: arranged without crowding, drawn with labels apart and nothing cut off. */
class DemoDrawingsTest {
  @Test
  void everyBedIsArrangedAndDrawn() {
    try (Database database = Database.inMemory()) {
      Messages messages = new Messages();
      var species = new SqlSpeciesRecords(database);
      FirstFilling.fill(species, messages, FirstFilling.SEED);
      var sites = new SqlSites(database);
      var beds = new SqlBeds(database);
      var surroundings = new SqlSurroundings(database);
      var outlines = new SqlOutlines(database);
      var plans = new SqlPlanRecords(database, outlines);
      var guilds = new SqlGuilds(database);
      Desk desk = new Desk(sites, beds, new SqlNearPlants(database), species, guilds);
      DemoSite.fill(sites, beds, surroundings, guilds, desk, Clock.systemUTC());
      DemoPlan.fill(sites, beds, outlines, plans);
      Drawings drawings = new Drawings(new SunScenes(sites, beds, surroundings, Clock.systemUTC()), plans, new SqlBedSpots(database));
      List<Bed> all = beds.ofSite(sites.all().get(0).id());
      assertEquals(4, all.size());
      for (Bed bed : all) {
        GuildProblem problem = desk.problem(desk.plan(bed.id()));
        var guild = new Composer(Effort.QUICK).compose(problem, 1, 1, Progress.UNWATCHED).best().guild();
        DrawnBed drawn = drawings.of(bed.id(), guild, problem, species.library()).orElseThrow();
        assertEquals(guild.counts().values().stream().mapToInt(i -> i).sum(), drawn.arrangement().spots().size());
        assertTrue(drawn.conflicts().stream().noneMatch(c -> c.kind().compareTo(Conflict.Kind.TOO_CLOSE) <= 0), bed.name() + ": " + drawn.conflicts());
        for (int year : new int[] {0, 3, drawn.untilGrown()}) {
          for (Units units : Units.values()) {
            SvgBoxes drawing = SvgBoxes.of(DrawnPicture.svg(drawn, year, units, messages));
            assertEquals(List.of(), drawing.overlapping(), bed.name() + " in year " + year);
            assertEquals(List.of(), drawing.cutOff(), bed.name() + " in year " + year);
          }
        }
      }
    }
  }
}
