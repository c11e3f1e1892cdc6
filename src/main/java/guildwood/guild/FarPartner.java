package guildwood.guild;

/**
 * A partner that grows outside the bed and too far off to serve.
 *
 * @param speciesId of the nearest one
 * @param distanceM how far off it grows
 * @param mostFt how far it may grow and still serve
 */
public record FarPartner(String speciesId, double distanceM, int mostFt) {}
