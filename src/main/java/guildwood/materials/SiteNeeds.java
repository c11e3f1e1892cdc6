package guildwood.materials;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a site needs, in the owner's order, and what the stock gives to it.
 *
 * @param places every bed and path, also those that are not to be covered
 * @param shares one for each layer of each that is
 */
public record SiteNeeds(MaterialSettings settings, List<Place> places, Stock stock, List<Share> shares) {
  public SiteNeeds {
    places = List.copyOf(places);
    shares = List.copyOf(shares);
  }

  /**
   * A bed or path and how it is covered.
   *
   * @param own whether the owner said so of this one
   */
  public record Place(Surface surface, Covering covering, boolean own) {}

  /** All needs in their order. */
  public List<Need> needs() {
    return shares.stream().map(Share::need).toList();
  }

  public Optional<Place> find(Target target) {
    return places.stream().filter(place -> place.surface().target().equals(target)).findFirst();
  }

  /** Still to be brought, by material: cubic metres, or sheets of card. Only what is missing. */
  public Map<Material, Double> missing() {
    Map<Material, Double> missing = new EnumMap<>(Material.class);
    shares.stream().filter(share -> share.missing() > 0).forEach(share -> missing.merge(share.need().material(), share.missing(), Double::sum));
    return missing;
  }

  /** One person's work left for a need, minutes. */
  public double minutes(Need need) {
    return settings.minutes(need.material(), need.left());
  }
}
