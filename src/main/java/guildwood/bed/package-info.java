/** Beds: area, conditions of their own, and what already stands there. */
package guildwood.bed;
