package guildwood.importing;

import guildwood.kernel.Source;
import java.util.OptionalInt;

/**
 * Where the values of an import come from, as the owner says; rows that name a source of their own have that.
 *
 * @param title never blank: of the book, the table or the notebook
 * @param author may be empty
 */
public record ImportSource(Source.Kind kind, String title, String author, OptionalInt year) {
  public ImportSource {
    if (title.isBlank() || title.length() > Source.LONGEST_TITLE || author.length() > Source.LONGEST_AUTHOR) {
      throw new IllegalArgumentException("no source: '" + title + "', '" + author + "'");
    }
  }
}
