package guildwood.importing.exchange;

import java.util.List;

/**
 * A name of the table that is nearly one of the library.
 *
 * @param row the first in which it stands
 * @param near ids of species of the library, the nearest first
 */
public record ReviewedName(long row, String written, List<String> near) {}
