package guildwood.species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as people and sources write them, and what is refused. */
class TraitReaderTest {
  private static final String FIELD = "value";

  /** Feet and inches by the international foot of 0.3048 m exactly (NIST Special Publication 811, appendix B). */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "HEIGHT | 60 ft | 18.288 | 18.288",
      "HEIGHT | 15..20 ft | 4.572 | 6.096",
      "HEIGHT | 15 - 20 ft | 4.572 | 6.096",
      "HEIGHT | 15 to 20 ft | 4.572 | 6.096",
      "HEIGHT | 15 ft to 20 ft | 4.572 | 6.096",
      "HEIGHT | 18 in..3 ft | 0.4572 | 0.9144",
      "HEIGHT | 6' | 1.8288 | 1.8288",
      "CROWN | 4 m | 4 | 4",
      "CROWN | 2,5..4 m | 2.5 | 4",
      "CROWN | 40 cm | 0.4 | 0.4",
      "PH | 5.0..7.5 | 5 | 7.5",
      "PH | 5.0-7.5 | 5 | 7.5",
      "PH | 5,5; 6,5 | 5.5 | 6.5",
      "PH | 6 | 6 | 6",
      "FROST_FREE_DAYS | 120 | 120 | 120",
      "FROST_FREE_DAYS | 120 days | 120 | 120",
      "COLDEST_WINTER | -33 C | -33 | -33",
      "COLDEST_WINTER | −33 °C | -33 | -33",
      "COLDEST_WINTER | -40 F | -40 | -40",
      "COLDEST_WINTER | 14..32 F | -10 | 0",
      "COLDEST_WINTER | zone 5 | -28.888889 | -28.888889",
      "COLDEST_WINTER | Zone 5b | -26.111111 | -26.111111",
      "COLDEST_WINTER | zones 5-8 | -28.888889 | -28.888889",
      "COLDEST_WINTER | zone 4 to zone 8 | -34.444444 | -34.444444",
      "LIGHT | 4..8 | 4 | 8",
      "LIGHT | 6 h | 6 | 6",
      "LIGHT | full sun | 6 | 16",
      "LIGHT | Full sun to part shade | 3 | 16",
      "LIGHT | full sun; part shade | 3 | 16",
      "LIGHT | part shade..12 | 3 | 12",
      "LIGHT | shade-tolerant | 0.5 | 16",
      "MOISTURE | dry..moist | 2 | 3",
      "MOISTURE | wet; waterlogged | 4 | 5",
      "FERTILITY | poor..medium | 1 | 2",
  })
  void readsMeasuresIntoTheTraitsUnit(Trait trait, String entered, double low, double high) {
    Range range = span(TraitReader.read(trait, entered, FIELD));
    assertEquals(low, range.min(), 1e-6);
    assertEquals(high, range.max(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "HEIGHT | 60 | number.unit-missing",
      "HEIGHT | 60 yd | number.unit-unknown",
      "HEIGHT | 60 C | number.unit-unknown",
      "HEIGHT | tall | number.unreadable",
      "HEIGHT | 20..15 ft | range.backwards",
      "HEIGHT | 500 m | number.out-of-scale",
      "HEIGHT | -3 m | number.out-of-scale",
      "HEIGHT | 10 m.. | number.unreadable",
      "HEIGHT | 1e3 m | number.unreadable",
      "HEIGHT | NaN m | number.unreadable",
      "HEIGHT | ; | number.unreadable",
      "PH | 15 | number.out-of-scale",
      "PH | 7.5..5 | range.backwards",
      "PH | acid | number.unreadable",
      "PH | 6 ft | number.unit-unknown",
      "COLDEST_WINTER | -30 | number.unit-missing",
      "COLDEST_WINTER | zone 0 | zone.unreadable",
      "COLDEST_WINTER | zone 14 | zone.unreadable",
      "COLDEST_WINTER | zone 5c | zone.unreadable",
      "COLDEST_WINTER | zone 4 to 25 | zone.unreadable",
      "COLDEST_WINTER | 300 F | number.out-of-scale",
      "LIGHT | 30 | number.out-of-scale",
      "LIGHT | dappled | number.unreadable",
      "MOISTURE | damp | number.unreadable",
      "MOISTURE | 7 | number.out-of-scale",
      "FROST_FREE_DAYS | 400 | number.out-of-scale",
      "BLOOM | 13 | month.unreadable",
      "BLOOM | 0 | month.unreadable",
      "BLOOM | Ju | month.unreadable",
      "BLOOM | 4..5..6 | month.unreadable",
      "BLOOM | yes | month.unreadable",
      "BLOOM | ; | month.unreadable",
      "TEXTURE | loamy | value.unknown-word",
      "TEXTURE | ; | value.missing",
      "PROPAGATION | ; | value.missing",
      "PROPAGATION | monsoon | value.unknown-word",
      "GROWTH_RATE | slow; fast | value.unknown-word",
      "FUNCTION | perhaps | value.yes-or-no",
      "CAUTION | '' | value.missing",
      "CAUTION | '   ' | value.missing",
  })
  void refusesNonsenseWithItsReason(Trait trait, String entered, String code) {
    Checked<TraitValue> read = TraitReader.read(trait, entered, FIELD);
    assertTrue(read.isRefused(), entered);
    assertEquals(code, read.findings().get(0).code());
    assertEquals(FIELD, read.findings().get(0).field());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "4; 5 | APRIL MAY",
      "4..6 | APRIL MAY JUNE",
      "April-May | APRIL MAY",
      "june to august | JUNE JULY AUGUST",
      "sept, oct | SEPTEMBER OCTOBER",
      "11..2 | JANUARY FEBRUARY NOVEMBER DECEMBER",
      "october | OCTOBER",
  })
  void readsMonths(String entered, String months) {
    Months read = ((TraitValue.InMonths) TraitReader.read(Trait.BLOOM, entered, FIELD).orThrow()).months();
    assertEquals(List.of(months.split(" ")), read.list().stream().map(Month::name).toList());
  }

  @Test
  void readsWordsSeasonsAndYes() {
    assertEquals(new TraitValue.Words(List.of("coarse", "medium")), TraitReader.read(Trait.TEXTURE, "Medium; coarse", FIELD).orThrow());
    assertEquals(new TraitValue.Words(List.of("runs", "self-sows")), TraitReader.read(Trait.SPREAD, "runs; self-sows", FIELD).orThrow());
    assertEquals(new TraitValue.Word("FACW"), TraitReader.read(Trait.WETLAND, "facw", FIELD).orThrow());
    assertEquals(new TraitValue.InSeasons(List.of("spring", "autumn")), TraitReader.read(Trait.PROPAGATION, "autumn; spring", FIELD).orThrow());
    assertEquals(new TraitValue.InSeasons(List.of()), TraitReader.read(Trait.PROPAGATION, "yes", FIELD).orThrow());
    assertEquals(new TraitValue.InMonths(Months.NONE), TraitReader.read(Trait.HARVEST, "yes", FIELD).orThrow());
    assertEquals(new TraitValue.YesNo(true), TraitReader.read(Trait.FUNCTION, "Yes", FIELD).orThrow());
  }

  @Test
  void refusesWhatCannotBeShownOrKept() {
    assertEquals("text.control-characters", TraitReader.read(Trait.CAUTION, "a\tb", FIELD).findings().get(0).code());
    assertEquals("text.too-long", TraitReader.read(Trait.CAUTION, "x".repeat(301), FIELD).findings().get(0).code());
    assertTrue(TraitReader.read(Trait.CAUTION, "x".repeat(300), FIELD).value().isPresent());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "FUNCTION | nitrogen-fixer | true", "FUNCTION | flying | false", "FUNCTION | '' | false", "HEIGHT | '' | true",
      "HEIGHT | fruit | false", "CAUTION | toxic:leaves | true", "CAUTION | toxic | false", "CAUTION | thorns | true",
      "CAUTION | thorns:big | false", "CAUTION | listed:US-IL | true", "CAUTION | listed:Illinois | false",
      "CAUTION | permit:de | false", "CAUTION | weedy:north-america | true", "CAUTION | nonsense | false"})
  void knowsTheItemsOfATrait(Trait trait, String item, boolean known) {
    assertEquals(known, !TraitReader.readItem(trait, item, "item").isRefused());
  }

  private static Range span(Checked<TraitValue> read) {
    return ((TraitValue.Span) read.orThrow()).range();
  }
}
