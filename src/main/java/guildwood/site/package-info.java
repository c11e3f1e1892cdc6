/** Sites: climate, frost dates, and the conditions that hold for the whole piece of ground. */
package guildwood.site;
