package guildwood.web;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Format;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;

/** The texts of the pages, from one file a feature under {@code guildwood/messages}. */
public final class Messages {
  private static final List<String> FILES =
      List.of("shared", "terms", "species", "site", "choosing", "guild", "sharing");

  private final Map<String, String> texts = new HashMap<>();

  public Messages() {
    for (String file : FILES) {
      read("/guildwood/messages/" + file + ".properties").forEach((key, text) -> {
        if (texts.put((String) key, (String) text) != null) {
          throw new IllegalStateException("two texts for " + key + ", the second in " + file);
        }
      });
    }
  }

  public boolean has(String key) {
    return texts.containsKey(key);
  }

  public Set<String> keys() {
    return Set.copyOf(texts.keySet());
  }

  /** The text of a key with its placeholders {0}, {1} filled in. A missing key is a bug. */
  public String say(String key, Object... args) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("no text for " + key);
    }
    MessageFormat format = new MessageFormat(text, Locale.ENGLISH);
    return format.format(withNumbers(format, args));
  }

  /** Findings carry their values as text; where the text of a key counts, a number is needed again. */
  private static Object[] withNumbers(MessageFormat format, Object[] args) {
    Format[] formats = format.getFormatsByArgumentIndex();
    Object[] given = args.clone();
    for (int i = 0; i < Math.min(formats.length, given.length); i++) {
      if (formats[i] instanceof NumberFormat && given[i] instanceof String text) {
        given[i] = Double.valueOf(text);
      }
    }
    return given;
  }

  /** A finding in words: the text of {@code finding.<code>}, or of the code itself for what was done. */
  public String say(Finding finding) {
    String key = texts.containsKey(finding.code()) ? finding.code() : "finding." + finding.code();
    return say(key, finding.args().toArray());
  }

  private static Properties read(String resource) {
    Properties properties = new Properties();
    try (InputStream in = Messages.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no texts at " + resource);
      }
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties;
  }
}
