package guildwood.importing;

import guildwood.importing.RowReading.Note;
import guildwood.importing.RowSpecies.Taken;
import guildwood.kernel.Finding;
import guildwood.species.Holding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.Statement;
import guildwood.species.TraitValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What becomes of one row after the other. */
final class Outcomes {
  private final ImportPlan plan;
  private final RowReader reader;
  private final RowSpecies species;
  private final ValueMemory memory;
  private final Map<String, Holding> held;
  /** Whether a table of its own, with other headers, has begun further down in the sheet. */
  private boolean otherHeading;
  /** Names as they will be, of species that several rows are about or that are in the library. */
  private final Map<String, SpeciesNames> grown = new HashMap<>();

  Outcomes(ImportPlan plan, SpeciesLibrary library, Map<String, Holding> holdings, ValueMemory memory) {
    this.plan = plan;
    this.reader = new RowReader(plan.mapping());
    this.species = new RowSpecies(library, plan.decisions().names());
    this.memory = memory;
    this.held = new HashMap<>(holdings);
  }

  RowOutcome of(TableRow row) {
    RowReading reading = reader.read(row);
    if (plan.decisions().leftOut().contains(row.number())) {
      return out(reading, Taken.out(RowFate.LEFT_OUT, List.of(), null));
    }
    if (isHeading(row)) {
      boolean again = isHeadingAgain(row);
      otherHeading |= !again;
      return out(reading, Taken.out(RowFate.REFUSED, List.of(), Finding.of(again ? "import.heading-again" : "import.other-heading", "")));
    }
    if (otherHeading) {
      return out(reading, Taken.out(RowFate.REFUSED, List.of(), Finding.of("import.below-other-heading", "")));
    }
    Taken taken = species.take(reading);
    return taken.fate().isBrought() ? brought(reading, taken) : out(reading, taken);
  }

  /** The name column has a header in it, and so have two more cells at least, and half of them all. */
  private boolean isHeading(TableRow row) {
    boolean name = plan.mapping().columns().stream().filter(c -> RowName.isPart(c.meaning().kind()) || c.meaning().is(Meaning.Kind.COMMON_NAMES))
        .map(c -> row.cell(c.column()).text()).anyMatch(HeaderFinder::isNameHeader);
    if (!name) {
      return false;
    }
    List<String> filled = row.cells().stream().map(TableCell::text).filter(t -> !t.isBlank()).toList();
    long known = filled.stream().filter(HeaderFinder::isKnown).count();
    return isHeadingAgain(row) || known > 2 && known * 2 > filled.size();
  }

  /** Long tables repeat their headers at every page. */
  private boolean isHeadingAgain(TableRow row) {
    return plan.mapping().columns().stream().filter(c -> !row.cell(c.column()).isBlank())
        .allMatch(c -> !c.header().isEmpty() && Words.folded(row.cell(c.column()).text()).equals(Words.folded(c.header())));
  }

  private static RowOutcome out(RowReading reading, Taken taken) {
    List<Unread> unread = taken.reason().map(reason -> List.of(new Unread(reading.row(), Unread.WHOLE_ROW, "",
        reading.writtenName().isEmpty() ? String.join("; ", reading.common()) : reading.writtenName(), reason))).orElse(List.of());
    return new RowOutcome(reading, taken.fate(), "", null, false, taken.near(), List.of(), List.of(), unread);
  }

  private RowOutcome brought(RowReading reading, Taken taken) {
    List<Unread> unread = new ArrayList<>(reading.unread());
    boolean isNew = taken.fate() == RowFate.NEW || taken.fate() == RowFate.NEAR;
    SpeciesNames before = Optional.ofNullable(grown.get(taken.speciesId())).orElse(taken.names().orElseThrow());
    // A new species starts bare, so that its synonyms go through the same check as those added later.
    SpeciesNames start = isNew ? new SpeciesNames(before.scientificName(), List.of(), "", List.of()) : before;
    NamesGrown names = NamesGrown.of(start, reading, name -> species.belongsToAnother(name, taken.speciesId()));
    names.refused().forEach(refused -> plan.mapping().columns().stream()
        .filter(c -> c.meaning().is(refused.kind()) && reading.used().contains(c.column())).findFirst()
        .ifPresent(c -> unread.add(new Unread(reading.row(), c.column(), c.header(), textOf(refused.kind(), reading), refused.reason()))));
    held(reading, taken.speciesId()).forEach(unread::add);
    if (taken.known().isPresent() || memory.isRepeated(reading)) {
      grown.put(taken.speciesId(), names.names());
    }
    List<ValueOutcome> values = reading.values().stream().map(value -> outcome(taken, reading, value)).toList();
    return new RowOutcome(reading, taken.fate(), taken.speciesId(), names.names(), !isNew && names.changed(), taken.near(), values,
        notes(reading, names.names()), unread);
  }

