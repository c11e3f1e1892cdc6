package guildwood.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.ConditionReader.Entry;
import guildwood.species.Axis;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionReaderTest {

  @ParameterizedTest
  @CsvSource({
    "LIGHT, part shade, '', observed, 3, 6", "LIGHT, part shade, full sun, observed, 3, 16", "LIGHT, 4, 5.5, measured, 4, 5.5",
    "LIGHT, full sun, part shade, observed, 3, 16", "REACTION, neutral, slightly acid, observed, 6.1, 7.3",
    "MOISTURE, wet, dry, observed, 2, 4", "LIGHT, 4 h, 6 hours, observed, 4, 6", "LIGHT, Part  Shade, '', observed, 3, 6", "LIGHT, 4-6, '', observed, 4, 6",
    "LIGHT, part shade to full sun, '', published, 3, 16", "LIGHT, '4,5', 6, observed, 4.5, 6",
    "MOISTURE, moist, '', observed, 3, 3", "MOISTURE, dry, 3, observed, 2, 3", "MOISTURE, 2, 4, observed, 2, 4",
    "REACTION, 5.5, 6.5, measured, 5.5, 6.5", "REACTION, slightly acid, '', published, 6.1, 6.5",
    "REACTION, strongly acid, 6.2, measured, 5.1, 6.2", "REACTION, pH 5.5, pH 6, measured, 5.5, 6",
    "FERTILITY, poor, medium, observed, 1, 2", "TEXTURE, sandy loam, clay, observed, 2, 3", "TEXTURE, coarse, '', observed, 1, 1"})
  void readsNumbersAndWords(Axis axis, String from, String to, String basis, double low, double high) {
    assertEquals(new Range(low, high), read(axis, from, to, basis).range());
  }

  /** A single number never stays one: measured more narrowly than looked at, and never beyond the scale. */
  @ParameterizedTest
  @CsvSource({
    "REACTION, 6.2, '', measured, 6.0, 6.4", "REACTION, 6.2, '', observed, 5.7, 6.7", "REACTION, 6.2, '', published, 5.7, 6.7",
    "REACTION, 6.2, 6.2, measured, 6.0, 6.4", "REACTION, 10.9, '', measured, 10.7, 11", "LIGHT, 5, '', measured, 4.5, 5.5",
    "LIGHT, 5, '', observed, 4, 6", "LIGHT, 0.5, '', observed, 0, 1.5", "LIGHT, 24, '', measured, 23.5, 24"})
  void aSingleNumberBecomesARange(Axis axis, String from, String to, String basis, double low, double high) {
    assertEquals(new Range(low, high), read(axis, from, to, basis).range());
  }

  @Test
  void keepsWhatWasEnteredAndGivesItBackToTheForm() {
    Condition condition = read(Axis.LIGHT, "part shade", "7", "observed");
    assertEquals("part shade to 7", condition.entered());
    assertEquals(new Entry("part shade", "7", "observed"), ConditionReader.again(condition));
    assertEquals(new Entry("6.2", "", "measured"), ConditionReader.again(read(Axis.REACTION, "6.2", "", "measured")));
  }

  @Test
  void nothingTypedIsNothingStated() {
    assertEquals(Optional.empty(), ConditionReader.read(Axis.LIGHT, new Entry(" ", "", "observed"), "light").orThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "LIGHT, lots, '', observed, light-from, condition.unknown-word", "LIGHT, shade-tolerant, '', observed, light-from, condition.unknown-word",
    "LIGHT, 25, '', observed, light-from, number.out-of-scale", "LIGHT, -1, '', observed, light-from, number.out-of-scale",
    "LIGHT, 6, 3, observed, light-to, condition.backwards", "LIGHT, '', 5, observed, light-from, value.missing",
    "LIGHT, full sun, 6, observed, light-to, condition.backwards", "LIGHT, 6, part shade, observed, light-to, condition.backwards",
    "LIGHT, 4, soon, observed, light-to, condition.unknown-word", "LIGHT, 4 4, '', observed, light-from, number.unreadable",
    "LIGHT, 3-4, 5, observed, light-from, number.unreadable", "LIGHT, 5, '', guessed, light-basis, condition.basis",
    "LIGHT, 5, '', inherited, light-basis, condition.basis", "REACTION, 15, '', measured, ph-from, number.out-of-scale",
    "REACTION, 6, 15, measured, ph-to, number.out-of-scale", "REACTION, sour, '', measured, ph-from, condition.unknown-word",
    "MOISTURE, 2.5, '', observed, moisture-from, condition.class-number", "MOISTURE, 6, '', observed, moisture-from, condition.class-number",
    "MOISTURE, 0, '', observed, moisture-from, condition.class-number", "FERTILITY, 4, '', observed, fertility-from, condition.class-number",
    "TEXTURE, gravel, '', observed, texture-from, condition.unknown-word", "REACTION, NaN, '', measured, ph-from, condition.unknown-word",
    "REACTION, 6 x, '', measured, ph-from, number.unreadable", "LIGHT, 4 lux, '', observed, light-from, number.unit-unknown",
    "REACTION, 1e1, '', measured, ph-from, number.unreadable"})
  void refusesNonsenseBesideItsField(Axis axis, String from, String to, String basis, String field, String code) {
    List<Finding> findings = ConditionReader.read(axis, new Entry(from, to, basis), axis.key()).findings();
    assertEquals(List.of(field + " " + code), findings.stream().map(f -> f.field() + " " + f.code()).toList());
  }

  @Test
  void refusesControlCharactersAndLongTexts() {
    assertEquals("text.control-characters", refusal("4\u00075"));
    assertEquals("text.too-long", refusal("4".repeat(51)));
  }

  @Test
  void reportsBothEndsAtOnce() {
    List<Finding> findings = ConditionReader.read(Axis.REACTION, new Entry("15", "x", ""), "ph").findings();
    assertEquals(List.of("ph-basis", "ph-from", "ph-to"), findings.stream().map(Finding::field).toList());
  }

  private static Condition read(Axis axis, String from, String to, String basis) {
    Optional<Condition> read = ConditionReader.read(axis, new Entry(from, to, basis), axis.key()).orThrow();
    assertTrue(read.isPresent());
    assertEquals(basis, read.get().basis().key());
    return read.get();
  }

  private static String refusal(String from) {
    return ConditionReader.read(Axis.LIGHT, new Entry(from, "", "observed"), "light").findings().get(0).code();
  }
}
