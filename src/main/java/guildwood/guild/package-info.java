/**
 * Guilds: what a bed's owner wishes for, the rules, the candidates, the score, the composer and the gaps.
 * No web, no storage, no clock; chance only from a seed.
 */
package guildwood.guild;
