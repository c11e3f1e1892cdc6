package guildwood.species.exchange;

import guildwood.kernel.Source;
import guildwood.species.Evidence;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.SpeciesNames;
import guildwood.species.SpeciesNote;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;

/** Invented libraries in which values are written in every way, beside texts that are hard to carry. */
public final class AnyContents {
  private static final List<String> HARD = List.of("", "=1+1", "+49 30", "-3", "-", "@name", "'quoted'", "'=x", "''-x", "＝wide", "a;b",
      "a,b", "say \"so\"", "\"", "Übergrün 木 🌳 é", "back\\slash", "1,5", "inner  space", "<b>&amp;", "#N/A", "TRUE", "0123",
      "2026-11-25", "é", "it's", "' lone", "4-8", "\u00a0x", "\u200bzero", "x".repeat(299));

  private final Random random;

  private AnyContents(long seed) {
    this.random = new Random(seed);
  }

  /** @param size number of species */
  public static LibraryContents of(long seed, int size) {
    return new AnyContents(seed).make(size);
  }

  private LibraryContents make(int size) {
    List<Source> sources = new ArrayList<>();
    sources.add(random.nextBoolean()
        ? new Source(Source.OWN_EXPERIENCE, Source.Kind.OWN_EXPERIENCE, "", "Own experience", OptionalInt.empty(), "")
        : new Source(Source.OWN_EXPERIENCE, Source.Kind.OWN_EXPERIENCE, hard(), "=Mine", OptionalInt.of(1999), hard()));
    for (int i = 0; i < 4; i++) {
      sources.add(new Source("s-" + i, pick(List.of(Source.Kind.values())), hard(), "T" + hard(),
          random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1500 + random.nextInt(500)), hard()));
    }
    Map<String, SpeciesNames> species = new LinkedHashMap<>();
    List<WrittenStatement> statements = new ArrayList<>();
    List<Holding> holdings = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      String id = "species-" + i + (random.nextInt(4) == 0 ? "-x" : "");
      species.put(id, names(i));
      statements(id, sources, statements);
      if (random.nextInt(3) == 0) {
        holdings.add(new Holding(id, random.nextInt(50), random.nextInt(5), random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(10_000))));
      }
    }
    return new LibraryContents(sources, species, statements, holdings, notes(List.copyOf(species.keySet()), sources));
  }

  private List<SpeciesNote> notes(List<String> species, List<Source> sources) {
    List<SpeciesNote> notes = new ArrayList<>();
    for (int n = random.nextInt(2 * species.size()); n > 0; n--) {
      StringBuilder text = new StringBuilder("Soil: ").append(hard());
      for (int lines = random.nextInt(4); lines > 0; lines--) {
        text.append('\n').append(pick(List.of("", "\r", "\t\"", "C:\\u000A\\\\", " ends here ", "\u0007"))).append(hard());
      }
      notes.add(new SpeciesNote(0, pick(species), text.toString(), pick(sources).id()));
    }
    return notes;
  }

  private SpeciesNames names(int number) {
    String scientific = pick(List.of("Rubus ", "× Sorbaronia ", "Äsculus × ", "Malus 'King, \"Late\"' ")) + "specimen" + letters(number);
    List<String> common = new ArrayList<>();
    for (int n = random.nextInt(4); n > 0; n--) {
      String name = hard().replace(";", "").strip();
      if (!name.isEmpty() && name.length() < 100 && !common.contains(name)) {
        common.add(name);
      }
    }
    String family = random.nextBoolean() ? "" : "Rosaceae";
    List<String> synonyms = random.nextInt(3) > 0 ? List.of() : List.of("Rubus alter" + letters(number), "Rubus d'or, L.");
    return SpeciesNames.read(scientific.replace("Äsculus", "Aesculus"), String.join("; ", common), family, String.join("; ", synonyms)).orThrow();
  }

  private static String letters(int number) {
    return number < 26 ? String.valueOf((char) ('a' + number)) : letters(number / 26 - 1) + letters(number % 26);
  }

  private void statements(String species, List<Source> sources, List<WrittenStatement> statements) {
    for (Trait trait : Trait.values()) {
      List<String> items = trait == Trait.CAUTION
          ? List.of("toxic:leaves", "listed:US-IL", "thorns", "weedy:Great Lakes", "other") : trait.hasItems() ? trait.items() : List.of("");
      String item = pick(items);
      int chosen = random.nextInt(4);
      for (int n = random.nextInt(3); n > 0; n--) {
        String evidence = trait.carriesEvidence() && random.nextBoolean() ? pick(List.of(Evidence.values())).key() : "";
        WrittenStatement written = new WrittenStatement(0, species, trait.key(), item, written(trait), pick(sources).id(), evidence,
            n == chosen, hard());
        written.read().orThrow();
        statements.add(written);
      }
    }
  }

  private String written(Trait trait) {
    return switch (trait.shape()) {
      case SPAN -> span(trait);
      case WORD -> pick(trait.words());
      case WORDS -> pick(trait.words()) + "; " + pick(trait.words());
      case MONTHS -> trait == Trait.HARVEST && random.nextInt(4) == 0 ? "yes" : pick(List.of("May", "5; 6", "October-February", "april, JUNE", "12"));
      case SEASONS -> random.nextInt(3) == 0 ? "yes" : pick(trait.words()) + "," + pick(trait.words());
      case YES_NO -> pick(List.of("yes", "no", "Y", "TRUE", "n"));
      case TEXT -> "C" + hard();
    };
  }

  private String span(Trait trait) {
    return pick(switch (trait.unit()) {
      case METRES -> List.of("10 ft", "1.5 m", "10..20 ft", "30 cm", "6 in - 12 in", "0.5 m to 2 m", "3-6 ft", "0,75 m");
      case CELSIUS -> List.of("-28 C", "-30 F", "zone 4", "zone 5b", "-34..-29 C", "-28.5 C");
      case SUN_HOURS -> List.of("6", "full sun", "part shade", "2..6", "0.5");
      case MOISTURE_CLASS -> List.of("moist", "2..4", "dry", "3");
      case PH -> List.of("6.0 to 7.5", "5.5-6.5", "7", "6,5");
      case FERTILITY_CLASS -> List.of("rich", "1..2", "medium");
      case DAYS -> List.of("120", "90..150");
      case NONE -> throw new IllegalStateException(trait + " has no numbers");
    });
  }

  private String hard() {
    return pick(HARD).strip();
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
