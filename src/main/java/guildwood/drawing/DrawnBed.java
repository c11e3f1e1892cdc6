package guildwood.drawing;

import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.kernel.Range;
import guildwood.site.sun.Scene;
import guildwood.species.SpeciesLibrary;
import java.util.List;
import java.util.Optional;

/**
 * A bed with its guild arranged in it.
 *
 * @param settings that hold
 * @param placedNow ids of plants that had no kept spot and were given one just now
 * @param notDrawn names of species that cannot be drawn, because nobody knows even their layer
 * @param sun the scene around it without the plants of the guild; absent where the latitude is not known
 * @param statedHours what the bed says of its light
 */
public record DrawnBed(
    BedScene scene,
    Guild guild,
    GuildProblem problem,
    SpeciesLibrary library,
    Arrangement arrangement,
    DrawingSettings settings,
    List<String> placedNow,
    List<String> notDrawn,
    Optional<Scene> sun,
    Optional<Range> statedHours) {
  public DrawnBed {
    placedNow = List.copyOf(placedNow);
    notDrawn = List.copyOf(notDrawn);
  }

  public List<Conflict> conflicts() {
    return ArrangementCheck.conflicts(arrangement, settings.rules());
  }

  public Grown in(int year) {
    return Grown.of(arrangement, year, settings.maturity());
  }

  public int untilGrown() {
    return Years.untilGrown(arrangement, settings.maturity());
  }

  public List<Filler> fillers() {
    return Filler.of(guild, problem, library);
  }
}
