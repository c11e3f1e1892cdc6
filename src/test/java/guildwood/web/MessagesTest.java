package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text that code and templates ask for exists and can be filled in. */
class MessagesTest {
  private static final Path CODE = Path.of("src/main/java/guildwood");
  private static final Path TEXTS = Path.of("src/main/resources/guildwood/messages");
  private static final Path TEMPLATES = Path.of("src/main/resources/guildwood/templates");

  private final Messages messages = new Messages();

  /** Java's own reader of such files keeps the last of two texts silently. */
  @Test
  void noKeyIsDefinedTwice() {
    Map<String, String> places = new HashMap<>();
    List<String> twice = new ArrayList<>();
    for (Path file : files(TEXTS, ".properties")) {
      int number = 0;
      for (String line : read(file).split("\n")) {
        number++;
        if (line.isBlank() || line.startsWith("#") || !line.contains("=")) {
          continue;
        }
        String key = line.substring(0, line.indexOf('=')).strip();
        String place = file.getFileName() + ":" + number;
        String before = places.put(key, place);
        if (before != null) {
          twice.add(key + " at " + before + " and " + place);
        }
      }
    }
    assertEquals(List.of(), twice);
    assertTrue(places.size() > 500, "only " + places.size() + " texts were seen");
    assertEquals(new TreeSet<>(places.keySet()), new TreeSet<>(messages.keys()), "a file is not read by the program");
  }

  @Test
  void everyTextIsAFormatThatCanBeFilledIn() {
    for (String key : messages.keys()) {
      assertDoesNotThrow(() -> messages.say(key, 1, 2, 3, 4, 5, 6), key);
    }
  }

  /** A lone apostrophe opens a quotation in which placeholders stay as they are. */
  @Test
  void noApostropheSwallowsAPlaceholder() {
    List<String> wrong = new ArrayList<>();
    for (Path file : files(TEXTS, ".properties")) {
      read(file).lines().filter(line -> !line.startsWith("#") && line.replace("''", "").contains("'")).forEach(wrong::add);
    }
    assertEquals(List.of(), wrong);
  }

  /** What was done and what was found arrives as text, numbers included; every such text must take it. */
  @Test
  void everyFindingCanBeSaid() {
    List<String> codes = messages.keys().stream().filter(k -> k.startsWith("done.") || k.startsWith("finding."))
        .map(k -> k.startsWith("finding.") ? k.substring("finding.".length()) : k).sorted().toList();
    assertTrue(codes.size() > 80, codes.toString());
    for (String code : codes) {
      for (String number : List.of("0", "1", "2", "1234")) {
        String said = assertDoesNotThrow(() -> messages.say(Finding.of(code, "", number, number, number, number)), code);
        assertTrue(!said.isBlank() && !said.matches(".*\\{\\d.*"), code + ": " + said);
      }
    }
  }

  @Test
  void numbersThatArriveAsTextChooseTheRightWords() {
    assertEquals("Kept, without any wish.", messages.say(Finding.of("done.wishes-kept", "", 0)));
    assertEquals("One wish kept.", messages.say(Finding.of("done.wishes-kept", "", 1)));
    assertEquals("12 wishes kept.", messages.say(Finding.of("done.wishes-kept", "", 12)));
  }

  @Test
  void everyFindingTheCodeMakesHasItsText() {
    Set<String> codes = found("Finding\\.of\\(\\s*(?:[a-zA-Z.()]+ \\? )?\"([a-z0-9._-]+)\"(?: : \"([a-z0-9._-]+)\")?,");
    assertTrue(codes.size() > 60, codes.toString());
    List<String> missing = codes.stream()
        .filter(code -> !messages.has(code) && !messages.has("finding." + code))
        .filter(code -> messages.keys().stream().noneMatch(key -> key.startsWith("finding." + code + "."))).toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void everyTextTheCodeAsksForExists() {
    Set<String> keys = found("\\bsay\\(\\s*\"([a-z0-9._-]+[a-z0-9])\"\\s*[,)]");
    assertTrue(keys.size() > 60, keys.toString());
    assertEquals(List.of(), keys.stream().filter(key -> !messages.has(key)).toList());
    Set<String> beginnings = found("\\bsay\\(\\s*\"([a-z0-9._-]+[.-])\"\\s*\\+");
    assertTrue(beginnings.size() > 15, beginnings.toString());
    assertEquals(List.of(), beginnings.stream().filter(this::begins).toList());
  }

  @Test
  void everyTextTheTemplatesAskForExists() {
    Set<String> keys = new TreeSet<>();
    Set<String> beginnings = new TreeSet<>();
    for (Path file : files(TEMPLATES, ".html")) {
      String html = read(file);
      keys.addAll(matches("#\\{([a-z][a-zA-Z0-9._-]*)[(}]", html));
      beginnings.addAll(matches("#\\{\\$\\{'([a-z][a-zA-Z0-9._-]*[.-])'", html));
      // Label and help of a field, label and help of a choice.
      keys.addAll(matches("form :: (?:field|area) \\(\\$\\{form\\}, [^,]+, (?:'\\w+', )?'([a-z][^']*)', '([a-z][^']*)?'\\)", html));
    }
    assertTrue(keys.size() > 250, keys.size() + " keys");
    assertTrue(beginnings.size() > 10, beginnings.toString());
    assertEquals(List.of(), keys.stream().filter(key -> !messages.has(key)).toList());
    assertEquals(List.of(), beginnings.stream().filter(this::begins).toList());
  }

  @Test
  void aMissingTextIsABug() {
    assertThrows(IllegalArgumentException.class, () -> messages.say("no.such-text"));
    assertThrows(IllegalArgumentException.class, () -> messages.say(Finding.of("no.such-finding", "")));
  }

  private boolean begins(String beginning) {
    return messages.keys().stream().noneMatch(key -> key.startsWith(beginning));
  }

  private static Set<String> found(String pattern) {
    Set<String> found = new TreeSet<>();
    files(CODE, ".java").forEach(file -> found.addAll(matches(pattern, read(file))));
    return found;
  }

  private static Set<String> matches(String pattern, String text) {
    Set<String> found = new TreeSet<>();
    Pattern.compile(pattern).matcher(text).results().forEach(match -> {
      for (int group = 1; group <= match.groupCount(); group++) {
        if (match.group(group) != null) {
          found.add(match.group(group));
        }
      }
    });
    return found;
  }

  private static List<Path> files(Path under, String ending) {
    try (Stream<Path> all = Files.walk(under)) {
      return all.filter(path -> path.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
