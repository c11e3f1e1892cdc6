package guildwood.site.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.species.Axis;
import guildwood.web.Form;
import guildwood.web.Messages;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What becomes of conditions that people did not type when a form is saved. */
class ConditionFieldsTest {
  private static final Messages MESSAGES = new Messages();
  private static final Condition SUN = new Condition(Axis.LIGHT, new Range(4.1, 5.3), Basis.COMPUTED, "4.1 to 5.3");
  private static final Condition WINTER = new Condition(Axis.WINTER_COLD, Range.of(-28), Basis.PUBLISHED, "-28 C");
  private static final Map<Axis, Condition> BEFORE = Map.of(Axis.LIGHT, SUN, Axis.WINTER_COLD, WINTER);

  @Test
  void whatTheProgramWorkedOutStaysWhileNobodyTouchesIt() {
    Form form = Form.blank(ConditionFields.filled(BEFORE), MESSAGES);
    assertEquals(BEFORE, ConditionFields.take(form, BEFORE));
    assertFalse(form.isRefused());
    assertEquals("computed", ConditionFields.rows(BEFORE, Map.of(), MESSAGES).get(0).bases().get(0));
  }

  @Test
  void changedByHandItNeedsABasisOfThePersonsOwn() {
    Form unclaimed = changed("5", "computed");
    ConditionFields.take(unclaimed, BEFORE);
    assertTrue(unclaimed.messageOf("light-basis").startsWith("Guildwood worked this out."));
    Form claimed = changed("5", "measured");
    assertEquals(new Condition(Axis.LIGHT, new Range(4.5, 5.5), Basis.MEASURED, "5"), ConditionFields.take(claimed, BEFORE).get(Axis.LIGHT));
  }

  @Test
  void emptiedItGoes() {
    assertEquals(Map.of(Axis.WINTER_COLD, WINTER), ConditionFields.take(changed("", "computed"), BEFORE));
  }

  private static Form changed(String from, String basis) {
    Map<String, String> values = new HashMap<>(ConditionFields.filled(BEFORE));
    values.put("light-from", from);
    values.put("light-to", "");
    values.put("light-basis", basis);
    return Form.blank(values, MESSAGES);
  }
}
