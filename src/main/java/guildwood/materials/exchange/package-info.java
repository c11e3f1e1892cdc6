/** Shopping lists as files. */
package guildwood.materials.exchange;
