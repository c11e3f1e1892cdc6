package guildwood.importing;

import java.util.List;

/** What a whole table probably says, column by column. */
public record MappingSuggestion(Heading heading, List<Suggestion> columns) {
  public MappingSuggestion {
    columns = List.copyOf(columns);
  }

  public Mapping mapping() {
    return new Mapping(heading, columns.stream().map(Suggestion::column).toList());
  }
}
