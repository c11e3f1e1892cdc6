package guildwood.choosing;

/**
 * The count beside one option.
 *
 * @param chosen whether it is chosen now
 * @param species for an option not chosen: how many species would remain if it were, besides all that is
 *     chosen now; for a chosen one: how many of those that remain pass by it
 */
public record OptionCount(String option, boolean chosen, int species) {}
