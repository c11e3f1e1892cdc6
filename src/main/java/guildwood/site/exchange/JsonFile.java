package guildwood.site.exchange;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.io.IOException;

/** Parses JSON strictly: no key twice, nothing after the end, no NaN. */
public final class JsonFile {
  private static final JsonMapper JSON = JsonMapper.builder()
      .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
      .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
      .build();

  private JsonFile() {}

  /** The root, or where and why the text cannot be read. */
  public static Checked<JsonNode> parse(byte[] json) {
    try {
      return Checked.of(JSON.readTree(json));
    } catch (JsonProcessingException e) {
      var where = e.getLocation();
      return Checked.refused(Finding.of(
          "json.unreadable", "", where == null ? 1 : where.getLineNr(), where == null ? 1 : where.getColumnNr(),
          plain(e.getOriginalMessage())));
    } catch (IOException e) {
      return Checked.refused(Finding.of("json.unreadable", "", 1, 1, e.getMessage()));
    }
  }

  /** The parser's words without its advice to programmers, which follows a colon or stands in brackets. */
  private static String plain(String message) {
    return message.split(": enable|\\(|\n", 2)[0].strip();
  }
}
