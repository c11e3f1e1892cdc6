package guildwood.importing.exchange;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ImportCounts;
import guildwood.importing.ImportRun;
import guildwood.importing.Meaning;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What an import from the command line did, or a dry run would do.
 *
 * @param run what was kept; empty for a dry run
 */
public record ImportSummary(String file, ChosenTable chosen, ImportCounts counts, UnreadTally unread, Optional<ImportRun> run) {
  private static final int MOST_NEAR_NAMES = 5;

  /** In sentences, a line each. */
  public List<String> lines(Messages messages) {
    List<String> lines = new ArrayList<>();
    // The one sheet of a text file is called like the file.
    boolean named = !file.endsWith(chosen.table().name());
    lines.add(messages.say(named ? "import.command.rows-of-sheet" : "import.command.rows", file, counts.rows(), plain(chosen.mapping().heading().lastRow()),
        chosen.table().name()));
    if (!chosen.otherSheets().isEmpty()) {
      lines.add(messages.say("import.command.other-sheets", chosen.otherSheets().size(), String.join(", ", chosen.otherSheets())));
    }
    lines.add(messages.say("import.command.species", counts.newSpecies(), counts.knownRows(), counts.refusedRows()));
    near(messages, lines);
    lines.add(messages.say("import.command.values", counts.valuesAdded(), counts.valuesSame(), counts.conflicts()));
    lines.add(messages.say("import.command.notes", counts.notes()));
    columns(messages, lines);
    lines.add(messages.say("import.command.unread", counts.cellsUnread()));
    unread.groups().forEach(group -> lines.add("  " + (group.header().isEmpty()
        ? messages.say("import.command.unread-rows", group.cells(), plain(group.firstRow()), messages.say(group.reason()))
        : messages.say("import.command.unread-cells", group.header(), group.cells(), plain(group.firstRow()), messages.say(group.reason())))));
    lines.add(run.map(kept -> messages.say("import.command.kept", plain(kept.id()))).orElseGet(() -> messages.say("import.command.dry-run")));
    return lines;
  }

  private void near(Messages messages, List<String> lines) {
    if (counts.nearRows() > 0) {
      String some = unread.near().stream().limit(MOST_NEAR_NAMES)
          .map(name -> messages.say("import.command.near-name", plain(name.row()), name.written(), String.join(", ", name.speciesIds())))
          .collect(Collectors.joining("; "));
      lines.add(messages.say("import.command.near", counts.nearRows(), some));
    }
  }

  private void columns(Messages messages, List<String> lines) {
    ColumnWords words = new ColumnWords(messages);
    List<ColumnMapping> read = chosen.mapping().columns().stream().filter(c -> !c.meaning().is(Meaning.Kind.NOTE) && !c.meaning().is(Meaning.Kind.IGNORED)).toList();
    lines.add(messages.say("import.command.columns", read.size()));
    read.forEach(column -> lines.add("  " + messages.say("topic", column.header(), words.meaning(column))));
    named(Meaning.Kind.NOTE, "import.command.columns-notes", messages, lines);
    named(Meaning.Kind.IGNORED, "import.command.columns-out", messages, lines);
  }

  private void named(Meaning.Kind kind, String key, Messages messages, List<String> lines) {
    List<String> headers = chosen.mapping().columns().stream().filter(c -> c.meaning().is(kind)).map(ColumnMapping::header).toList();
    if (!headers.isEmpty()) {
      lines.add("  " + messages.say(key, headers.size(), String.join(", ", headers)));
    }
  }

  /** Without marks between the thousands, as a spreadsheet numbers its rows. */
  private static String plain(long number) {
    return Long.toString(number);
  }
}
