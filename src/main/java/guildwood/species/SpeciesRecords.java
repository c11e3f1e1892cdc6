package guildwood.species;

/** The library as it is kept, and the changes the owner makes to it. */
public interface SpeciesRecords {
  /** The library as it stands now; the same object until something changes. */
  SpeciesLibrary library();
}
