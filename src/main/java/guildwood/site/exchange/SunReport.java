package guildwood.site.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import guildwood.site.sun.FaoDaylight;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.LightClass;
import guildwood.site.sun.SunHours;
import guildwood.species.ClassWords;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Writes sun hours as JSON, keys always in the same order, hours to four decimals. */
public final class SunReport {
  /** Escaped beyond ASCII, so that the file is UTF-8 whatever the terminal speaks. */
  private static final JsonMapper JSON = JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private SunReport() {}

  /** The slope's ratio is left out where there is no slope, or no sun in the season. */
  public static void write(SunHours hours, OptionalDouble slopeDirectRatio, Writer to) throws IOException {
    JsonGenerator json = JSON.createGenerator(to);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.useDefaultPrettyPrinter();
    json.writeStartObject();
    json.writeArrayFieldStart("points");
    for (int i = 0; i < hours.points().size(); i++) {
      writePoint(hours, i, json);
    }
    json.writeEndArray();
    json.writeStringField("lightScheme", ClassWords.LIGHT_SCHEME);
    json.writeNumberField("dayLengthHours", rounded(hours.openMeanHours()));
    writeList(json, "monthlyDayLengthHours", hours.openMonthlyMeanHours());
    writeList(json, "aboveAtmosphereMJ", FaoDaylight.monthlyAboveAtmosphereMJ(
        hours.scene().place().latitudeDegrees(), hours.scene().year()));
    if (slopeDirectRatio.isPresent()) {
      json.writeNumberField("slopeDirectRatio", rounded(slopeDirectRatio.getAsDouble()));
    }
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }

  private static void writePoint(SunHours hours, int i, JsonGenerator json) throws IOException {
    GroundPoint point = hours.points().get(i);
    json.writeStartObject();
    json.writeNumberField("x", point.xM());
    json.writeNumberField("y", point.yM());
    json.writeNumberField("seasonMeanHours", rounded(hours.seasonMeanHours(i)));
    writeList(json, "monthlyMeanHours", hours.monthlyMeanHours(i));
    writeMap(json, "lostHours", hours.lostHours(i));
    json.writeNumberField("morningMeanHours", rounded(hours.morningMeanHours(i)));
    json.writeNumberField("afternoonMeanHours", rounded(hours.afternoonMeanHours(i)));
    writeMap(json, "wonIfGoneHours", hours.wonIfGoneHours(i));
    json.writeStringField("lightClass", LightClass.of(hours.seasonMeanHours(i)).word());
    json.writeEndObject();
  }

  private static void writeList(JsonGenerator json, String key, List<Double> hours) throws IOException {
    json.writeArrayFieldStart(key);
    for (double each : hours) {
      json.writeNumber(rounded(each));
    }
    json.writeEndArray();
  }

  private static void writeMap(JsonGenerator json, String key, Map<String, Double> hours) throws IOException {
    json.writeObjectFieldStart(key);
    for (Map.Entry<String, Double> each : hours.entrySet()) {
      json.writeNumberField(each.getKey(), rounded(each.getValue()));
    }
    json.writeEndObject();
  }

  private static double rounded(double hours) {
    return Math.round(hours * 10_000) / 10_000.0;
  }
}
