package guildwood.species.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.web.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The fields of a source; as part of another form as well. */
public final class SourceForm {
  private static final int LONGEST_ID = 50;
  private static final int FIRST_YEAR = 1000;
  private static final int LAST_YEAR = 2999;

  private SourceForm() {}

  /** Kinds to choose from, and none yet. */
  public static List<String> kinds() {
    return Stream.concat(Stream.of(""), Arrays.stream(Source.Kind.values()).map(Source.Kind::key)).toList();
  }

  static Map<String, String> typed(Source source) {
    return Map.of("source_kind", source.kind().key(), "source_author", source.author(), "source_title", source.title(),
        "source_year", source.year().isPresent() ? Integer.toString(source.year().getAsInt()) : "",
        "source_locator", source.locator());
  }

  /**
   * The source that was typed; empty where the form is refused.
   *
   * @param id its id where it is kept already; otherwise a free one is made from its title
   */
  public static Optional<Source> read(Form form, Optional<String> id, SpeciesLibrary library) {
    Optional<Source.Kind> kind = Source.Kind.ofKey(form.value("source_kind"));
    if (kind.isEmpty()) {
      form.refuse(Finding.of("source.kind-missing", "source_kind"));
    }
    String author = form.optionalText("source_author", Source.LONGEST_AUTHOR);
    String title = form.text("source_title", Source.LONGEST_TITLE);
    OptionalInt year = form.wholeNumber("source_year", FIRST_YEAR, LAST_YEAR);
    String locator = form.optionalText("source_locator", Source.LONGEST_LOCATOR);
    if (form.isRefused()) {
      return Optional.empty();
    }
    return Optional.of(new Source(id.orElseGet(() -> freeId(author + " " + title, library)), kind.orElseThrow(), author, title, year, locator));
  }

  /** The same source where it is kept already, so that nobody has it twice. */
  static Optional<Source> kept(Source source, SpeciesLibrary library) {
    return library.sources().values().stream()
        .filter(s -> new Source(source.id(), s.kind(), s.author(), s.title(), s.year(), s.locator()).equals(source)).findFirst();
  }

  private static String freeId(String words, SpeciesLibrary library) {
    String slug = SpeciesNames.slug(words);
    String wanted = slug.isEmpty() ? "source" : slug.substring(0, Math.min(LONGEST_ID, slug.length())).replaceAll("-$", "");
    String id = wanted;
    for (int n = 2; library.sources().containsKey(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }
}
