package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormTest {
  private static final Messages MESSAGES = new Messages();

  private static Form typed(String text) {
    return Form.blank(Map.of("field", text), MESSAGES);
  }

  @Test
  void aTextIsStrippedOfTheSpaceAroundIt() {
    Form form = typed("  North bed \u00a0");
    assertEquals("North bed \u00a0".strip(), form.text("field", 20));
    assertFalse(form.isRefused());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "\t", "\r\n"})
  void aTextThatMustBeThereIsMissedOnce(String nothing) {
    Form form = typed(nothing);
    assertEquals("", form.text("field", 20));
    assertEquals(List.of(Finding.of("value.missing", "field")), form.findings());
    assertEquals("", typed(nothing).optionalText("field", 20));
  }

  @Test
  void aTextMayBeExactlyAsLongAsAllowed() {
    assertEquals("x".repeat(20), typed("x".repeat(20)).text("field", 20));
    Form form = typed("x".repeat(21));
    assertEquals("", form.text("field", 20));
    assertEquals("Too long: at most 20 characters.", form.messageOf("field"));
    assertEquals(1, form.findings().size());
    assertEquals("x".repeat(21), form.value("field"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\u0000b", "a\u0007", "a\tb", "a\nb", "a\u001bb", "a\u007fb", "a\u0085b"})
  void controlCharactersAreRefusedInALine(String text) {
    Form form = typed(text);
    assertEquals("", form.text("field", 20));
    assertEquals(List.of(Finding.of("text.control-characters", "field")), form.findings());
  }

  @Test
  void aLongTextHasLinesButNoOtherControlCharacters() {
    Form form = typed("one\r\ntwo\nthree");
    assertEquals("one\ntwo\nthree", form.longText("field", 20));
    assertFalse(form.isRefused());
    assertTrue(refused(typed("one\ttwo"), f -> f.longText("field", 20)));
    assertTrue(refused(typed("one\rtwo"), f -> f.longText("field", 20)));
  }

  @ParameterizedTest
  @CsvSource({"5, 5", "' 5 ', 5", "+5, 5", "-2.5, -2.5", "−2.5, -2.5", "'2,5', 2.5", "000.50, 0.5", "10, 10", "-10, -10"})
  void numbersAreRead(String text, double value) {
    Form form = typed(text);
    assertEquals(OptionalDouble.of(value), form.number("field", -10, 10));
    assertFalse(form.isRefused());
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "five", "1e3", "0x10", "NaN", "Infinity", "1.2.3", "1,000.5", ".5", "5.", "- 5", "5 m", "٥", "५", "1_000", "--5",
      "9999999999999", "5;drop table bed"})
  void whatIsNoNumberIsNamed(String text) {
    Form form = typed(text);
    assertEquals(OptionalDouble.empty(), form.number("field", -10, 10));
    assertEquals("“" + text + "” is not a number that can be read here.", form.messageOf("field"));
    assertEquals(1, form.findings().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"10.01", "-10.01", "999999999999"})
  void numbersOutsideTheLimitsNameTheLimits(String text) {
    Form form = typed(text);
    assertEquals(OptionalDouble.empty(), form.number("field", -10, 10));
    assertEquals("Must lie between −10 and 10.", form.messageOf("field"));
  }

  @Test
  void anEmptyNumberIsNothingAndNoMistake() {
    Form form = typed(" ");
    assertEquals(OptionalDouble.empty(), form.number("field", 0, 1));
    assertEquals(OptionalInt.empty(), form.wholeNumber("field", 0, 1));
    assertEquals(OptionalInt.empty(), form.wholeNumber("not-there", 0, 1));
    assertFalse(form.isRefused());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.5", "1,0", "x", "1e2", "1234567890"})
  void whatIsNoWholeNumberIsNamedOnce(String text) {
    Form form = typed(text);
    assertEquals(OptionalInt.empty(), form.wholeNumber("field", 1, 10));
    assertEquals("“" + text + "” is not a whole number.", form.messageOf("field"));
    assertEquals(1, form.findings().size());
  }

  @Test
  void wholeNumbersKeepTheirLimits() {
    assertEquals(OptionalInt.of(1), typed("1").wholeNumber("field", 1, 10));
    assertEquals(OptionalInt.of(10), typed("10").wholeNumber("field", 1, 10));
    assertTrue(refused(typed("0"), f -> f.wholeNumber("field", 1, 10)));
    assertTrue(refused(typed("11"), f -> f.wholeNumber("field", 1, 10)));
    assertTrue(refused(typed("-1"), f -> f.wholeNumber("field", 1, 10)));
  }

  /** One mistake, one message: a text that is no number because it is far too long is only too long. */
  @Test
  void anOverlongNumberIsRefusedOnce() {
    Form form = typed("9".repeat(500));
    assertEquals(OptionalInt.empty(), form.wholeNumber("field", 1, 10));
    assertEquals("Too long: at most 40 characters.", form.messageOf("field"));
    assertEquals(1, form.findings().size());
  }

  @Test
  void takesOverWhatOtherReadersSay() {
    Form form = typed("x");
    assertEquals(Optional.of(4), form.take(Checked.of(4)));
    assertFalse(form.isRefused());
    assertEquals(Optional.empty(), form.take(Checked.refused(Finding.of("place.form", "field"))));
    assertTrue(form.isRefused());
    assertFalse(form.messageOf("field").isEmpty());
  }

  @Test
  void whatBelongsToNoFieldStandsAboveTheForm() {
    Form form = typed("x");
    form.refuse(Finding.of("sign-in.wrong", ""));
    assertEquals(List.of("Name or password is wrong."), form.wholeMessages());
    assertEquals("", form.messageOf("field"));
  }

  @Test
  void namesAndTicksOfFieldsThatBelongTogether() {
    Form form = Form.filled(Map.of("ban.a", List.of("on"), "ban.b", List.of(""), "use", List.of("x", "y")), MESSAGES);
    assertEquals(2, form.names("ban.").size());
    assertTrue(form.ticked("ban.a"));
    assertFalse(form.ticked("ban.b"));
    assertTrue(form.has("use", "y"));
    assertEquals("x", form.value("use"));
  }

  private static boolean refused(Form form, java.util.function.Consumer<Form> reading) {
    reading.accept(form);
    return form.isRefused();
  }
}
