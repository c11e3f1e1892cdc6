package guildwood.importing.exchange;

import java.util.List;

/**
 * A row that is brought in.
 *
 * @param written the name as the table has it
 * @param fate key of what becomes of it
 * @param added what it adds
 * @param same how many of its values are stated already
 */
public record ReviewedRow(
    long row, String name, String written, String speciesId, String fate, boolean namesChange, List<ReviewedValue> added, int same) {}
