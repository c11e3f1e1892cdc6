package guildwood.importing;

/**
 * What an import brings, in numbers.
 *
 * @param rows that are not blank, below the heading
 * @param newSpecies new to the library, those with near names included
 * @param nearRows rows whose name is nearly one of the library
 * @param namesChanged known species that get more names
 * @param cellsUnread cells that stay out; those of refused rows are not counted again
 */
public record ImportCounts(
    long rows,
    long newSpecies,
    long knownRows,
    long nearRows,
    long refusedRows,
    long leftOutRows,
    long namesChanged,
    long valuesAdded,
    long valuesSame,
    long conflicts,
    long notes,
    long cellsUnread) {}
