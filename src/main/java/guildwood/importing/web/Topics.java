package guildwood.importing.web;

import guildwood.importing.Meaning;
import guildwood.importing.Meaning.Kind;
import guildwood.species.Trait;
import guildwood.species.web.ValueWords;
import guildwood.web.Messages;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The meanings of columns as they are chosen on the page: first what a column is about, then what exactly it says of
 * that. In one list they would be many hundreds.
 */
final class Topics {
  private static final String TRAIT = "trait.";
  private static final List<Kind> NAMES = List.of(Kind.SCIENTIFIC_NAME, Kind.COMMON_NAMES, Kind.GENUS, Kind.EPITHET, Kind.LOWER_RANK,
      Kind.CULTIVAR, Kind.FAMILY, Kind.SYNONYMS, Kind.SPECIES_ID);
  private static final List<Kind> LAST = List.of(Kind.NOTE, Kind.IGNORED);

  private final Messages messages;
  private final ValueWords words;

  Topics(Messages messages, ValueWords words) {
    this.messages = messages;
    this.words = words;
  }

  /** A choice with its text. */
  record Option(String key, String text) {}

  /** Choices that belong together. */
  record Group(String text, List<Option> options) {}

  /** What a column can be about. */
  List<Group> groups() {
    List<Kind> others = Arrays.stream(Kind.values())
        .filter(kind -> !needsTrait(kind) && !NAMES.contains(kind) && !LAST.contains(kind)).toList();
    return List.of(
        new Group(messages.say("import.group.names"), kinds(NAMES.stream())),
        new Group(messages.say("import.group.traits"),
            Arrays.stream(Trait.values()).map(t -> new Option(TRAIT + t.key(), messages.say("trait." + t.key()))).toList()),
        new Group(messages.say("import.group.others"), kinds(others.stream())),
        new Group(messages.say("import.group.kept"), kinds(LAST.stream())));
  }

  private List<Option> kinds(Stream<Kind> kinds) {
    return kinds.map(kind -> new Option(kind.key(), messages.say("import.meaning." + kind.key()))).toList();
  }

  static boolean needsTrait(Kind kind) {
    return Meaning.choices().stream().anyMatch(m -> m.is(kind) && m.trait().isPresent());
  }

  /** What a meaning is about. */
  static String about(Meaning meaning) {
    return meaning.trait().map(t -> TRAIT + t.key()).orElse(meaning.kind().key());
  }

  /** Every meaning about something, the usual one first; empty where nothing is called so. */
  static List<Meaning> meanings(String about) {
    return Meaning.choices().stream().filter(m -> about(m).equals(about)).toList();
  }

  /** What exactly a column can say about its topic; one choice only where there is nothing to choose. */
  List<Option> details(Meaning now) {
    List<Meaning> all = new ArrayList<>(meanings(about(now)));
    if (!all.contains(now)) {
      all.add(now);
    }
    return all.stream().map(m -> new Option(m.key(), detail(m))).toList();
  }

  /** A meaning in words, whole. */
  String say(Meaning meaning) {
    return meaning.trait().isEmpty() ? messages.say("import.meaning." + meaning.kind().key())
        : messages.say("topic", messages.say("trait." + meaning.trait().get().key()), detail(meaning));
  }

  private String detail(Meaning meaning) {
    if (meaning.trait().isEmpty()) {
      return messages.say("import.meaning." + meaning.kind().key());
    }
    Trait trait = meaning.trait().get();
    String item = meaning.item().isEmpty() ? "" : item(trait, meaning.item());
    return switch (meaning.kind()) {
      case VALUE -> item.isEmpty() ? messages.say("import.detail.value") : item;
      case MARK -> item.isEmpty() ? messages.say("import.detail.mark", mark(trait, meaning.word()))
          : messages.say("import.detail.mark-of", item, mark(trait, meaning.word()));
      case CAUTIONS -> item;
      case EVIDENCE -> messages.say("import.detail.evidence", item);
      default -> messages.say("import.detail." + meaning.kind().key());
    };
  }

  private String item(Trait trait, String item) {
    return trait == Trait.CAUTION || trait == Trait.FUNCTION ? words.topic(trait, item) : messages.say("item." + trait.key() + "." + item);
  }

  private String mark(Trait trait, String word) {
    if (trait.shape() == Trait.Shape.MONTHS && word.matches("[1-9]|1[0-2]")) {
      return Month.of(Integer.parseInt(word)).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
    String key = "word." + trait.key() + "." + word;
    return messages.has(key) ? messages.say(key) : word;
  }
}
