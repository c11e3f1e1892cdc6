/** Files about guilds, in and out: a bed with its wishes as JSON, and what the composer makes of it. */
package guildwood.guild.exchange;
