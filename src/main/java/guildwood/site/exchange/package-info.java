/** Files about sites, in and out: scenes for the sun model. */
package guildwood.site.exchange;
