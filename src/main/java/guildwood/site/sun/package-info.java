/**
 * Direct sun on a bed: the sun's path over a year, what stands in its way, and the hours that are left.
 *
 * <p>Metres, x east, y north, on level ground; degrees, azimuths clockwise from north. No clock, no
 * files: the same scene always gives the same hours.
 */
package guildwood.site.sun;
