package guildwood.guild;

import guildwood.fit.Fit;
import guildwood.fit.Tolerance;
import guildwood.fit.Tolerances;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads a species of the library as a candidate for one bed. */
public final class Candidacy {
  /** Hours of sun below which a plant counts as needing the open sky: tolerated from, and preferred from. */
  static final double SUN_TOLERATED_FROM_HOURS = 5;

  static final double SUN_PREFERRED_FROM_HOURS = 6;

  private final Map<Axis, Range> conditions;
  private final String place;

  /**
   * @param conditions of the bed, as {@code Fit.ranges(bed.conditionsIn(site))} gives them
   * @param place ISO 3166 code of the site; empty where not known, then every caution holds
   */
  public Candidacy(Map<Axis, Range> conditions, String place) {
    this.conditions = Map.copyOf(conditions);
    this.place = place;
  }

  public Candidate of(Species species, Supply supply) {
    Set<Candidate.Assumption> assumptions = EnumSet.noneOf(Candidate.Assumption.class);
    Tolerances tolerances = Tolerances.of(species);
    return new Candidate(species.id(), species.name(), Kinship.of(species), stature(species, assumptions),
        services(species, assumptions), manners(species, tolerances), cautions(species), nativeTo(species), supply,
        tolerances, Fit.ofRanges(tolerances, conditions), assumptions);
  }

  private static Optional<Stature> stature(Species species, Set<Candidate.Assumption> assumptions) {
    OptionalDouble height = species.middle(Trait.HEIGHT);
    Optional<Layer> layer = species.layers().stream().min(Layer::compareTo);
    if (layer.isEmpty() && height.isPresent()) {
      layer = Optional.of(layerOf(height.getAsDouble()));
      assumptions.add(Candidate.Assumption.LAYER_FROM_HEIGHT);
    }
    OptionalDouble crown = species.middle(Trait.CROWN);
    if (layer.isPresent() && crown.isEmpty()) {
      assumptions.add(Candidate.Assumption.CROWN_OF_LAYER);
    }
    return layer.map(l ->
        new Stature(l, Stature.crownDm2(crown.orElse(Stature.usualCrownM(l))), height));
  }

  /** Heights that part the layers where a species names none, metres. Common practice, no source. */
  private static Layer layerOf(double heightM) {
    return heightM >= 9 ? Layer.TALL_TREE
        : heightM >= 4 ? Layer.SMALL_TREE
        : heightM >= 1.2 ? Layer.SHRUB
        : heightM >= 0.25 ? Layer.HERB : Layer.GROUND_COVER;
  }

  private static Services services(Species species, Set<Candidate.Assumption> assumptions) {
    Map<GuildFunction, Evidence> functions = new EnumMap<>(GuildFunction.class);
    for (Statement statement : species.rulingItems(Trait.FUNCTION)) {
      if (((TraitValue.YesNo) statement.value()).yes()) {
        if (statement.evidence().isEmpty()) {
          assumptions.add(Candidate.Assumption.EVIDENCE_NOT_STATED);
        }
        functions.put(GuildFunction.ofKey(statement.item()), statement.evidence().orElse(Evidence.OBSERVED));
      }
    }
    return new Services(functions, species.bloom().orElse(Months.NONE), species.harvest());
  }

  private static Manners manners(Species species, Tolerances tolerances) {
    Set<String> gives = new HashSet<>();
    Set<String> suffers = new HashSet<>();
    Set<String> doubtful = new HashSet<>();
    for (Statement statement : species.rulingItems(Trait.CONFLICT)) {
      switch (((TraitValue.Word) statement.value()).word()) {
        case "gives" -> gives.add(statement.item());
        case "suffers" -> suffers.add(statement.item());
        case "disputed" -> doubtful.add(statement.item());
        default -> { }
      }
    }
    Manners.Partner partner = switch (species.word(Trait.POLLINATION).orElse("")) {
      case "partner-needed" -> Manners.Partner.NEEDED;
      case "separate-sexes" -> Manners.Partner.SEPARATE_SEXES;
      case "partner-helps" -> Manners.Partner.HELPS;
      default -> Manners.Partner.NOT_NEEDED;
    };
    boolean spreads = species.words(Trait.SPREAD).stream().anyMatch(w -> w.equals("suckers") || w.equals("runs"));
    return new Manners(gives, suffers, doubtful, partner, false, needsSun(tolerances), spreads);
  }

  private static boolean needsSun(Tolerances tolerances) {
    Optional<Tolerance> light = tolerances.on(Axis.LIGHT);
    return light.isPresent() && (light.get().tolerated().min() >= SUN_TOLERATED_FROM_HOURS
        || light.get().preferred().min() >= SUN_PREFERRED_FROM_HOURS);
  }

  /** A caution that names a place holds there and in the parts of it; without a known place it holds. */
  private Set<CautionKind> cautions(Species species) {
    Set<CautionKind> kinds = EnumSet.noneOf(CautionKind.class);
    for (Statement statement : species.rulingItems(Trait.CAUTION)) {
      CautionKind kind = CautionKind.of(statement.item()).orElse(CautionKind.OTHER);
      boolean ofPlace = Set.of(CautionKind.LISTED, CautionKind.WEEDY, CautionKind.PERMIT).contains(kind);
      if (!ofPlace || holdsHere(CautionKind.detail(statement.item()))) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private boolean holdsHere(String region) {
    return region.isEmpty() || place.isEmpty() || place.equals(region) || place.startsWith(region + "-");
  }

  private static Set<String> nativeTo(Species species) {
    Set<String> regions = new HashSet<>();
    for (Statement statement : species.rulingItems(Trait.NATIVITY)) {
      if (((TraitValue.Word) statement.value()).word().equals("native")) {
        regions.add(statement.item());
      }
    }
    return regions;
  }
}
