package guildwood.importing;

import java.util.List;
import java.util.Optional;

/** Imports in progress, and mappings kept under a name to be used again. */
public interface ImportDrafts {
  int LONGEST_MAPPING_NAME = 120;

  /** Keeps a new one and returns its id. */
  long add(ImportDraft draft);

  /** Keeps it anew under its id. */
  void change(ImportDraft draft);

  Optional<ImportDraft> find(long id);

  /** Newest first. */
  List<ImportDraft> all();

  void remove(long id);

  /** In alphabetical order. */
  List<String> mappingNames();

  Optional<Mapping> mapping(String name);

  /** Keeps a mapping under a name; one that had the name before gives way. */
  void keepMapping(String name, Mapping mapping);

  void removeMapping(String name);
}
