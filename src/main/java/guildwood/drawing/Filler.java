package guildwood.drawing;

import guildwood.fit.Verdict;
import guildwood.guild.Candidate;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A species of the library that could use ground that the guild does not cover yet: one that lives a year or two, or a
 * ground cover that grows fast. Only what fits the bed, is in the guild's rules and does not run away counts.
 */
public record Filler(String speciesId, String name, Why why) {
  private static final int MOST = 8;

  /** Why it lends itself. */
  public enum Why {
    ANNUAL,
    BIENNIAL,
    QUICK_COVER;

    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** The best fitting ones, short-lived ones first. */
  public static List<Filler> of(Guild guild, GuildProblem problem, SpeciesLibrary library) {
    return problem.candidates().stream()
        .filter(c -> !guild.has(c.speciesId()) && c.fit().verdict() == Verdict.FITS && !c.manners().spreads()
            && !problem.rules().banned().contains(c.speciesId())
            && c.cautions().stream().noneMatch(problem.rules().excludedCautions()::contains))
        .sorted(Comparator.comparing((Candidate c) -> -c.fitPermille()).thenComparing(Candidate::name))
        .flatMap(c -> library.find(c.speciesId()).flatMap(s -> why(s, c)).map(why -> new Filler(c.speciesId(), c.name(), why)).stream())
        .sorted(Comparator.comparing(Filler::why)).limit(MOST).toList();
  }

  private static Optional<Why> why(Species species, Candidate candidate) {
    String duration = species.word(Trait.DURATION).orElse("");
    boolean cover = candidate.stature().filter(s -> s.layer() == Layer.GROUND_COVER).isPresent();
    boolean fast = species.word(Trait.GROWTH_RATE).filter("fast"::equals).isPresent();
    return duration.equals("annual") ? Optional.of(Why.ANNUAL) : duration.equals("biennial") ? Optional.of(Why.BIENNIAL)
        : cover && fast ? Optional.of(Why.QUICK_COVER) : Optional.empty();
  }
}
