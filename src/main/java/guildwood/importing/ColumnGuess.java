package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import guildwood.kernel.Finding;
import guildwood.species.Trait;
import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What one column probably means. */
final class ColumnGuess {
  private static final Set<String> LOW_WORDS = Set.of("min", "minimum", "low", "lowest", "least", "from", "lower", "smallest", "start", "begin");
  private static final Set<String> HIGH_WORDS = Set.of("max", "maximum", "high", "highest", "most", "to", "upper", "largest", "end");
  private static final int OF_HEADER = 95;
  private static final int OF_HEADER_IN_PART = 85;
  private static final int OF_CELLS = 60;
  private static final int DOUBTFUL = 30;
  private static final double MANY = 0.8;
  private static final double MOST = 0.6;

  /** The width of a leaf is not that of the crown, the height after ten years not the mature one. */
  private static final Pattern ABOUT_ANOTHER_THING = Pattern.compile("leaf|leaves|leaflets?|flowers?|fruits?|seeds?|roots?|trunk|stems?|cones?|nuts?|planting|bark|"
      + "buds?|pods?|petals?|years?|yrs?|container|pots?|not|no|without|avoid|except|toxic|pruning|sowing|ground|row|spacing|\\d+");

  private final Heading heading;
  private final int column;
  private final String title;
  private final List<TableCell> cells;

  ColumnGuess(Heading heading, int column, String title, List<TableRow> rows) {
    this.heading = heading;
    this.column = column;
    this.title = title;
    this.cells = rows.stream().map(r -> r.cell(column)).filter(c -> !c.isBlank()).toList();
  }

  /** A meaning with what speaks for it. */
  private record Candidate(Meaning meaning, int certainty, double share) {}

  static boolean isLow(String word) {
    return LOW_WORDS.contains(word);
  }

  static boolean isHigh(String word) {
    return HIGH_WORDS.contains(word);
  }

  Suggestion best() {
    HeaderText header = HeaderText.read(heading.headers().get(column), heading.units().get(column));
    Optional<ColumnUnit> unit = header.unit();
    List<Candidate> candidates = new ArrayList<>();
    Set<Meaning> seen = new LinkedHashSet<>();
    for (int i = 0; i < header.phrases().size(); i++) {
      int certainty = i == 0 ? OF_HEADER : OF_HEADER_IN_PART;
      HeaderWords.meanings(header.phrases().get(i)).stream().filter(seen::add)
          .forEach(m -> candidates.add(new Candidate(m, certainty, share(m, unit))));
    }
    if (candidates.isEmpty()) {
      underGroup(header).stream().filter(seen::add).forEach(m -> candidates.add(new Candidate(m, OF_HEADER_IN_PART, share(m, unit))));
    }
    if (candidates.isEmpty() && header.words().stream().noneMatch(w -> MonthWords.month(w).isPresent())) {
      keywords(header).stream().filter(seen::add).forEach(m -> candidates.add(new Candidate(m, OF_CELLS, shareOfWords(m))));
    }
    ends(header).forEach(m -> candidates.add(new Candidate(m, OF_HEADER_IN_PART, share(m, unit))));
    months(header).ifPresent(m -> candidates.add(new Candidate(m, OF_HEADER_IN_PART, share(m, unit))));
    Optional<Meaning> ownKey = !OwnTable.is(heading) ? Optional.empty() : Meaning.ofKey("value:" + heading.headers().get(column)).filter(m -> !m.key().startsWith("value:caution"))
        .or(() -> ownColumn(heading.headers().get(column)));
    if (ownKey.isPresent()) {
      return ofHeader(new Candidate(ownKey.get(), 100, 1), unit.or(() -> OwnTable.unit(ownKey.get())));
    }
    // 'Sun' is a column of marks only where marks stand in it; words such as full and part are its values.
    candidates.removeIf(c -> c.meaning().is(Kind.MARK) && !isMarked() && candidates.stream().anyMatch(v -> v.meaning().is(Kind.VALUE)
        && v.share() > 0 && v.meaning().trait().equals(c.meaning().trait())));
    Optional<Candidate> best = candidates.stream().reduce((a, b) -> b.share() > a.share() + 0.1 ? b : a);
    boolean fails = best.isPresent() && !cells.isEmpty() && best.get().share() == 0 && !mayBeUnread(best.get().meaning());
    if (best.isEmpty() || fails) {
      Optional<Suggestion> ofCells = ofCells(unit);
      return ofCells.orElseGet(() -> fails ? unreadable(best.get()) : nothing());
    }
    return ofHeader(best.get(), unit);
  }

