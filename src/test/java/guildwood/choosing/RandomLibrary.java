package guildwood.choosing;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Invented libraries in which anything may be stated, stated twice, or left out. */
final class RandomLibrary {
  private static final List<String> SYLLABLES =
      List.of("ber", "cor", "lau", "mé", "niß", "pru", "quer", "ru", "sal", "ti", "vi", "xan", "øl", "zi");
  private static final List<String> KINDS = List.of("berry", "wort", "thorn", "vine", "sea-buck", "St. John's", "oak");

  private final Random random;
  private long statement;

  private RandomLibrary(long seed) {
    this.random = new Random(seed);
  }

  static SpeciesLibrary of(long seed, int size) {
    return new RandomLibrary(seed).make(size, 0.55);
  }

  /** With little stated of each, so that very many fit into memory. */
  static SpeciesLibrary sparse(long seed, int size) {
    return new RandomLibrary(seed).make(size, 0.3);
  }

  private SpeciesLibrary make(int size, double share) {
    List<Species> species = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      species.add(species(i, share));
    }
    return new SpeciesLibrary(1, species, List.of(), Map.of());
  }

  private Species species(int number, double share) {
    String genus = word();
    String scientific = Character.toUpperCase(genus.charAt(0)) + genus.substring(1)
        + (random.nextInt(6) == 0 ? " × " : " ") + word();
    List<String> common = new ArrayList<>();
    for (int n = random.nextInt(3); n > 0; n--) {
      common.add(word() + " " + pick(KINDS));
    }
    List<String> synonyms = random.nextInt(4) == 0 ? List.of(word() + " " + word()) : List.of();
    return new Species("s" + number, scientific, common, random.nextInt(5) == 0 ? "" : word() + "aceae", synonyms, false,
        statements(share));
  }

  private String word() {
    return pick(SYLLABLES) + pick(SYLLABLES);
  }

  private List<Statement> statements(double share) {
    List<Statement> statements = new ArrayList<>();
    for (Trait trait : Trait.values()) {
      List<String> items = trait == Trait.CAUTION ? List.of("toxic:seed", "thorns", "weedy:US-WI", "cook-first")
          : trait.hasItems() ? trait.items() : List.of("");
      for (String item : items) {
        // Traits with items are stated as a whole or not at all about half of the time.
        boolean speaks = random.nextDouble() < (items.size() > 1 ? share / 3 : share);
        int sources = speaks ? random.nextInt(4) == 0 ? 2 : 1 : 0;
        int chosen = random.nextInt(3);
        for (int s = 0; s < sources; s++) {
          statements.add(statement(trait, item, s == chosen));
        }
      }
    }
    return statements;
  }

  private Statement statement(Trait trait, String item, boolean chosen) {
    Optional<Evidence> evidence = trait.carriesEvidence() && random.nextInt(5) > 0
        ? Optional.of(Evidence.values()[random.nextInt(3)]) : Optional.empty();
    return new Statement(++statement, trait, item, "-", value(trait), "own-experience", evidence, chosen, "");
  }

  private TraitValue value(Trait trait) {
    return switch (trait.shape()) {
      case SPAN -> new TraitValue.Span(span(trait.unit()));
      case WORD -> new TraitValue.Word(pick(trait.words()));
      case WORDS -> new TraitValue.Words(some(trait.words()));
      case MONTHS -> new TraitValue.InMonths(random.nextInt(4) == 0 ? Months.NONE : months());
      case SEASONS -> new TraitValue.InSeasons(List.of());
      case YES_NO -> new TraitValue.YesNo(random.nextInt(3) > 0);
      case TEXT -> new TraitValue.Text("invented");
    };
  }

  private Range span(Unit unit) {
    double top = unit == Unit.METRES ? 25 : unit.highest();
    double a = unit.lowest() + random.nextDouble() * (top - unit.lowest());
    double b = unit.lowest() + random.nextDouble() * (top - unit.lowest());
    boolean classes = unit == Unit.MOISTURE_CLASS || unit == Unit.FERTILITY_CLASS || random.nextInt(3) == 0;
    double low = classes ? Math.max(unit.lowest(), Math.rint(Math.min(a, b))) : Math.min(a, b);
    double high = classes ? Math.max(low, Math.rint(Math.max(a, b))) : Math.max(a, b);
    return random.nextInt(4) == 0 ? Range.of(low) : new Range(low, high);
  }

  private Months months() {
    return Months.through(java.time.Month.of(1 + random.nextInt(12)), java.time.Month.of(1 + random.nextInt(12)));
  }

  private List<String> some(List<String> words) {
    List<String> some = new ArrayList<>(List.of(pick(words)));
    words.stream().filter(w -> random.nextInt(4) == 0).forEach(some::add);
    return some;
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
