package guildwood.importing.exchange;

import java.util.List;

/** A value of the table, and what the library says instead. */
public record ReviewedConflict(long row, String name, String speciesId, ReviewedValue value, List<ReviewedValue> existing) {}