  /** The columns of the library's own table that are not values: evidence and cautions. */
  private static Optional<Meaning> ownColumn(String header) {
    if (header.endsWith(".evidence")) {
      return Meaning.ofKey("evidence:" + header.substring(0, header.length() - ".evidence".length()));
    }
    return header.startsWith("caution.") ? Meaning.ofKey("cautions:" + header) : Optional.empty();
  }

  /** A single word of a longer header counts where most cells bear it out, as in 'when it flowers'. */
  private List<Meaning> keywords(HeaderText header) {
    return header.words().stream().filter(word -> header.words().stream().noneMatch(other -> !other.equals(word) && ABOUT_ANOTHER_THING.matcher(other).matches()))
        .flatMap(word -> HeaderWords.meanings(word).stream())
        .filter(m -> m.is(Kind.VALUE) && shareOfWords(m) >= MOST && !isMarked()).distinct().toList();
  }

  /** A yes below 'toxic to bees' is none to bees. */
  private boolean isMarked() {
    return cells.stream().filter(c -> YesNo.read(c.text()).isPresent()).count() * 2 > cells.size();
  }

  /** 'Site needs' above 'Light': the lower header alone tells it, unless the upper one is a part of the plant. */
  private List<Meaning> underGroup(HeaderText header) {
    boolean grouped = heading.lastRow() > heading.firstRow() && header.words().size() > 1
        && !header.words().get(0).matches("leaf|leaves|flowers?|fruits?|seeds?|roots?|trunk|stem|cones?|nuts?|planting|bark");
    for (int from = 1; grouped && from < header.words().size(); from++) {
      List<Meaning> meanings = HeaderWords.meanings(String.join(" ", header.words().subList(from, header.words().size())));
      if (!meanings.isEmpty()) {
        return meanings;
      }
    }
    return List.of();
  }

  private List<Meaning> ends(HeaderText header) {
    List<Meaning> ends = new ArrayList<>();
    header.withoutEnd(LOW_WORDS).ifPresent(rest -> ends.addAll(ends(rest, Kind.LOWEST)));
    header.withoutEnd(HIGH_WORDS).ifPresent(rest -> ends.addAll(ends(rest, Kind.HIGHEST)));
    return ends;
  }

  private static List<Meaning> ends(HeaderText rest, Kind kind) {
    return rest.phrases().stream().flatMap(p -> HeaderWords.meanings(p).stream())
        .filter(m -> m.is(Kind.VALUE) && (m.trait().orElseThrow().shape() == Trait.Shape.SPAN || m.trait().get() == Trait.BLOOM))
        .map(m -> Meaning.of(kind, m.trait().orElseThrow(), "")).distinct().toList();
  }

  /** A month as header: of bloom or harvest, as the other words of the header or the title say. */
  private Optional<Meaning> months(HeaderText header) {
    for (String word : header.words()) {
      Optional<Month> month = MonthWords.month(word);
      if (month.isPresent()) {
        String rest = String.join(" ", header.words().stream().filter(w -> !w.equals(word)).toList());
        String about = rest.isEmpty() ? Words.folded(title) : rest;
        boolean bloom = about.matches(".*\\b(bloom\\w*|flower\\w*|blossom\\w*)\\b.*");
        boolean harvest = about.matches(".*\\b(harvest\\w*|pick\\w*|fruit\\w*|ripe\\w*|crop\\w*)\\b.*");
        String number = String.valueOf(month.get().getValue());
        return bloom == harvest ? Optional.empty()
            : Optional.of(bloom ? Meaning.mark(Trait.BLOOM, "", number) : Meaning.mark(Trait.HARVEST, "fruit", number));
      }
    }
    return Optional.empty();
  }

