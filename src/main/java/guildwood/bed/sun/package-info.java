/** What stands around beds, and the sun that is left on them. */
package guildwood.bed.sun;
