package guildwood.bed.survey.web;

import guildwood.site.survey.SurveySheet;
import guildwood.web.Messages;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * A survey in a list.
 *
 * @param of name of the bed; empty for the whole site
 */
public record SurveyLine(long id, String name, String date, String of, int plants, long unmatched) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  public static SurveyLine of(SurveySheet sheet, String bedName, Messages messages) {
    return new SurveyLine(sheet.id(), sheet.name(), sheet.date().map(SurveyLine::day).orElse(messages.say("survey.no-date")), bedName,
        sheet.rows().size(), sheet.wildRows().size() - sheet.matchedRows());
  }

  static String day(LocalDate date) {
    return date.format(DAY);
  }
}
