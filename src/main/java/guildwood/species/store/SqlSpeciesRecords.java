package guildwood.species.store;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.LibraryMerge;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.SpeciesNote;
import guildwood.species.SpeciesRecords;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import guildwood.store.Database;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * The library in the database. Changes follow one another under one lock, and each leaves a fresh
 * snapshot behind, so that reading never waits and never sees half a change.
 */
public final class SqlSpeciesRecords implements SpeciesRecords {
  // Addresses below /library that are not species.
  private static final Set<String> RESERVED_IDS = Set.of("new");

  private final Database database;
  private volatile SpeciesLibrary library;

  public SqlSpeciesRecords(Database database) {
    this.database = database;
    this.library = database.read(LibraryRows::read);
  }

  @Override
  public SpeciesLibrary library() {
    return library;
  }

  @Override
  public synchronized Checked<String> add(SpeciesNames names) {
    Optional<Finding> clash = library.clash(names, "");
    if (clash.isPresent()) {
      return Checked.refused(clash.get());
    }
    String id = freeId(names.id());
    change(c -> c.addSpecies(id, names));
    return Checked.of(id);
  }

  private String freeId(String wanted) {
    String id = wanted;
    for (int n = 2; library.find(id).isPresent() || RESERVED_IDS.contains(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }

  @Override
  public synchronized Checked<String> rename(String speciesId, SpeciesNames names) {
    Optional<Finding> clash = library.clash(names, speciesId);
    if (clash.isPresent()) {
      return Checked.refused(clash.get());
    }
    change(c -> c.rename(speciesId, names));
    return Checked.of(speciesId);
  }

  @Override
  public void remove(String speciesId) {
    change(c -> c.setRemoved(speciesId, true));
  }

  @Override
  public void restore(String speciesId) {
    change(c -> c.setRemoved(speciesId, false));
  }

  @Override
  public Checked<Long> add(String speciesId, Statement statement, Optional<Source> newSource) {
    return keep(speciesId, statement, newSource, LibraryChanges::addStatement);
  }

  @Override
  public Checked<Long> change(String speciesId, Statement statement, Optional<Source> newSource) {
    return keep(speciesId, statement, newSource, (changes, written) -> {
      changes.changeStatement(written);
      return statement.id();
    });
  }

  private synchronized Checked<Long> keep(String speciesId, Statement statement, Optional<Source> newSource,
      BiFunction<LibraryChanges, WrittenStatement, Long> work) {
    Species species = library.find(speciesId).orElseThrow(() -> new IllegalArgumentException("no species " + speciesId));
    if (newSource.isEmpty() && !library.sources().containsKey(statement.sourceId())) {
      return Checked.refused(Finding.of("source.unknown", "source"));
    }
    if (species.statements().stream().anyMatch(s -> s.id() != statement.id() && s.saysTheSameAs(statement))) {
      return Checked.refused(Finding.of("statement.twice", "value"));
    }
    return Checked.of(changeAnd(changes -> {
      newSource.ifPresent(changes::addSource);
      return work.apply(changes, WrittenStatement.of(speciesId, statement));
    }));
  }

  @Override
  public void removeStatement(long statementId) {
    change(c -> c.setStatementRemoved(statementId, true));
  }

  @Override
  public void restoreStatement(long statementId) {
    change(c -> c.setStatementRemoved(statementId, false));
  }

  @Override
  public void letRule(long statementId) {
    change(c -> c.letRule(statementId));
  }

  @Override
  public List<WrittenStatement> binnedStatements() {
    return database.read(handle -> new LibraryChanges(handle).binned());
  }

  @Override
  public void add(Source source) {
    change(c -> c.addSource(source));
  }

  @Override
  public void change(Source source) {
    change(c -> c.changeSource(source));
  }

  @Override
  public Map<String, Holding> holdings() {
    Map<String, Holding> holdings = new HashMap<>();
    database.read(handle -> handle.createQuery("select * from holding").map((row, ctx) -> {
      int cents = row.getInt("price_cents");
      OptionalInt price = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(cents);
      return new Holding(row.getString("species_id"), row.getInt("plants_on_hand"), row.getInt("plants_to_propagate"), price);
    }).list()).forEach(h -> holdings.put(h.speciesId(), h));
    return Map.copyOf(holdings);
  }

  @Override
  public void keep(Holding holding) {
    database.change(handle -> new LibraryChanges(handle).keep(holding));
  }

  @Override
  public LibraryMerge addAll(LibraryContents contents) {
    return changeLibraryAtLarge((before, handle) -> addAll(before, handle, contents));
  }

  @Override
  public LibraryMerge wouldAdd(LibraryContents contents) {
    return merge(library, contents);
  }

  private LibraryMerge merge(SpeciesLibrary before, LibraryContents contents) {
    return LibraryMerge.of(before, Beside.of(this), contents, id -> !RESERVED_IDS.contains(id));
  }

  /** Adds all inside a transaction that somebody else began with {@link #changeLibrary}. */
  public LibraryMerge addAll(SpeciesLibrary before, Handle handle, LibraryContents contents) {
    LibraryMerge merge = merge(before, contents);
    LibraryChanges changes = new LibraryChanges(handle);
    merge.replaced().forEach(changes::changeSource);
    changes.addAll(merge.additions());
    return merge;
  }

  @Override
  public List<SpeciesNote> notes(String speciesId) {
    return database.read(handle -> handle.createQuery("select * from species_note where species_id = :id order by id")
        .bind("id", speciesId).map(LibraryRows.NOTE).list());
  }

  @Override
  public List<SpeciesNote> notes() {
    return database.read(handle -> handle.createQuery("select n.* from species_note n join species s on s.id = n.species_id "
        + "where not s.removed order by n.id").map(LibraryRows.NOTE).list());
  }

  /**
   * A change that another store makes to the library, in one transaction and in turn with all others.
   *
   * @param work is given the library as it stands; what it throws takes everything back
   */
  public synchronized <T> T changeLibrary(BiFunction<SpeciesLibrary, Handle, T> work) {
    return read(database.change(handle -> inTurn(work, handle)));
  }

  /** The same for changes of very many rows: a process killed during one leaves nothing of it behind. */
  public synchronized <T> T changeLibraryAtLarge(BiFunction<SpeciesLibrary, Handle, T> work) {
    return read(database.largeChange(handle -> inTurn(work, handle)));
  }

  private <T> T inTurn(BiFunction<SpeciesLibrary, Handle, T> work, Handle handle) {
    T done = work.apply(library, handle);
    new LibraryChanges(handle).nextRevision();
    return done;
  }

  private <T> T read(T result) {
    library = database.read(LibraryRows::read);
    return result;
  }

  private void change(Consumer<LibraryChanges> work) {
    changeAnd(changes -> {
      work.accept(changes);
      return true;
    });
  }

  private <T> T changeAnd(Function<LibraryChanges, T> work) {
    return changeLibrary((before, handle) -> work.apply(new LibraryChanges(handle)));
  }
}
