package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import guildwood.species.CautionKind;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.web.Messages;
import guildwood.web.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values in words, in the visitor's units. */
class ValueWordsTest {
  private static final Messages MESSAGES = new Messages();

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "height | '' | 15..20 ft | 4.6 – 6.1 m | 15 – 20 ft",
      "height | '' | 18 in | 46 cm | 18 in",
      "coldest_winter | '' | zone 4a | zone 4a (−34.4 °C) | zone 4a (−30 °F)",
      "coldest_winter | '' | -62 F | colder than zone 1 (−52.2 °C) | colder than zone 1 (−62 °F)",
      "light | '' | part shade | 3 – 6 h of direct sun a day (part shade) | 3 – 6 h of direct sun a day (part shade)",
      "moisture | '' | dry..moist | dry to moist (class 2 – 3 of 5) | dry to moist (class 2 – 3 of 5)",
      "moisture | '' | 2.5 | class 2.5 of 5 | class 2.5 of 5",
      "ph | '' | 5.0..7.5 | 5 – 7.5 | 5 – 7.5",
      "frost_free_days | '' | 120 | 120 days | 120 days",
      "bloom | '' | 4; 5; 9 | April – May, September | April – May, September",
      "bloom | '' | 11..2 | November – February | November – February",
      "bloom | '' | 1..12 | all year | all year",
      "harvest | fruit | yes | yes, months not known | yes, months not known",
      "propagation | seed | yes | yes, season not known | yes, season not known",
      "propagation | seed | autumn; spring | spring, autumn | spring, autumn",
      "layer | '' | root; herb | herb, root crop | herb, root crop",
      "function | nitrogen-fixer | no | no | no",
      "wetland | ne | FACW | facultative wetland (FACW) | facultative wetland (FACW)",
  })
  void saysAValueInMetricAndUsUnits(String trait, String item, String entered, String metric, String us) {
    Statement statement = new WrittenStatement(1, "malus-domestica", trait, item, entered, "own-experience", "", false, "").read().orThrow();
    assertEquals(metric, new ValueWords(MESSAGES, Units.METRIC).value(statement));
    assertEquals(us, new ValueWords(MESSAGES, Units.US).value(statement));
  }

  @Test
  void thereAreWordsForEveryTraitItemWordAndCaution() {
    ValueWords words = new ValueWords(MESSAGES, Units.METRIC);
    for (Trait trait : Trait.values()) {
      trait.items().forEach(item -> assertFalse(words.topic(trait, item).isBlank()));
      trait.words().forEach(word -> assertFalse(MESSAGES.say("word." + trait.key() + "." + word).isBlank()));
      if (!trait.hasItems()) {
        assertFalse(words.topic(trait, "").isBlank());
      }
    }
    CautionKind.keys().forEach(kind -> assertFalse(words.topic(Trait.CAUTION, kind).isBlank()));
  }
}
