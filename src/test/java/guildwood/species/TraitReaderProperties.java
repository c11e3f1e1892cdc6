package guildwood.species;

import guildwood.kernel.Temperature;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds for everything that can be written. Seeds are fixed, so that a failure comes back. */
class TraitReaderProperties {
  private static final int CASES = 2000;
  private static final String[] BITS = {
      "6", "-30", "0.5", "60,5", "..", "-", "–", " to ", ";", ",", " ", "ft", "in", "m", "cm", "F", "°C", "zone ", "4b", "h",
      "days", "yes", "no", "full sun", "part shade", "moist", "dry", "poor", "rich", "coarse", "spring", "may", "October", "13",
      "99999999999", "∞", "NaN", "'", "\"", "<b>", "\u0000", "é", "１２", "=1+1", "FACW", "slow", "runs", ":"};

  @ParameterizedTest
  @EnumSource(Trait.class)
  void anythingWrittenIsReadOrRefusedNeverThrown(Trait trait) {
    Random random = new Random(trait.ordinal());
    for (int i = 0; i < CASES; i++) {
      String entered = random.ints(1 + random.nextInt(6), 0, BITS.length).mapToObj(b -> BITS[b]).collect(Collectors.joining());
      Checked<TraitValue> read = TraitReader.read(trait, entered, "value");
      if (read.value().isPresent() && read.orThrow() instanceof TraitValue.Span span) {
        assertTrue(span.range().min() >= trait.unit().lowest() - 1e-9 && span.range().max() <= trait.unit().highest() + 1e-9,
            trait + " read '" + entered + "' as " + span);
      }
      // What is accepted once is accepted again, in whatever case and with spaces around it.
      Checked<TraitValue> again = TraitReader.read(trait, "  " + entered.toUpperCase(Locale.ROOT) + " ", "value");
      assertEquals(read.isRefused(), again.isRefused(), trait + " '" + entered + "'");
    }
  }

  @Test
  void theSameLengthInEveryUnitIsTheSameRange() {
    Random random = new Random(1);
    for (int i = 0; i < CASES; i++) {
      double low = 1 + random.nextInt(1000);
      double high = low + random.nextInt(1000);
      Range inches = span(Trait.HEIGHT, low + ".." + high + " in");
      assertClose(inches, span(Trait.HEIGHT, round(low * 2.54) + " cm.." + round(high * 2.54) + " cm"));
      assertClose(inches, span(Trait.HEIGHT, round(low / 12) + " ft - " + round(high / 12) + " ft"));
      assertClose(inches, span(Trait.HEIGHT, low + " in; " + high + " in"));
      assertClose(inches, span(Trait.HEIGHT, high + " in; " + low + " in"));
    }
  }

  @Test
  void everyHalfZoneIsReadAsItsLowerEdge() {
    for (int number = 1; number <= 13; number++) {
      for (String half : List.of("", "a", "b")) {
        String written = "zone " + number + half;
        double edge = span(Trait.COLDEST_WINTER, written).min();
        assertEquals(Temperature.toCelsius(-60 + 10 * (number - 1) + (half.equals("b") ? 5 : 0)), edge, 1e-9, written);
        assertEquals(number, HardinessZone.ofCelsius(edge).orElseThrow().number());
      }
    }
  }

  @Test
  void everySetOfMonthsSurvivesBeingWritten() {
    for (int bits = 1; bits <= 0xFFF; bits++) {
      Months months = new Months(bits);
      List<String> numbers = new ArrayList<>(months.list().stream().map(m -> Integer.toString(m.getValue())).toList());
      Collections.shuffle(numbers, new Random(bits));
      TraitValue read = TraitReader.read(Trait.BLOOM, String.join("; ", numbers), "value").orThrow();
      assertEquals(new TraitValue.InMonths(months), read);
    }
  }

  @Test
  void everyWordOfEveryTraitIsRead() {
    for (Trait trait : Trait.values()) {
      for (String word : trait.words()) {
        assertFalse(TraitReader.read(trait, word, "value").isRefused(), trait + " " + word);
      }
      for (String item : trait.items()) {
        assertFalse(TraitReader.readItem(trait, item, "item").isRefused(), trait + " " + item);
      }
    }
  }

  private static double round(double number) {
    return Math.round(number * 1e6) / 1e6;
  }

  private static Range span(Trait trait, String entered) {
    return ((TraitValue.Span) TraitReader.read(trait, entered, "value").orThrow()).range();
  }

  private static void assertClose(Range expected, Range actual) {
    assertEquals(expected.min(), actual.min(), 1e-5);
    assertEquals(expected.max(), actual.max(), 1e-5);
  }
}
