/** Files about sites, in and out: scenes for the sun model; surveys and indicator values for the reading of plants. */
package guildwood.site.exchange;
