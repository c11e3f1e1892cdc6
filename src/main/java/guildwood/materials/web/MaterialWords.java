package guildwood.materials.web;

import guildwood.kernel.Range;
import guildwood.materials.Material;
import guildwood.materials.MaterialSettings;
import guildwood.materials.Target;
import guildwood.web.Messages;
import guildwood.web.Units;

/** Materials and amounts in words. */
final class MaterialWords {
  private static final double POUND_KG = 0.45359237;

  private final Messages messages;
  private final Units units;

  MaterialWords(Messages messages, Units units) {
    this.messages = messages;
    this.units = units;
  }

  String name(Material material) {
    return messages.say("material." + material.key());
  }

  String kind(Target target) {
    return messages.say("materials.kind." + target.kind().key());
  }

  /** A depth to a millimetre or a tenth of an inch: {@code 7.6 cm}, {@code 3 in}. */
  String depth(double metres) {
    return units == Units.METRIC ? Units.number(metres * 100, 1) + " cm" : Units.number(metres / 0.0254, 1) + " in";
  }

  /** An amount of a material: {@code 4.05 m³ (5.3 yd³)} or {@code 32 sheets}. */
  String amount(Material material, double amount) {
    return material.inSheets() ? messages.say("materials.sheets", Math.round(amount)) : units.volume(amount);
  }

  /** An amount with what it belongs to: {@code wood chips, 4.05 m³ (5.3 yd³)}. */
  String of(Material material, double amount) {
    return messages.say("materials.of", name(material), amount(material, amount));
  }

  /** {@code 48 barrows}; empty for card. */
  String trips(Material material, double amount, MaterialSettings settings) {
    return material.inSheets() ? "" : messages.say("materials.trips", settings.barrowTrips(amount));
  }

  String loads(Material material, double amount, MaterialSettings settings) {
    return material.inSheets() ? "" : messages.say("materials.loads", settings.loads(amount));
  }

  /** {@code 1.1 to 1.5 t (2,400 to 3,300 lb)}; empty where no weight is known. */
  String weight(Material material, double amount) {
    return material.kgPerM3().map(kg -> weight(new Range(kg.min() * amount, kg.max() * amount))).orElse("");
  }

  private String weight(Range kg) {
    boolean tonnes = kg.max() >= 1000;
    double unitKg = units == Units.US ? tonnes ? 2000 * POUND_KG : POUND_KG : tonnes ? 1000 : 1;
    String unit = units == Units.US ? tonnes ? "short-tons" : "pounds" : tonnes ? "tonnes" : "kilograms";
    return messages.say("materials.weight." + unit, Units.number(kg.min() / unitKg, tonnes ? 1 : 0), Units.number(kg.max() / unitKg, tonnes ? 1 : 0));
  }

  /** {@code 2 h 30 min}, to five minutes. */
  String time(double minutes) {
    long fives = Math.max(1, Math.round(minutes / 5)) * 5;
    return fives < 60 ? messages.say("materials.minutes", fives)
        : fives % 60 == 0 ? messages.say("materials.hours", fives / 60)
        : messages.say("materials.hours-and-minutes", fives / 60, fives % 60);
  }
}
