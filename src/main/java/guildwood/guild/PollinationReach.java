package guildwood.guild;

import guildwood.bed.Near;
import guildwood.site.LengthReader;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How far pollen is carried from what grows near a bed to what is planted in it.
 *
 * <p>Fruit that insects pollinate: partners more than 100 ft apart are poor, Washington State University Tree
 * Fruit; within 50 ft is ideal, the same university, read at second hand. Hazels, which the wind pollinates: not more
 * than 50 ft, Ask Extension #344029. For other kinds nothing was found; the 100 ft are taken for them too, our
 * own choice, no publication.
 */
public final class PollinationReach {
  /** Beyond this the wind brings a hazel too little pollen. */
  public static final int HAZEL_MOST_FT = 50;
  /** Beyond this insects bring other kinds too little. */
  public static final int MOST_FT = 100;

  private static final String HAZEL = "Corylus";

  private final List<Neighbour> neighbours;

  /** A plant near the bed, as a candidate would be seen. */
  private record Neighbour(Candidate plant, double distanceM) {}

  private PollinationReach(List<Neighbour> neighbours) {
    this.neighbours = neighbours;
  }

  /**
   * The reach of what grows near.
   *
   * @param plants finds a species by its id; what nobody knows serves nobody
   */
  public static PollinationReach of(List<Near> near, Function<String, Optional<Candidate>> plants) {
    return new PollinationReach(near.stream()
        .flatMap(n -> plants.apply(n.speciesId()).map(c -> new Neighbour(c, n.distanceM())).stream())
        .sorted(Comparator.comparingDouble(Neighbour::distanceM)).toList());
  }

  /** How far a partner of it may grow and still serve, feet. */
  public static int mostFt(Kinship kinship) {
    return kinship.genus().equals(HAZEL) ? HAZEL_MOST_FT : MOST_FT;
  }

  public static boolean reaches(Kinship kinship, double distanceM) {
    return distanceM <= mostFt(kinship) * LengthReader.FOOT_M;
  }

  /** The candidate with the nearest compatible partner noted: in reach, or too far off. */
  public Candidate seenBy(Candidate candidate) {
    if (candidate.manners().partner() == Manners.Partner.NOT_NEEDED) {
      return candidate;
    }
    Optional<Neighbour> nearest = neighbours.stream().filter(n -> serve(candidate, n.plant())).findFirst();
    if (nearest.isEmpty()) {
      return candidate;
    }
    Neighbour partner = nearest.get();
    return reaches(candidate.kinship(), partner.distanceM()) ? candidate.withPartnerNear(true)
        : candidate.withPartnerFar(new FarPartner(partner.plant().speciesId(), partner.distanceM(), mostFt(candidate.kinship())));
  }

  /** Another entry of its species that blooms with it, or another seedling of the same entry; never the same clone. */
  private static boolean serve(Candidate candidate, Candidate other) {
    return candidate.speciesId().equals(other.speciesId()) ? !candidate.kinship().cultivar() : RuleCheck.arePartners(candidate, other);
  }
}
