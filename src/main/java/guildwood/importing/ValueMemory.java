package guildwood.importing;

import guildwood.importing.RowSpecies.Taken;
import guildwood.kernel.Checked;

/**
 * Remembers what earlier rows of a table said about a species, as digests, for species that several rows are about. A
 * first pass over the names tells which those may be, so that a table of one row a species costs no memory here.
 */
final class ValueMemory {
  private final LongSet repeated;
  private final LongSet said = new LongSet();
  private final boolean everyKnown;

  /** What an earlier row said about the same topic of the same species. */
  enum Seen {
    NOTHING,
    SAME,
    OTHER
  }

  private ValueMemory(LongSet repeated, boolean everyKnown) {
    this.repeated = repeated;
    this.everyKnown = everyKnown;
  }

  /** @param everyKnown whether to watch all species of the library, also where two synonyms mean one of them */
  static Checked<ValueMemory> of(Table rows, Mapping mapping, boolean everyKnown) {
    LongSet once = new LongSet();
    LongSet again = new LongSet();
    Checked<Long> read = rows.rows(row -> {
      long key = key(RowName.of(mapping, row).written(), text(mapping, row));
      if (!once.add(key)) {
        again.add(key);
      }
      return true;
    });
    return read.map(all -> new ValueMemory(again, everyKnown));
  }

  private static String text(Mapping mapping, TableRow row) {
    return mapping.first(Meaning.Kind.SPECIES_ID).map(c -> row.cell(c.column()).text().strip()).orElse("");
  }

  /** Genus and epithet, whatever follows: more rows than needed share it, never fewer. */
  private static long key(String written, String id) {
    String[] words = Words.folded(written.isEmpty() ? id : written).split(" ");
    int second = words.length > 2 && words[1].equals("x") ? 2 : 1;
    return LongSet.digest(words[0], words.length > second ? words[second] : "");
  }

  boolean isRepeated(RowReading row) {
    return repeated.contains(key(row.writtenName(), row.speciesId()));
  }

  /** Remembers a value, and says what was said before. */
  Seen see(Taken taken, RowReading row, ReadValue value) {
    boolean watched = isRepeated(row) || everyKnown && taken.known().isPresent();
    if (!watched) {
      return Seen.NOTHING;
    }
    boolean newTopic = said.add(LongSet.digest(taken.speciesId(), value.trait().key(), value.item()));
    boolean newValue = said.add(LongSet.digest(taken.speciesId(), value.trait().key(), value.item(), value.value()));
    return newValue ? newTopic ? Seen.NOTHING : Seen.OTHER : Seen.SAME;
  }
}
