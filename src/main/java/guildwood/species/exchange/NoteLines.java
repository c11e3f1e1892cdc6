package guildwood.species.exchange;

import guildwood.kernel.Finding;
import guildwood.species.SpeciesNote;
import java.util.ArrayList;
import java.util.List;

/** Puts the lines of notes together again, in the order they come. */
final class NoteLines {
  private final List<SpeciesNote> notes = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private CsvTable.Row first;

  void add(CsvTable.Row row, List<Finding> findings) {
    String line = NoteLine.read(row.cell("text"));
    if (first == null || !first.cell("note").equals(row.cell("note"))) {
      end();
      first = row;
      text.append(line);
    } else if (!first.cell("species").equals(row.cell("species")) || !first.cell("source").equals(row.cell("source"))) {
      findings.add(row.finding("package.note-mixed", "note", row.cell("note")));
    } else {
      text.append('\n').append(line);
    }
    if (text.length() > SpeciesNote.LONGEST) {
      findings.add(row.finding("text.too-long", "text", SpeciesNote.LONGEST));
      text.setLength(0);
    }
  }

  List<SpeciesNote> all() {
    end();
    return List.copyOf(notes);
  }

  private void end() {
    if (first != null) {
      notes.add(new SpeciesNote(0, first.cell("species"), text.toString(), first.cell("source")));
      first = null;
      text.setLength(0);
    }
  }
}
