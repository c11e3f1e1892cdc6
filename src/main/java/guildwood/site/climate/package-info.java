/**
 * What years of daily temperatures say about a place: frost dates, growing degree days, chill, the coldest winter.
 * Degrees are Fahrenheit throughout, since every definition used here is published in them.
 */
package guildwood.site.climate;
