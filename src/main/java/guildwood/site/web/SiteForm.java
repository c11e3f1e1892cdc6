package guildwood.site.web;

import guildwood.site.Basis;
import guildwood.site.ClimateReader;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.Place;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.web.Form;
import guildwood.web.Units;
import java.time.MonthDay;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The form of a site: filling it in from a site, and reading a site out of it. */
final class SiteForm {
  private static final String WINTER = "winter";
  private static final String SPRING = "spring";
  private static final String AUTUMN = "autumn";

  private SiteForm() {}

  /** What an empty form starts with. */
  static Map<String, String> blank() {
    Map<String, String> values = new HashMap<>(ConditionFields.filled(Map.of()));
    values.put(WINTER + "-basis", Basis.PUBLISHED.key());
    return values;
  }

  static Map<String, String> filled(Site site) {
    Map<String, String> values = blank();
    values.putAll(ConditionFields.filled(site.conditions()));
    values.put("name", site.name());
    values.put("place", site.place());
    site.latitudeDegrees().ifPresent(degrees -> values.put("latitude", Units.number(degrees, 8)));
    site.longitudeDegrees().ifPresent(degrees -> values.put("longitude", Units.number(degrees, 8)));
    putDate(values, SPRING, site.lastSpringFrost());
    putDate(values, AUTUMN, site.firstAutumnFrost());
    Condition winter = site.conditions().get(Axis.WINTER_COLD);
    if (winter != null) {
      values.put(WINTER, winter.entered());
      values.put(WINTER + "-basis", winter.basis().key());
    }
    values.put("note", site.note());
    return values;
  }

  private static void putDate(Map<String, String> values, String field, Optional<MonthDay> date) {
    date.ifPresent(d -> {
      values.put(field + "-day", Integer.toString(d.getDayOfMonth()));
      values.put(field + "-month", Integer.toString(d.getMonthValue()));
    });
  }

  /** Reads the form; where it is refused the site is absent and the form knows why. */
  static Optional<Site> read(Form form, Map<Axis, Condition> before) {
    String name = form.text("name", Site.LONGEST_NAME);
    String place = form.take(Place.read(form.value("place"), "place")).orElse("");
    OptionalDouble latitude = form.take(ClimateReader.latitude(form.value("latitude"), "latitude")).orElse(OptionalDouble.empty());
    OptionalDouble longitude = form.take(ClimateReader.longitude(form.value("longitude"), "longitude")).orElse(OptionalDouble.empty());
    Optional<MonthDay> spring = date(form, SPRING);
    Optional<MonthDay> autumn = date(form, AUTUMN);
    if (spring.isPresent() && autumn.isPresent() && latitude.isPresent()) {
      ClimateReader.frostOrder(spring.get(), autumn.get(), latitude.getAsDouble(), SPRING + "-day").ifPresent(form::refuse);
    }
    Map<Axis, Condition> conditions = ConditionFields.take(form, before);
    conditions.remove(Axis.WINTER_COLD);
    winter(form).ifPresent(c -> conditions.put(Axis.WINTER_COLD, c));
    String note = form.longText("note", Site.LONGEST_NOTE);
    return form.isRefused() ? Optional.empty()
        : Optional.of(new Site(0, name, place, latitude, longitude, spring, autumn, conditions, note));
  }

  private static Optional<MonthDay> date(Form form, String field) {
    return form.take(ClimateReader.date(form.value(field + "-day"), form.value(field + "-month"), field)).orElse(Optional.empty());
  }

  private static Optional<Condition> winter(Form form) {
    Optional<Basis> basis = ConditionReader.CLAIMED.stream().filter(b -> b.key().equals(form.value(WINTER + "-basis"))).findFirst();
    if (basis.isEmpty() && form.ticked(WINTER)) {
      form.refuse(guildwood.kernel.Finding.of("condition.basis", WINTER + "-basis"));
    }
    return form.take(ClimateReader.winter(form.value(WINTER), basis.orElse(Basis.PUBLISHED), WINTER)).orElse(Optional.empty());
  }
}
