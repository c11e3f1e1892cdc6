package guildwood.workplan;

import java.util.List;
import java.util.Optional;

/**
 * When a kind of work is in season, told from the mean frost dates. All of it is common practice without a
 * source: the page says so, and that the ground of the year itself decides.
 */
public enum InSeason {
  ALWAYS(),
  /** The ground is neither frozen nor sodden. */
  GROUND_OPEN(new Span(Anchor.LAST_FROST, -45, Anchor.FIRST_FROST, 45)),
  /** Woody plants go in while they are without leaves. */
  DORMANT(new Span(Anchor.LAST_FROST, -42, Anchor.LAST_FROST, 14), new Span(Anchor.FIRST_FROST, -14, Anchor.FIRST_FROST, 42)),
  /** Hardy herbs, with weeks left to root before heat or frost. */
  HARDY(new Span(Anchor.LAST_FROST, -21, Anchor.LAST_FROST, 35), new Span(Anchor.FIRST_FROST, -50, Anchor.FIRST_FROST, -14)),
  /** After the last frost, with a summer ahead. */
  TENDER(new Span(Anchor.LAST_FROST, 10, Anchor.LAST_FROST, 50)),
  SPRING(new Span(Anchor.LAST_FROST, -42, Anchor.LAST_FROST, 30)),
  SUMMER(new Span(Anchor.LAST_FROST, 31, Anchor.FIRST_FROST, -46)),
  AUTUMN(new Span(Anchor.FIRST_FROST, -45, Anchor.FIRST_FROST, 28)),
  WINTER(new Span(Anchor.FIRST_FROST, 29, Anchor.NEXT_LAST_FROST, -43));

  /** What days are counted from. */
  enum Anchor {
    LAST_FROST,
    FIRST_FROST,
    /** Of the year of growth after. */
    NEXT_LAST_FROST
  }

  /** From so many days after one date to so many after another; before it where negative. */
  record Span(Anchor from, int fromDays, Anchor to, int toDays) {}

  private final List<Span> spans;

  InSeason(Span... spans) {
    this.spans = List.of(spans);
  }

  List<Span> spans() {
    return spans;
  }

  /** The season of a propagation statement: spring, summer, autumn or winter. */
  static Optional<InSeason> ofWord(String word) {
    return switch (word) {
      case "spring" -> Optional.of(SPRING);
      case "summer" -> Optional.of(SUMMER);
      case "autumn" -> Optional.of(AUTUMN);
      case "winter" -> Optional.of(WINTER);
      default -> Optional.empty();
    };
  }
}
