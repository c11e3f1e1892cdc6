package guildwood.guild;

import guildwood.kernel.Months;
import guildwood.species.Layer;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A guild in numbers.
 *
 * @param species in the guild, standing ones included
 * @param plants in the guild, standing ones included
 * @param plantsToAdd not standing yet
 * @param plantsOnHand of those, on hand
 * @param plantsToPropagate of those, to be raised by the owner
 * @param plantsToBuy of those, neither on hand nor to be propagated
 * @param costCents for the plants to buy, unknown prices as the rules take them
 * @param foodSpecies species with something to harvest
 * @param soilSpecies species that fix nitrogen, make mulch or root deep (accumulators have too little evidence to count)
 * @param pollinatorSpecies species that feed pollinators
 * @param nativeSpecies species stated as native anywhere
 * @param fitPermille mean fit weighted by crown area, thousandths; 0 for an empty guild
 * @param groundPermille ground under plants that cover it, thousandths of the bed
 * @param crownDm2 crown area by layer, square decimetres; only layers that have any
 * @param shadeDm2 light taken by all crowns, as square decimetres of full shade
 */
public record GuildNumbers(
    int species,
    int plants,
    int plantsToAdd,
    int plantsOnHand,
    int plantsToPropagate,
    int plantsToBuy,
    long costCents,
    int foodSpecies,
    int soilSpecies,
    int pollinatorSpecies,
    int nativeSpecies,
    Months bloom,
    Months harvest,
    int fitPermille,
    int groundPermille,
    Map<Layer, Integer> crownDm2,
    int shadeDm2) {
  public GuildNumbers {
    crownDm2 = crownDm2.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(crownDm2));
  }
}
