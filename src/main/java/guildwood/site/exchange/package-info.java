/** Surveys and indicator values as files: CSV in, JSON out. */
package guildwood.site.exchange;
