package guildwood.materials.web;

import guildwood.kernel.Finding;
import guildwood.materials.Delivery;
import guildwood.materials.Material;
import guildwood.materials.MaterialSettings;
import guildwood.site.web.LengthFields;
import guildwood.web.Form;
import guildwood.web.Units;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** The form of a delivery. */
final class DeliveryForm {
  private DeliveryForm() {}

  static Map<String, String> blank(LocalDate today, Units units) {
    return Map.of(LengthFields.UNIT, units.key(), "material", Material.WOOD_CHIPS.key(), "on", today.toString());
  }

  /** Reads all of it; where it is refused nothing is there and the form knows why. */
  static Optional<Delivery> read(Form form, long siteId, MaterialSettings settings, LocalDate today) {
    Optional<Material> material = Material.ofKey(form.value("material"));
    if (material.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "material", form.value("material")));
    }
    Optional<Double> amount = material.flatMap(m -> amount(form, "amount", m, settings, Optional.empty()));
    Optional<LocalDate> on = day(form, "on", today);
    String note = form.optionalText("note", Delivery.LONGEST_NOTE);
    return form.isRefused() ? Optional.empty()
        : Optional.of(new Delivery(0, siteId, material.orElseThrow(), amount.orElseThrow(), on.orElseThrow(), note));
  }

  /** Cubic metres, or a whole number of sheets. @param kept what the field was filled in with */
  static Optional<Double> amount(Form form, String field, Material material, MaterialSettings settings, Optional<Double> kept) {
    if (!material.inSheets()) {
      return VolumeFields.of(form, settings.loadM3()).required(field, Delivery.M3, kept);
    }
    if (form.value(field).isBlank()) {
      form.refuse(Finding.of("value.missing", field));
    }
    var sheets = form.wholeNumber(field, (int) Delivery.SHEETS.min(), (int) Delivery.SHEETS.max());
    return sheets.isPresent() ? Optional.of((double) sheets.getAsInt()) : Optional.empty();
  }

  /** The day something was done; today where nobody says. */
  static Optional<LocalDate> day(Form form, String field, LocalDate today) {
    // Somewhere it is tomorrow already.
    return form.value(field).isBlank() ? Optional.of(today) : form.date(field, today.plusDays(1));
  }
}