  /** What is at hand and what it costs stays as it is known; a table that says otherwise is told so. */
  private List<Unread> held(RowReading reading, String speciesId) {
    List<Unread> differing = new ArrayList<>();
    Holding before = held.getOrDefault(speciesId, Holding.none(speciesId));
    int plants = reading.plantsOnHand().orElse(before.plantsOnHand());
    if (before.plantsOnHand() != 0 && plants != before.plantsOnHand()) {
      differs(Meaning.Kind.ON_HAND, reading, String.valueOf(plants), Finding.of("import.holding-differs", "", before.plantsOnHand())).ifPresent(differing::add);
      plants = before.plantsOnHand();
    }
    OptionalInt cents = before.priceCents().isPresent() ? before.priceCents() : reading.priceCents();
    if (reading.priceCents().isPresent() && !cents.equals(reading.priceCents())) {
      String price = BigDecimal.valueOf(reading.priceCents().getAsInt(), 2).toPlainString();
      differs(Meaning.Kind.PRICE, reading, price, Finding.of("import.price-differs", "", BigDecimal.valueOf(cents.getAsInt(), 2).toPlainString()))
          .ifPresent(differing::add);
    }
    if (held.containsKey(speciesId) || memory.isRepeated(reading)) {
      held.put(speciesId, new Holding(speciesId, plants, before.plantsToPropagate(), cents));
    }
    return differing;
  }

  private Optional<Unread> differs(Meaning.Kind kind, RowReading reading, String text, Finding reason) {
    return plan.mapping().first(kind).map(c -> new Unread(reading.row(), c.column(), c.header(), text, reason));
  }

  private static String textOf(Meaning.Kind kind, RowReading reading) {
    return switch (kind) {
      case FAMILY -> reading.family();
      case SYNONYMS -> String.join("; ", reading.synonyms());
      default -> String.join("; ", reading.common());
    };
  }

  /** The name goes to the notes where it is kept otherwise than it is written. */
  private List<Note> notes(RowReading reading, SpeciesNames names) {
    String written = reading.writtenName();
    boolean same = written.isEmpty() || written.equals(names.scientificName()) || names.synonyms().contains(written)
        || SpeciesNames.folded(written).equals(SpeciesNames.folded(names.scientificName()));
    if (same) {
      return reading.notes();
    }
    List<Note> notes = new ArrayList<>(reading.notes());
    plan.mapping().columns().stream().filter(c -> RowName.isPart(c.meaning().kind())).findFirst()
        .ifPresent(c -> notes.add(new Note(c.column(), c.header(), written)));
    return notes;
  }

  private ValueOutcome outcome(Taken taken, RowReading reading, ReadValue value) {
    List<Statement> existing = taken.known().map(Species::statements).orElse(List.of()).stream()
        .filter(s -> s.trait() == value.trait() && s.item().equals(value.item())).toList();
    ValueMemory.Seen seen = memory.see(taken, reading, value);
    if (seen == ValueMemory.Seen.SAME || isStated(value, existing)) {
      return new ValueOutcome(value, ValueOutcome.Fate.SAME, existing);
    }
    boolean conflict = !value.trait().addsUp() && (!existing.isEmpty() || seen == ValueMemory.Seen.OTHER);
    return new ValueOutcome(value, conflict ? ValueOutcome.Fate.CONFLICT : ValueOutcome.Fate.ADDED, existing);
  }

  private static boolean isStated(ReadValue value, List<Statement> existing) {
    if (existing.stream().anyMatch(s -> SameValue.says(s.value(), value.value()))) {
      return true;
    }
    return value.trait().addsUp() && value.value() instanceof TraitValue.Words words
        && existing.stream().flatMap(s -> ((TraitValue.Words) s.value()).words().stream()).toList().containsAll(words.words());
  }
}
