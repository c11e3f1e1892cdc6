package guildwood.site.exchange;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

/** Findings in words for the command line, from the same files as the pages' texts. */
final class Words {
  private final Properties texts = new Properties();

  Words() {
    for (String file : List.of("shared", "indication")) {
      try (InputStream in = Words.class.getResourceAsStream("/guildwood/messages/" + file + ".properties")) {
        texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The sentence for a finding; a missing text is a bug. */
  String say(Finding finding) {
    String text = texts.getProperty("finding." + finding.code());
    if (text == null) {
      throw new IllegalArgumentException("no text for " + finding.code());
    }
    return new MessageFormat(text, Locale.ENGLISH).format(finding.args().toArray());
  }
}
