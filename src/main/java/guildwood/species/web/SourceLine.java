package guildwood.species.web;

import guildwood.kernel.Source;
import guildwood.web.Messages;

/**
 * A source as the pages show it.
 *
 * @param citation author, title and year in one line
 * @param kind its kind in words
 * @param marked the kind must stand beside it: nobody can look it up, and the citation does not say so
 */
record SourceLine(String id, String citation, String locator, String kind, boolean marked) {
  static SourceLine of(Source source, Messages messages) {
    StringBuilder citation = new StringBuilder();
    if (!source.author().isEmpty()) {
      citation.append(source.author()).append(": ");
    }
    citation.append(source.title());
    source.year().ifPresent(year -> citation.append(" (").append(year).append(')'));
    String kind = messages.say("source.kind." + source.kind().key());
    boolean weak = source.kind().compareTo(Source.Kind.OWN_EXPERIENCE) >= 0;
    boolean saysSo = citation.toString().equalsIgnoreCase(kind);
    return new SourceLine(source.id(), citation.toString(), source.locator(), kind, weak && !saysSo);
  }
}
