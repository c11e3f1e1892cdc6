package guildwood.guild;

import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of a layer's ground and light a guild uses.
 *
 * <p>Light is reckoned as a stock of one bed's area of open sky. Every crown above the layer takes its
 * share of shade from it, and every plant of the layer that needs sun takes its whole crown; together
 * they may take no more than there is. In square centimetres, so that percentages stay whole.
 *
 * @param species of the layer
 * @param lightTakers species that use the layer's light
 */
record LayerUse(
    long crownDm2, long addedCrownDm2, long lightCm2, long addedLightCm2, List<String> species, List<String> lightTakers) {

  static LayerUse of(Layer layer, List<Member> members) {
    long crown = 0;
    long addedCrown = 0;
    long light = 0;
    long addedLight = 0;
    List<String> species = new ArrayList<>();
    List<String> lightTakers = new ArrayList<>();
    for (Member member : members) {
      if (member.candidate().stature().isEmpty()) {
        continue;
      }
      Stature stature = member.candidate().stature().get();
      if (stature.layer() == layer) {
        crown += (long) stature.crownDm2() * member.count();
        addedCrown += (long) stature.crownDm2() * member.added();
        species.add(member.id());
      }
      long each = lightPerPlantCm2(member.candidate(), layer);
      if (each > 0) {
        light += each * member.count();
        addedLight += each * member.added();
        lightTakers.add(member.id());
      }
    }
    return new LayerUse(crown, addedCrown, light, addedLight, species, lightTakers);
  }

  /** What one plant takes of the light that reaches a layer. */
  static long lightPerPlantCm2(Candidate candidate, Layer layer) {
    if (candidate.stature().isEmpty()) {
      return 0;
    }
    Stature stature = candidate.stature().get();
    if (stature.layer().compareTo(layer) < 0) {
      return (long) stature.crownDm2() * stature.shadePercent();
    }
    return stature.layer() == layer && candidate.manners().needsSun() ? 100L * stature.crownDm2() : 0;
  }
}
