package guildwood.choosing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import guildwood.choosing.Facet;
import guildwood.kernel.Months;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.Month;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {
  private static final Messages MESSAGES = new Messages();

  @ParameterizedTest
  @EnumSource(Facet.class)
  void everyOptionHasANameOfItsOwnInBothUnits(Facet facet) {
    for (Units units : Units.values()) {
      OptionWords words = new OptionWords(units, MESSAGES);
      assertFalse(words.facet(facet).isBlank());
      Set<String> names = new HashSet<>();
      facet.options().forEach(option -> names.add(words.option(facet, option)));
      assertEquals(facet.options().size(), names.size(), () -> "names of " + facet + " in " + units + ": " + names);
    }
  }

  @Test
  void placeOptionsSayTheirNumbers() {
    OptionWords metric = new OptionWords(Units.METRIC, MESSAGES);
    OptionWords us = new OptionWords(Units.US, MESSAGES);
    assertEquals("5a (−28.9 °C)", metric.option(Facet.WINTER, "5a"));
    assertEquals("5a (−20 °F)", us.option(Facet.WINTER, "5a"));
    assertEquals("slightly acid, pH 6.1–6.5", metric.option(Facet.PH, "slightly-acid"));
    assertEquals("under 30 cm", metric.option(Facet.HEIGHT, "under-30cm"));
    assertEquals("2 – 4 m", metric.option(Facet.HEIGHT, "2m-4m"));
    assertEquals("over 49 ft", us.option(Facet.HEIGHT, "over-15m"));
  }

  @Test
  void neighbouringMonthsAreDrawnTogether() {
    assertEquals("Apr–May, Sep", MonthSpans.of(Months.of(List.of(Month.APRIL, Month.MAY, Month.SEPTEMBER)), MESSAGES));
    assertEquals("Nov–Feb", MonthSpans.of(Months.through(Month.NOVEMBER, Month.FEBRUARY), MESSAGES));
    assertEquals("Jan", MonthSpans.of(Months.of(List.of(Month.JANUARY)), MESSAGES));
    assertEquals("all year", MonthSpans.of(Months.through(Month.JANUARY, Month.DECEMBER), MESSAGES));
    assertEquals("", MonthSpans.of(Months.NONE, MESSAGES));
  }
}
