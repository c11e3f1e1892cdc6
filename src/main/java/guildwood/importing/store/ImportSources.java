package guildwood.importing.store;

import guildwood.importing.ImportPlan;
import guildwood.importing.ImportSource;
import guildwood.importing.Meaning;
import guildwood.importing.RowReading.RowSource;
import guildwood.kernel.Source;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sources of an import: those of the library where they have the same title and author, otherwise new ones. */
final class ImportSources implements AutoCloseable {
  private static final Pattern YEAR = Pattern.compile("\\b(1[5-9]\\d\\d|20\\d\\d)\\b");
  private static final int LONGEST_ID = 50;

  private final ImportPlan plan;
  private final PreparedStatement insert;
  private final Map<String, String> idsByName = new HashMap<>();
  private final Set<String> ids = new HashSet<>();
  private final String ofImport;

  ImportSources(Connection connection, long importId, ImportPlan plan, SpeciesLibrary library) throws SQLException {
    this.plan = plan;
    this.insert = connection.prepareStatement("insert into source (id, kind, author, title, published_year, locator, import_id) "
        + "values (?, ?, ?, ?, ?, '', " + importId + ")");
    library.sources().values().forEach(source -> {
      ids.add(source.id());
      idsByName.put(name(source.title(), source.author()), source.id());
    });
    ImportSource own = plan.source();
    this.ofImport = id(own.title(), own.author(), own.year());
  }

  /** The id of the source of a row. */
  String of(RowSource row) throws SQLException {
    String title = row.title().isEmpty() ? row.author() : row.title();
    if (title.isEmpty()) {
      return ofImport;
    }
    if (ids.contains(title)) {
      return title;
    }
    Matcher year = YEAR.matcher(row.year());
    OptionalInt published = year.find() ? OptionalInt.of(Integer.parseInt(year.group())) : OptionalInt.empty();
    return id(cut(title, Source.LONGEST_TITLE), cut(row.title().isEmpty() ? "" : row.author(), Source.LONGEST_AUTHOR), published);
  }

  /** Where in its source the row stands, for the notes of its values. */
  String placeOf(RowSource row) {
    return row.place().isEmpty() ? ""
        : plan.mapping().first(Meaning.Kind.SOURCE_PLACE).map(c -> c.header() + ": ").orElse("") + row.place();
  }

  private String id(String title, String author, OptionalInt year) throws SQLException {
    String known = idsByName.get(name(title, author));
    if (known != null) {
      return known;
    }
    String id = freeId(title);
    insert.setString(1, id);
    insert.setString(2, plan.source().kind().name());
    insert.setString(3, author);
    insert.setString(4, title);
    insert.setObject(5, year.isPresent() ? year.getAsInt() : null, Types.INTEGER);
    insert.executeUpdate();
    idsByName.put(name(title, author), id);
    return id;
  }

  private String freeId(String title) {
    String slug = SpeciesNames.slug(title);
    String wanted = slug.isEmpty() ? "table" : slug.length() <= LONGEST_ID ? slug : slug.substring(0, LONGEST_ID).replaceAll("-+$", "");
    String id = wanted;
    for (int n = 2; !ids.add(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }

  private static String name(String title, String author) {
    return title.toLowerCase(Locale.ROOT) + "\n" + author.toLowerCase(Locale.ROOT);
  }

  private static String cut(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest);
  }

  @Override
  public void close() throws SQLException {
    insert.close();
  }
}
