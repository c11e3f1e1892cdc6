package guildwood.species.store;

import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNote;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Reads the whole library: one query for the species, one for all their statements. */
final class LibraryRows {
  static final RowMapper<WrittenStatement> STATEMENT = (row, ctx) -> new WrittenStatement(
      row.getLong("id"), row.getString("species_id"), row.getString("trait"), row.getString("item"),
      row.getString("entered"), row.getString("source_id"), row.getString("evidence") == null ? "" : row.getString("evidence"),
      row.getBoolean("chosen"), row.getString("note"));

  static final RowMapper<SpeciesNote> NOTE = (row, ctx) ->
      new SpeciesNote(row.getLong("id"), row.getString("species_id"), row.getString("text"), row.getString("source_id"));

  private static final RowMapper<Source> SOURCE = (row, ctx) -> {
    int published = row.getInt("published_year");
    OptionalInt year = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(published);
    return new Source(row.getString("id"), Source.Kind.valueOf(row.getString("kind")), row.getString("author"),
        row.getString("title"), year, row.getString("locator"));
  };

  private static final String SEPARATOR = "; ";

  private LibraryRows() {}

  static SpeciesLibrary read(Handle handle) {
    long revision = handle.createQuery("select revision from library_state").mapTo(Long.class).one();
    Map<String, Source> sources = new HashMap<>();
    handle.createQuery("select * from source").map(SOURCE).forEach(s -> sources.put(s.id(), s));

    Map<String, List<Statement>> statements = new HashMap<>();
    List<WrittenStatement> unread = new ArrayList<>();
    Readings readings = new Readings();
    handle.createQuery("select * from statement where not removed order by id").map(STATEMENT).forEach(written -> {
      Checked<Statement> read = readings.read(written);
      read.value().ifPresent(s -> statements.computeIfAbsent(written.speciesId(), id -> new ArrayList<>(4)).add(s));
      if (read.isRefused()) {
        unread.add(written);
      }
    });

    List<Species> all = handle.createQuery("select * from species").map((row, ctx) -> new Species(
        row.getString("id"), row.getString("scientific_name"), split(row.getString("common_names")),
        readings.shared(row.getString("family")), split(row.getString("synonyms")), row.getBoolean("removed"),
        taken(statements, row.getString("id")))).list();
    return new SpeciesLibrary(revision, inOrder(all, false), inOrder(all, true), sources, unread);
  }

  /** The statements of a species, taken out of the map so that a large library does not stand in memory twice. */
  private static List<Statement> taken(Map<String, List<Statement>> statements, String speciesId) {
    List<Statement> own = statements.remove(speciesId);
    return own == null ? List.of() : own;
  }

  private static List<Species> inOrder(List<Species> all, boolean removed) {
    return all.stream().filter(s -> s.removed() == removed).sorted(Comparator.comparing(Species::scientificName)).toList();
  }

  static String join(List<String> names) {
    return String.join(SEPARATOR, names);
  }

  private static List<String> split(String names) {
    return names.isEmpty() ? List.of() : Arrays.asList(names.split(SEPARATOR));
  }
}
