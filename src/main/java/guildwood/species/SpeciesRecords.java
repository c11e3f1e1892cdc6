package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The library as it is kept, and the changes the owner makes to it. A change is kept whole or not at all;
 * when it returns, {@link #library()} shows it. What other entries forbid (a name that is taken, the same
 * value twice) is refused with findings; an id that does not exist is a bug of the caller.
 */
public interface SpeciesRecords {
  /** The library as it stands now; the same object until something changes. */
  SpeciesLibrary library();

  /** Keeps a new species and returns its id. */
  Checked<String> add(SpeciesNames names);

  /** Gives a species other names; its id stays. */
  Checked<String> rename(String speciesId, SpeciesNames names);

  /** Puts a species into the bin, with all its statements. */
  void remove(String speciesId);

  void restore(String speciesId);

  /**
   * Keeps a new statement about a species and returns its id.
   *
   * @param newSource its source, where that is not kept yet
   */
  Checked<Long> add(String speciesId, Statement statement, Optional<Source> newSource);

  /** Keeps a statement anew under its id; where it speaks about another item now, it no longer rules by choice. */
  Checked<Long> change(String speciesId, Statement statement, Optional<Source> newSource);

  /** Puts one statement into the bin. */
  void removeStatement(long statementId);

  void restoreStatement(long statementId);

  /** Lets one statement rule over the others about the same topic. */
  void letRule(long statementId);

  /** Statements in the bin, of species in use, in the order they were kept. */
  List<WrittenStatement> binnedStatements();

  /** What is kept with a species beside its values, in the order it came. */
  List<SpeciesNote> notes(String speciesId);

  /** What is kept beside the values of all species in use, in the order it was kept. */
  List<SpeciesNote> notes();

  void add(Source source);

  void change(Source source);

  /** What the owner has, by species id; species with nothing at hand and no price may be absent. */
  Map<String, Holding> holdings();

  void keep(Holding holding);

  /** Keeps what of a whole library's contents is not there yet, in one transaction, and says what that was. */
  LibraryMerge addAll(LibraryContents contents);

  /** What {@link #addAll} would keep now; nothing is changed. */
  LibraryMerge wouldAdd(LibraryContents contents);
}
