package guildwood.importing;

import guildwood.species.LibraryMerge;

/**
 * Another library that was brought in.
 *
 * @param run the import as it is kept, to be undone as one step
 * @param merge what of the library was new here
 */
public record BroughtLibrary(ImportRun run, LibraryMerge merge) {
  /** What a merge comes to, in an import's numbers: a row is a species. */
  public static ImportCounts counts(LibraryMerge merge) {
    int added = merge.additions().species().size();
    return new ImportCounts((long) added + merge.sameSpecies() + merge.inBin().size(), added, merge.sameSpecies(), 0, 0,
        merge.inBin().size(), 0, merge.additions().statements().size(), merge.sameValues(), merge.disagreeing(),
        merge.additions().notes().size(), 0);
  }
}
