package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every template keeps, read from the files: nothing unescaped, nothing inline, a token in every form. */
class TemplatesTest {
  private static final Path TEMPLATES = Path.of("src/main/resources/guildwood/templates");

  @Test
  void everythingThatWasTypedIsEscaped() {
    assertEquals(List.of(), found("th:utext|\\[\\(\\$"));
  }

  /** The pages forbid inline script and style; a browser would leave both out without a word. */
  @Test
  void nothingIsInline() {
    assertEquals(List.of(), found("<style\\b|<script(?![^>]*\\ssrc=)|\\sstyle=\"|th:style=|\\son[a-z]+=\"|javascript:"));
  }

  @Test
  void everyFormThatChangesSomethingCarriesTheToken() {
    Pattern form = Pattern.compile("(?s)<form\\b[^>]*method=\"post\"[^>]*>.*?</form>");
    List<String> without = new ArrayList<>();
    int forms = 0;
    for (Path file : files()) {
      for (String found : form.matcher(read(file)).results().map(r -> r.group()).toList()) {
        forms++;
        if (!found.contains("name=\"csrf\" th:value=\"${csrf}\"")) {
          without.add(file + ": " + found.lines().findFirst().orElse(""));
        }
      }
    }
    assertEquals(List.of(), without);
    assertTrue(forms > 20, forms + " forms");
  }

  /** The expression language takes 'x' for a character and compares it as a number. */
  @Test
  void noTextIsComparedWithASingleLetter() {
    assertEquals(List.of(), found("(==|!=|\\beq\\b|\\bne\\b) *'.'|'.' *(==|!=|\\beq\\b|\\bne\\b)"));
  }

  private static List<String> found(String pattern) {
    List<String> found = new ArrayList<>();
    for (Path file : files()) {
      Pattern.compile(pattern).matcher(read(file)).results().forEach(r -> found.add(file.getFileName() + ": " + r.group()));
    }
    return found;
  }

  private static List<Path> files() {
    try (Stream<Path> all = Files.walk(TEMPLATES)) {
      List<Path> files = all.filter(path -> path.toString().endsWith(".html")).sorted().toList();
      assertTrue(files.size() > 20, files.toString());
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
