package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cells as people write them, held against what they must be read as. */
class CellReaderTest {
  @Test
  void cellsAreReadAsTheListSays() throws IOException {
    List<String> wrong = new ArrayList<>();
    int read = 0;
    for (String line : lines("/importing/cells.txt")) {
      String[] parts = line.split(" \\| ", -1);
      String is = said(parts[0], parts[1], TableCell.text(parts[2]));
      read++;
      if (!is.equals(parts[3])) {
        wrong.add(line + "  but is " + is);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(read > 180, read + " cells");
  }

  /** Whatever is read is entered as the library's own reader takes it, and means the same there. */
  @Test
  void whatIsEnteredIsReadAgainAsTheSameValue() throws IOException {
    for (String line : lines("/importing/cells.txt")) {
      String[] parts = line.split(" \\| ", -1);
      if (read(parts[0], parts[1], TableCell.text(parts[2])) instanceof CellReading.Values values) {
        values.values().forEach(v -> assertEquals(v.value(), TraitReader.read(v.trait(), v.entered(), "").orThrow(), line));
      }
    }
  }

  @Test
  void aDateIsNeverTakenForARange() {
    for (String trait : List.of("ph", "height", "coldest_winter", "bloom", "light", "growth_rate")) {
      assertEquals("!import.date-cell", said(trait, "as-written", new TableCell("2026-04-08", TableCell.Kind.DATE)));
    }
    assertEquals("!import.error-cell", said("ph", "as-written", new TableCell("#DIV/0!", TableCell.Kind.ERROR)));
  }

  @Test
  void everyWordOfTheTableStandsForAValueThatCanBeKept() {
    for (ClassTable.Line line : ClassTable.lines()) {
      boolean items = line.topic().startsWith("items:");
      Trait trait = Trait.ofKey(items ? line.topic().substring(6) : line.topic()).orElseThrow();
      assertFalse(items ? TraitReader.readItem(trait, line.value(), "").isRefused() : TraitReader.read(trait, line.value(), "").isRefused(),
          line.toString());
      assertTrue(List.of("common-practice", "our-reading", "same", "usda").contains(line.basis()), line.toString());
    }
  }

  static CellReading read(String topic, String unit, TableCell cell) {
    Meaning meaning = Meaning.ofKey("value:" + topic).orElseThrow();
    ColumnMapping column = ColumnMapping.of(0, "Header", meaning, ColumnUnit.ofKey(unit).orElseThrow());
    return CellReader.value(meaning.trait().orElseThrow(), meaning.item(), column, cell);
  }

  private static String said(String topic, String unit, TableCell cell) {
    CellReading reading = read(topic, unit, cell);
    return reading instanceof CellReading.Values values ? values.values().get(0).entered()
        : reading instanceof CellReading.Refused refused ? "!" + refused.reason().code() : "~";
  }

  static List<String> lines(String file) throws IOException {
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(CellReaderTest.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
      return reader.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
    }
  }
}
