/**
 * Reading a place from the wild plants that grow there: surveys, indicator values, the posterior of each
 * axis, the classical averages beside it, and the wetland indices. Pure arithmetic: no files, no clock.
 */
package guildwood.site.survey;
