/** Small values that every feature shares: ranges, months, sources, findings. Knows only the JDK. */
package guildwood.kernel;
