package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.Trait;
import guildwood.web.Messages;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The coverage report of the command line, over the library that comes with the program. */
class CoverageTest {
  @Test
  void printsATableLineForEveryTrait() {
    List<String> lines = report();
    Messages messages = new Messages();
    for (Trait trait : Trait.values()) {
      String name = "| " + messages.say("trait." + trait.key()) + " |";
      assertEquals(1, lines.stream().filter(line -> line.startsWith(name)).count(), name);
    }
  }

  /** Every line of a table has as many cells as its head, so that the page that shows it is not torn. */
  @Test
  void everyTableIsWellFormed() {
    int cells = 0;
    int tables = 0;
    for (String line : report()) {
      if (!line.startsWith("|")) {
        cells = 0;
        continue;
      }
      tables += cells == 0 ? 1 : 0;
      cells = cells == 0 ? line.split("\\|").length : cells;
      assertEquals(cells, line.split("\\|").length, line);
    }
    assertEquals(3, tables);
  }

  /** A terminal that knows ASCII only must show it too. */
  @Test
  void usesPlainLetters() {
    assertTrue(report().stream().allMatch(line -> line.chars().allMatch(c -> c < 128)), "letters beyond ASCII");
  }

  private static List<String> report() {
    StringWriter out = new StringWriter();
    assertEquals(0, new CommandLine(new Main()).setOut(new PrintWriter(out)).execute("coverage"));
    return out.toString().lines().toList();
  }
}
