package guildwood.guild;

import guildwood.fit.Fit;
import guildwood.fit.Tolerances;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Layer;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A species as the composer sees it in one bed. {@link Candidacy} makes it from the library.
 *
 * @param name the name to show
 * @param stature absent where not even its layer can be told; then it cannot be placed
 * @param cautions kinds that hold at the bed's place
 * @param nativeTo regions for which it is stated as native
 * @param tolerances kept so that the fit can be had again for a changed bed
 * @param assumptions what was assumed because nobody states it
 */
public record Candidate(
    String speciesId,
    String name,
    Kinship kinship,
    Optional<Stature> stature,
    Services services,
    Manners manners,
    Set<CautionKind> cautions,
    Set<String> nativeTo,
    Supply supply,
    Tolerances tolerances,
    Fit fit,
    Set<Assumption> assumptions) {

  /** What is taken for granted where the library is silent; every page that shows the number shows this too. */
  public enum Assumption {
    /** The crown is the usual one of its layer. */
    CROWN_OF_LAYER,
    /** The layer was read from the mature height. */
    LAYER_FROM_HEIGHT,
    /** The evidence for one of its jobs is not stated and taken as observed. */
    EVIDENCE_NOT_STATED;

    public String key() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  public Candidate {
    cautions = cautions.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(cautions));
    nativeTo = nativeTo.isEmpty() ? Set.of() : Collections.unmodifiableSet(new TreeSet<>(nativeTo));
    assumptions = assumptions.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(assumptions));
    if (speciesId.isBlank()) {
      throw new IllegalArgumentException("a candidate without a species id: " + name);
    }
  }

  /** How much it counts towards a wish, in halves of a provider; 0 where it does not provide it. */
  public int units(Wish wish) {
    return switch (wish.kind()) {
      case LAYER -> stature.isPresent() && fills(Layer.ofKey(wish.item())) ? Services.WHOLE : 0;
      case GROUND -> GroundCover.units(this);
      default -> services.units(wish);
    };
  }

  /** A plant takes room in one layer, but whoever gives roots or bulbs fills the root layer below it as well. */
  private boolean fills(Layer layer) {
    return stature.orElseThrow().layer() == layer
        || (layer == Layer.ROOT && (services.harvest().containsKey("root") || services.harvest().containsKey("bulb")));
  }

  public boolean provides(Wish wish) {
    return units(wish) > 0;
  }

  /**
   * The fit that enters the score, in thousandths. Where nothing that decides is known, it counts as half
   * at most: neither as bad nor as good.
   */
  public int fitPermille() {
    double fit = fit().overall().orElse(0.5);
    boolean known = fit().verdict() != guildwood.fit.Verdict.NOT_KNOWN;
    return (int) Math.round(1000 * (known ? fit : Math.min(fit, 0.5)));
  }

  /** The same species in a bed with other conditions. */
  public Candidate under(Map<Axis, Range> conditions) {
    return new Candidate(speciesId, name, kinship, stature, services, manners, cautions, nativeTo, supply, tolerances,
        Fit.ofRanges(tolerances, conditions), assumptions);
  }

  public Candidate withSupply(Supply other) {
    return new Candidate(speciesId, name, kinship, stature, services, manners, cautions, nativeTo, other, tolerances,
        fit, assumptions);
  }

  /** With a compatible partner growing in reach of the bed, or without. */
  public Candidate withPartnerNear(boolean near) {
    return with(manners.withPartner(near, Optional.empty()));
  }

  /** With a compatible partner growing outside the bed, too far off to serve. */
  public Candidate withPartnerFar(FarPartner far) {
    return with(manners.withPartner(false, Optional.of(far)));
  }

  private Candidate with(Manners changed) {
    return new Candidate(speciesId, name, kinship, stature, services, changed, cautions, nativeTo, supply, tolerances,
        fit, assumptions);
  }
}