  /** How many of the cells can be read so, 0 to 1; what every text can be is half sure. */
  private double share(Meaning meaning, Optional<ColumnUnit> unit) {
    if (cells.isEmpty()) {
      return 0.5;
    }
    CellFit fit = new CellFit(ColumnMapping.of(column, heading.headers().get(column), meaning, unit.orElse(ColumnUnit.AS_WRITTEN)));
    return cells.stream().mapToDouble(fit::of).sum() / cells.size();
  }

  /** Numbers wait for their unit, seasons for a decision: nothing read yet does not mean that the header is wrong. */
  private boolean mayBeUnread(Meaning meaning) {
    return meaning.trait().filter(t -> t.shape() == Trait.Shape.SPAN || t.shape() == Trait.Shape.MONTHS).isPresent()
        && cells.stream().anyMatch(c -> SpanText.read(c.text()).isPresent() || MonthWords.isSeason(Words.folded(c.text())));
  }

  private Suggestion ofHeader(Candidate best, Optional<ColumnUnit> unit) {
    List<Finding> reasons = new ArrayList<>();
    reasons.add(Finding.of("import.reason.header", "", heading.headers().get(column)));
    int read = (int) Math.round(best.share() * 100);
    if (!cells.isEmpty() && best.share() < MANY && best.meaning().kind().aboutATrait()) {
      reasons.add(Finding.of("import.reason.cells-unread", "", 100 - read));
    }
    int certainty = best.share() < 0.5 && best.meaning().kind().aboutATrait() ? Math.max(DOUBTFUL, best.certainty() / 2) : best.certainty();
    return new Suggestion(mapping(best.meaning(), unit), certainty, reasons);
  }

  private Suggestion unreadable(Candidate best) {
    return new Suggestion(mapping(Meaning.NOTE, Optional.empty()), 0,
        List.of(Finding.of("import.reason.header-only", "", heading.headers().get(column), best.meaning().key())));
  }

  private Suggestion nothing() {
    boolean empty = cells.isEmpty() && heading.headers().get(column).isEmpty();
    return new Suggestion(mapping(empty ? Meaning.IGNORED : Meaning.NOTE, Optional.empty()), empty ? 100 : 0,
        List.of(Finding.of(empty ? "import.reason.empty" : "import.reason.nothing", "")));
  }

  /** What the cells alone say, where they say it clearly. */
  private Optional<Suggestion> ofCells(Optional<ColumnUnit> unit) {
    boolean anotherThing = HeaderText.read(heading.headers().get(column)).words().stream().anyMatch(w -> ABOUT_ANOTHER_THING.matcher(w).matches());
    if (cells.size() < 3 || anotherThing) {
      return Optional.empty();
    }
    for (Meaning meaning : CellFit.TELLING) {
      double share = meaning.trait().isPresent() ? shareOfWords(meaning) : share(meaning, unit);
      if (share >= MANY) {
        return Optional.of(new Suggestion(mapping(meaning, unit), (int) Math.round(OF_CELLS * share),
            List.of(Finding.of("import.reason.cells", "", (int) Math.round(share * 100)))));
      }
    }
    return Optional.empty();
  }

  /** Numbers alone tell nothing: only words and zones do. */
  private double shareOfWords(Meaning meaning) {
    CellFit fit = new CellFit(ColumnMapping.of(column, "", meaning, ColumnUnit.AS_WRITTEN));
    return cells.stream().filter(c -> c.text().chars().anyMatch(Character::isLetter) && !YesNo.saysNothing(c.text())).mapToDouble(fit::of).sum() / cells.size();
  }

  private ColumnMapping mapping(Meaning meaning, Optional<ColumnUnit> unit) {
    ColumnUnit named = unit.filter(u -> ColumnUnit.choices(meaning).contains(u)).orElse(ColumnUnit.AS_WRITTEN);
    return ColumnMapping.of(column, heading.headers().get(column), meaning, named);
  }
}
