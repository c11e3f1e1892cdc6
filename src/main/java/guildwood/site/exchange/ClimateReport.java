package guildwood.site.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import guildwood.kernel.Finding;
import guildwood.kernel.Temperature;
import guildwood.site.climate.ColdestWinter;
import guildwood.site.climate.FrostDates;
import guildwood.site.climate.FrostThreshold;
import guildwood.site.climate.GrowingDegreeDays;
import guildwood.site.climate.Spread;
import guildwood.site.climate.StationRecord;
import guildwood.site.climate.StationYear;
import guildwood.species.HardinessZone;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.Writer;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Writes the climate of a station with at least one whole year as JSON, keys always in the same order. */
final class ClimateReport {
  /** Escaped beyond ASCII, so that the file is UTF-8 whatever the terminal speaks. */
  private static final JsonMapper JSON = JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MM-dd");

  private final Messages words;
  private final StationRecord station;
  private final double baseF;

  ClimateReport(Messages words, StationRecord station, double baseF) {
    this.words = words;
    this.station = station;
    this.baseF = baseF;
  }

  void write(Writer to) throws IOException {
    JsonGenerator json = JSON.createGenerator(to);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.useDefaultPrettyPrinter();
    ColdestWinter winter = ColdestWinter.of(station).orElseThrow();
    json.writeStartObject();
    json.writeStringField("hemisphere", station.hemisphere().key());
    json.writeArrayFieldStart("yearsUsed");
    for (StationYear year : station.wholeYears()) {
      json.writeString(year.label());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("frost");
    for (FrostThreshold threshold : FrostThreshold.values()) {
      writeFrost(json, threshold);
    }
    json.writeEndArray();
    writeWinter(json, winter);
    writeDegreeDays(json);
    json.writeArrayFieldStart("warnings");
    for (Finding warning : warnings(winter)) {
      json.writeString(words.say(warning));
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }

  private void writeFrost(JsonGenerator json, FrostThreshold threshold) throws IOException {
    FrostDates dates = FrostDates.of(station, threshold.fahrenheit());
    json.writeStartObject();
    json.writeStringField("event", threshold.word());
    json.writeNumberField("thresholdF", threshold.fahrenheit());
    writeDates(json, "lastSpring", dates.lastSpring(), dates);
    writeDates(json, "firstAutumn", dates.firstAutumn(), dates);
    if (dates.frostFreeDays().isEmpty()) {
      json.writeNullField("frostFreeDays");
    } else {
      Spread days = dates.frostFreeDays().get();
      json.writeObjectFieldStart("frostFreeDays");
      json.writeNumberField("mean", rounded(days.mean()));
      json.writeNumberField("p10", rounded(days.p10()));
      json.writeNumberField("p90", rounded(days.p90()));
      json.writeNumberField("years", days.years());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static void writeDates(JsonGenerator json, String key, Optional<Spread> spread, FrostDates dates) throws IOException {
    if (spread.isEmpty()) {
      json.writeNullField(key);
      return;
    }
    json.writeObjectFieldStart(key);
    json.writeStringField("mean", written(dates.day(spread.get().mean())));
    json.writeStringField("p10", written(dates.day(spread.get().p10())));
    json.writeStringField("p90", written(dates.day(spread.get().p90())));
    json.writeNumberField("years", spread.get().years());
    json.writeEndObject();
  }

  private static void writeWinter(JsonGenerator json, ColdestWinter winter) throws IOException {
    json.writeObjectFieldStart("coldestWinter");
    json.writeNumberField("meanAnnualMinimumF", rounded(winter.meanAnnualMinimumF()));
    json.writeNumberField("meanAnnualMinimumC", rounded(Temperature.toCelsius(winter.meanAnnualMinimumF())));
    json.writeStringField("zone", winter.zone().map(HardinessZone::toString).orElse(null));
    json.writeEndObject();
  }

  private void writeDegreeDays(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("growingDegreeDays");
    json.writeObjectFieldStart("plain");
    json.writeNumberField("baseF", rounded(baseF));
    writeMean(json, year -> GrowingDegreeDays.plainOfYear(year, baseF));
    json.writeEndObject();
    json.writeObjectFieldStart("corn86F50F");
    json.writeNumberField("baseF", GrowingDegreeDays.CORN_LOWEST_F);
    writeMean(json, GrowingDegreeDays::cornOfYear);
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeMean(JsonGenerator json, ToDoubleFunction<StationYear> ofYear) throws IOException {
    double mean = station.wholeYears().stream().mapToDouble(ofYear).average().orElseThrow();
    json.writeNumberField("meanPerYearFahrenheitDays", rounded(mean));
    json.writeNumberField("meanPerYearCelsiusDays", rounded(mean * 5 / 9));
  }

  private List<Finding> warnings(ColdestWinter winter) {
    List<Finding> warnings = new ArrayList<>();
    for (StationYear year : station.yearsWithMissingDays()) {
      warnings.add(Finding.of("climate.year-left-out", "", year.label(), year.missing().size(), year.missing().get(0)));
    }
    if (station.isWarmerInWinter()) {
      warnings.add(Finding.of("climate.warm-winter", "", station.hemisphere().key()));
    }
    if (winter.years() < ColdestWinter.YEARS_OF_THE_MAP) {
      warnings.add(Finding.of("climate.few-years", "", winter.years(), ColdestWinter.YEARS_OF_THE_MAP));
    }
    if (winter.zone().isEmpty()) {
      warnings.add(Finding.of("climate.no-zone", ""));
    }
    return warnings;
  }

  private static String written(MonthDay day) {
    return DAY.format(day);
  }

  private static double rounded(double number) {
    return Math.round(number * 100) / 100.0;
  }
}
