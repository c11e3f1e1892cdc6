/**
 * The arithmetic of composing, stripped of plants: choose items and counts under caps so that the value is
 * highest, and prove how good the choice is. Pure numbers; knows only the JDK.
 */
package guildwood.guild.search;
