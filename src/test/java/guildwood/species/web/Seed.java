package guildwood.species.web;

import guildwood.species.exchange.SeedFiles;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The ids of the species that come with the program. */
final class Seed {
  private Seed() {}

  static List<String> ids(String group) {
    try (BufferedReader in = new BufferedReader(new InputStreamReader(
        SeedFiles.class.getResourceAsStream("/seed-data/species/" + group + ".csv"), StandardCharsets.UTF_8))) {
      return in.lines().skip(1).map(line -> line.substring(0, line.indexOf(','))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
