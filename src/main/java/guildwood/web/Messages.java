package guildwood.web;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;

/** The texts of the pages, from one file a feature under {@code guildwood/messages}. */
public final class Messages {
  private static final List<String> FILES =
      List.of("shared", "terms", "species", "site", "indication", "sun", "siteplan", "choosing", "importing", "exporting", "guild",
          "drafts", "drawing", "materials", "workplan", "sharing", "compose");

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
    return new MessageFormat(text, Locale.ENGLISH).format(args);
  }

  /** A finding in words: the text of {@code finding.<code>}, or of the code itself for what was done. */
  public String say(Finding finding) {
    String key = texts.containsKey(finding.code()) ? finding.code() : "finding." + finding.code();
    Object[] args = new Object[finding.args().size()];
    for (int i = 0; i < args.length; i++) {
      String arg = finding.args().get(i);
      boolean counted = has(key) && texts.get(key).contains("{" + i + ",") && arg.matches("-?\\d{1,18}");
      args[i] = counted ? (Object) Long.valueOf(arg) : arg;
    }
    return say(key, args);
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
