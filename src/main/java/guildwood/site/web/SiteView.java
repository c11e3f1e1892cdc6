package guildwood.site.web;

import guildwood.site.Condition;
import guildwood.site.Place;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A site in words.
 *
 * @param facts of its climate
 * @param conditions stated for the whole site
 * @param gaps what is not told yet although it matters, as names of facts
 */
public record SiteView(long id, String name, List<Fact> facts, List<ConditionView> conditions, List<String> gaps, String note) {

  /** @param remark where it comes from, or what it means; may be empty */
  public record Fact(String label, String value, String remark) {}

  public static SiteView of(Site site, Units units, Messages messages) {
    List<Fact> facts = new ArrayList<>();
    List<String> gaps = new ArrayList<>();
    if (!site.place().isEmpty()) {
      facts.add(new Fact(messages.say("site.fact.place"), Place.name(site.place()), ""));
    }
    Condition winter = site.conditions().get(Axis.WINTER_COLD);
    if (winter != null) {
      ConditionView view = ConditionView.of(winter, units, messages);
      facts.add(new Fact(messages.say("site.fact.winter"), view.full(), messages.say("site.entered-as", view.entered(), view.basis())));
    } else {
      gaps.add(messages.say("site.fact.winter"));
    }
    addSeason(site, facts, gaps, messages);
    site.latitudeDegrees().ifPresentOrElse(
        degrees -> facts.add(new Fact(messages.say("site.fact.latitude"), degrees(degrees, "N", "S"), "")),
        () -> gaps.add(messages.say("site.fact.latitude")));
    site.longitudeDegrees().ifPresent(degrees -> facts.add(new Fact(messages.say("site.fact.longitude"), degrees(degrees, "E", "W"), "")));
    List<ConditionView> conditions = ConditionFields.AXES.stream().filter(site.conditions()::containsKey)
        .map(axis -> ConditionView.of(site.conditions().get(axis), units, messages)).toList();
    return new SiteView(site.id(), site.name(), List.copyOf(facts), conditions, List.copyOf(gaps), site.note());
  }

  private static void addSeason(Site site, List<Fact> facts, List<String> gaps, Messages messages) {
    if (site.frostFreeDays().isPresent()) {
      facts.add(new Fact(messages.say("site.fact.season"), messages.say("site.range.frost_free_days", Integer.toString(site.frostFreeDays().getAsInt())),
          messages.say("site.fact.season.dates", date(site.lastSpringFrost()), date(site.firstAutumnFrost()))));
      return;
    }
    site.lastSpringFrost().ifPresent(d -> facts.add(new Fact(messages.say("site.fact.spring"), date(site.lastSpringFrost()), "")));
    site.firstAutumnFrost().ifPresent(d -> facts.add(new Fact(messages.say("site.fact.autumn"), date(site.firstAutumnFrost()), "")));
    gaps.add(messages.say("site.fact.frost-dates"));
  }

  /** The two frost dates as one phrase; empty where one is missing. */
  public static String frostDates(Site site) {
    return site.frostFreeDays().isPresent() ? date(site.lastSpringFrost()) + " to " + date(site.firstAutumnFrost()) : "";
  }

  private static String date(Optional<MonthDay> date) {
    return date.map(d -> d.getDayOfMonth() + " " + d.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)).orElse("");
  }

  private static String degrees(double degrees, String positive, String negative) {
    return Units.number(Math.abs(degrees), 4) + "° " + (degrees < 0 ? negative : positive);
  }
}
